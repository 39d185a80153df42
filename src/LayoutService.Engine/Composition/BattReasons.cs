using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Insulation;

namespace LayoutService.Engine.Composition;

/// <summary>Why a batt lies as it does, and why there is none.</summary>
internal static class BattReasons
{
    public static IReadOnlyList<Reason> Of(LaidBatt laid, IReadOnlyList<string> rows, Func<long, string> say)
    {
        var layer = laid.Verdict.Layer!;
        var depth = say(laid.Verdict.Depth);
        var reasons = new List<Reason>
        {
            new("depth", [laid.Bay], "thickest_that_fits", $"The thickest batt that fits the {depth} that is free here, within the limit of squeeze."),
        };
        var ids = laid.Verdict.Obstacles.Select(o => o.Id).Distinct().ToList();
        if (laid.Verdict.Place == BattPlace.Below)
        {
            reasons.Add(new("service", ids, "under_service", "Lies on the straps, under what is in the bay."));
        }
        else if (laid.Verdict.Place == BattPlace.Above)
        {
            reasons.Add(new("service", ids, "over_service", "Lies against the floor, over what is in the bay; hold it up by friction or wire."));
        }

        if (layer.Split)
        {
            reasons.Add(new("depth", [laid.Batt.Id], "split_batt", "A whole batt does not fit; it is split to half its thickness."));
        }

        if (layer.Squeezed)
        {
            reasons.Add(new("depth", [laid.Batt.Id], "squeezed_batt", $"Squeezed from {say(layer.Loose)} to {say(layer.Installed)}."));
        }

        if (laid.Strips > 1)
        {
            reasons.Add(new("width", [laid.Bay], "side_by_side", "The bay is wider than the batt: strips lie side by side."));
        }

        if (rows.Count > 0)
        {
            reasons.Add(new("straps", rows, "slides_over_straps", "Slides over these straps, which are fastened here after it."));
        }

        return reasons;
    }

    public static IReadOnlyList<Reason> Of(OpenPart part, string least)
    {
        if (part.Reason == OpenReason.BayTooShallow)
        {
            return [new("depth", [part.Bay], "no_batt_thin_enough", "No batt is thin enough for the depth of the bay.")];
        }

        if (part.Obstacles.Count == 0)
        {
            return [new("size", [part.Bay], "too_small", $"Narrower or shorter than {least}: fill it by hand with what is left over.")];
        }

        return [.. part.Obstacles.DistinctBy(o => o.Id).Select(o => Of(o, part.Reason, least))];
    }

    private static Reason Of(BattObstacle obstacle, OpenReason reason, string least) => obstacle.Kind switch
    {
        ObstacleKind.PannedReturn => new("panned-return", [obstacle.Id], "panned_return", "This bay carries return air and stays empty."),
        ObstacleKind.Reach => new("reach", [obstacle.Id], "kept_reachable", "Left open so that this can be reached."),
        ObstacleKind.Fixture => new("fixture", [obstacle.Id], "fixture_clearance", "Kept clear of this fixture by the distance that it needs from insulation."),
        ObstacleKind.Blocking => new("blocking", [obstacle.Id], "blocking", "Wood fills this part of the bay."),
        _ when reason == OpenReason.TooSmall => new("service", [obstacle.Id], "too_small_at_service", $"Narrower or shorter than {least} beside, under or over this: slit the batts round it."),
        ObstacleKind.Hot => new("hot", [obstacle.Id], "hot_clearance", "Kept clear of this hot service; no batt fits above or below it."),
        _ => new("service", [obstacle.Id], "no_depth", "No batt fits above or below this without being crushed."),
    };
}
