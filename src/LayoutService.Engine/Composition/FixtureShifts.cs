using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Where a row is trimmed round a hole, or a hole is left in conflict with a row or a seam: how little that fixture would have to be moved so that
/// the rows run on as they are. No search is run again: rows and seams stay, the other holes stay, and the one is put to the nearest
/// place clear of them all (see <see cref="FixturePlanner.Nearest"/>). Cost: one such look for each trimmed hole.
/// </summary>
internal static class FixtureShifts
{
    /// <summary>A move further than this is another lighting layout. Common practice, no source.</summary>
    private const long Most = 600 * Length.PerMillimetre;

    public static IEnumerable<Alternative> Of(FramedRoom room, ChosenCeiling chosen, IReadOnlyList<PlacedFixture> placed, FixturePlan planned, StrappingPlan strapping)
    {
        var inCeiling = placed.Where(p => p.Host < 0).ToList();
        if (inCeiling.Count == 0 || chosen.BoardRoom is not null)
        {
            yield break;
        }

        FixturePlanner? planner = null;
        List<PlanBox> straps = [], seams = [];
        foreach (var fixture in planned.Fixtures)
        {
            var rows = fixture.Reasons.Where(r => r.Code is "row_trimmed" or "conflict_strap").SelectMany(r => r.Of).Distinct().ToList();
            var index = inCeiling.FindIndex(p => p.Wish.Id == fixture.Wish.Id);
            if (rows.Count == 0 || index < 0)
            {
                continue;
            }

            if (planner is null)
            {
                planner = new FixturePlanner(room, FixtureRounds.Rules(room.Survey), [.. inCeiling.Select(p => p.Wish)]);
                straps = [.. Untrimmed(room, chosen)];
                seams = [.. FixtureRounds.Seams(room, chosen)];
            }

            if (planner.Nearest(index, Most, inCeiling, straps, seams) is { } free && free != inCeiling[index].Hole.At)
            {
                var headers = strapping.Nailers.Count(n => n.Role == NailerRole.Header && n.Reasons.Any(r => r.Of.Contains(fixture.Wish.Id)));
                yield return Said(room, fixture.Wish.Id, inCeiling[index].Hole.At, free, rows, headers);
            }
        }
    }

    // rows from wall to wall, as they would be without any hole
    private static IEnumerable<PlanBox> Untrimmed(FramedRoom room, ChosenCeiling chosen) => chosen.Lines.SelectMany((line, i) =>
        (line.Through ? [new Span(room.Board.LowV, room.Board.HighV)] : line.Stretches.Select(s => s.Across))
            .Select(across => new PlanBox(new Span(line.At - chosen.Rules.Half, line.At + chosen.Rules.Half), across, i)));

    private static Alternative Said(FramedRoom room, string fixture, Uv from, Uv to, List<string> rows, int headers)
    {
        var shift = room.Say((long)Math.Round(Rings.DistanceBetween(from, to)));
        var place = room.Frame.Out(to);
        var (x, y, of) = (room.Say(place.X.Units), room.Say(place.Y.Units), string.Join(", ", rows));
        var spared = headers == 0 ? string.Empty : $" and {headers} headers would not be needed";
        return new Alternative(
            Sentence.Of(
                "fixture_moved",
                $"Moved {shift}, to {x}, {y}, {fixture} would be clear of every row and seam: {of} would run on{spared}.",
                ("fixture", fixture), ("shift", shift), ("x", x), ("y", y), ("rows", of), ("headers", headers.ToString(System.Globalization.CultureInfo.InvariantCulture))),
            [fixture, .. rows],
            null);
    }
}
