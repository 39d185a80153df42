using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// Finished heights (IRC R305 / R313; NBC and Ontario Table 9.5.3.1.). The plan's ceiling is held to the height everywhere,
/// which is stricter than codes that want it over part of a room only.
/// </summary>
internal static class HeadroomChecks
{
    public static IEnumerable<Check> Of(CheckBench bench)
    {
        var room = bench.Facts.Headroom;
        var space = room.Use ?? "habitable";
        var assumed = room.Use is null
            ? Sentence.Of("use_taken_as_habitable", "The use was not said; the room is taken as habitable.")
            : null;
        var heights = bench.Book.Heights(space, false, room.ExistingBuilding, room.SecondarySuite);
        if (heights.Count == 0)
        {
            // A word that only another code's table has: the common space answers.
            heights = bench.Book.Heights("habitable", false, room.ExistingBuilding, room.SecondarySuite);
        }

        foreach (var height in heights)
        {
            var rule = height.Value.Share.Value < 100 ? GridRules.HeadroomOverArea : GridRules.Headroom;
            yield return Height(bench, rule, height, room.FinishedHeight, Missing(room), assumed);
        }

        foreach (var stair in Stairs(bench))
        {
            yield return stair;
        }

        foreach (var obstruction in room.Obstructions)
        {
            var under = bench.Book.Heights(space, true, room.ExistingBuilding, room.SecondarySuite);
            var limit = under.Count > 0 ? under[0] : heights[0];
            IReadOnlyList<string> missing = obstruction.Underside is null ? Missing(room) : [];
            yield return Height(bench, GridRules.HeadroomUnder, limit, obstruction.Underside, missing, assumed) with { Where = [obstruction.Id] };
        }
    }

    // below the header the ceiling is as thick as elsewhere: straps, board, an old ceiling that stays
    private static IEnumerable<Check> Stairs(CheckBench bench)
    {
        var room = bench.Facts.Headroom;
        var heights = room.Stairs.Count == 0 ? [] : bench.Book.Heights("stair", false, room.ExistingBuilding, room.SecondarySuite);
        foreach (var stair in heights.Count == 0 ? [] : room.Stairs)
        {
            var check = Height(
                bench, GridRules.HeadroomStair, heights[0], stair.Headroom,
                [string.Create(System.Globalization.CultureInfo.InvariantCulture, $"#/room/openings/{stair.Index}/headroom")], null);
            yield return check with
            {
                Where = [stair.Id],
                Remedy = check.Status == CheckStatus.Fail
                    ? Sentence.Of("end_straps_before_header", "End the straps before the header and fasten the board to it, or have the well lengthened to a design by someone licensed to give one.")
                    : check.Remedy,
            };
        }
    }

    private static Check Height(
        CheckBench bench, GridRule rule, Cited<HeightRow> least, Length? found, IReadOnlyList<string> missing, Sentence? assumed)
    {
        var limit = bench.Own(rule, new(least.Value.Least.Length, least.Source));
        if (found is not { } height)
        {
            return bench.NotChecked(rule.Id, CheckComparison.AtLeast, limit.Source, limit.Value, missing, assumed);
        }

        var tolerance = bench.Facts.SurveyTolerance;
        var check = bench.Lengths(
            rule.Id, CheckComparison.AtLeast, height, limit, [],
            Sentence.Of(
                "lower_floor_or_thinner_ceiling", "Fasten the board to the joists, use a thinner floor, or put what hangs low into a bulkhead.",
                ("limit", bench.Text(limit.Value))),
            tolerance, assumed);
        if (check.Status == CheckStatus.Pass && height - limit.Value < tolerance)
        {
            check = check with
            {
                Status = CheckStatus.Marginal,
                Remedy = Sentence.Of(
                    "measure_again", $"The height is within {bench.Text(tolerance)} of the least: measure again where the joists hang lowest.",
                    ("tolerance", bench.Text(tolerance))),
            };
        }

        // Over part of a room only: whether it applies depends on the room's use and its required area.
        return rule == GridRules.HeadroomOverArea && check.Status is CheckStatus.Fail && bench.Facts.Headroom.Use is null
            ? check with { Status = CheckStatus.NotChecked, Missing = ["#/room/use"], Remedy = null }
            : check;
    }

    private static IReadOnlyList<string> Missing(HeadroomFacts room)
    {
        var missing = new List<string>();
        if (!room.HeightsGiven)
        {
            missing.Add("#/room/heights");
        }

        if (!room.FloorBuildUpGiven)
        {
            missing.Add("#/room/floorBuildUp");
        }

        return missing;
    }
}
