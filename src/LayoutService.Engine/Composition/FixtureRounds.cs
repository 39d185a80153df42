using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The rows and sheets that were chosen, the room with its holes, and the fixtures where they will be.</summary>
public sealed record CeilingWithFixtures(FramedRoom Room, ChosenCeiling Chosen, IReadOnlyList<PlacedFixture> Fixtures);

/// <summary>
/// Fixtures, rows and sheets as one choice, in rounds. First the fixtures keep off what stands: joists, services, walls,
/// wall rows and each other. Then rows and sheets are searched; those that may not move are firm holes, the others soft.
/// A soft one that then lies on a row or a seam moves clear of it within its allowance; one that cannot becomes firm, and
/// rows and sheets are searched again. Each round makes at least one hole firm, and there are at most
/// <see cref="MostRounds"/>. A firm one that in the end finds no place where it was held is given up: it is a conflict, and rows and
/// sheets are searched without it, in at most <see cref="LastRounds"/> rounds more. A room without fixtures is searched once, as if this were not here.
/// </summary>
public static class FixtureRounds
{
    private const int MostRounds = 3, LastRounds = 3;

    /// <summary>The best rounds; where a thorough search leaves a conflict that a quick one does not, the quick one's rows and sheets are taken.</summary>
    public static (CeilingWithFixtures? Made, Finding? Obstacle) Best(FramedRoom room, bool buttsAnywhere = true)
    {
        var best = Rounds(room, buttsAnywhere, room.Survey.Effort);
        if (room.Survey.Effort == Effort.Quick || (best.Made is not null && Conflicts(best.Made) == 0))
        {
            return best;
        }

        var quick = Rounds(room, buttsAnywhere, Effort.Quick);
        return quick.Made is { } other && (best.Made is null || Conflicts(other) < Conflicts(best.Made)) ? quick : best;
    }

    private static int Conflicts(CeilingWithFixtures made) => made.Fixtures.Count(f => f.Clashes.Count > 0);

    private static (CeilingWithFixtures? Made, Finding? Obstacle) Rounds(FramedRoom room, bool buttsAnywhere, Effort effort)
    {
        var wishes = InCeiling(room);
        if (wishes.Count == 0)
        {
            var (chosen, obstacle) = Search(room, buttsAnywhere, effort);
            return (chosen is null ? null : new CeilingWithFixtures(room, chosen, []), obstacle);
        }

        var planner = new FixturePlanner(room, Rules(room.Survey), wishes);
        var rules = RowRules.Of(room.Survey.Strapping);
        var wallStraps = WallStraps(room, rules);
        var standing = planner.Place(wallStraps, []);
        var firm = standing.Select(p => p.Wish.MaxShift.Units == 0 && p.Clashes.Count == 0).ToArray();
        var given = standing.Select(p => p.Clashes.Count > 0).ToArray();
        for (var round = 1; ; round++)
        {
            var held = room.With(new KeepOuts(Holes(standing, i => firm[i] && !given[i]), Holes(standing, i => !firm[i] && !given[i])));
            var (chosen, obstacle) = Search(held, buttsAnywhere, effort);
            if (chosen is null)
            {
                return (null, obstacle);
            }

            var placed = planner.Place([.. Straps(chosen)], [.. Seams(room, chosen)]);
            var stuck = Enumerable.Range(0, placed.Length)
                .Where(i => !firm[i] && !given[i] && placed[i].Clashes.Any(c => c.Kind is ClashKind.Strap or ClashKind.Seam))
                .ToList();
            var lost = Enumerable.Range(0, placed.Length).Where(i => firm[i] && !given[i] && placed[i].Clashes.Count > 0 && placed[i].Hole.At != standing[i].Hole.At).ToList();
            if ((stuck.Count == 0 || round >= MostRounds) && (lost.Count == 0 || round == MostRounds + LastRounds))
            {
                return (new CeilingWithFixtures(held, chosen, placed), null);
            }

            // no row is trimmed round a hole that then is elsewhere
            lost.ForEach(i => given[i] = true);
            if (round < MostRounds)
            {
                stuck.ForEach(i => firm[i] = true);
            }
        }
    }

    /// <summary>Rows and sheets as if there were no hole; the fixtures then keep off them as far as they can.</summary>
    public static (CeilingWithFixtures? Made, Finding? Obstacle) Regardless(FramedRoom room)
    {
        var (chosen, obstacle) = Search(room, buttsAnywhere: false, room.Survey.Effort);
        return chosen is null
            ? (null, obstacle)
            : (new CeilingWithFixtures(room, chosen, new FixturePlanner(room, Rules(room.Survey), InCeiling(room)).Place([.. Straps(chosen)], [.. Seams(room, chosen)])), null);
    }

    private static (ChosenCeiling? Chosen, Finding? Obstacle) Search(FramedRoom room, bool buttsAnywhere, Effort effort)
    {
        var (chosen, obstacle) = room.Survey.Strapping.Direct ? DirectSearch.Best(room) : new CeilingSearch(room, buttsAnywhere, effort).Best();
        if (chosen is null || room.Survey.Sheets.Layers == 1)
        {
            return (chosen, obstacle);
        }

        return (chosen with { Upper = LayerSearch.Of(chosen.BoardRoom ?? room, chosen.Layout) }, null);
    }

    /// <summary>The fixtures that are let into the ceiling's board: all but those in bulkheads.</summary>
    private static IReadOnlyList<FixtureWish> InCeiling(FramedRoom room) =>
        room.Solids.Count == 0 ? room.Survey.Fixtures : [.. room.Survey.Fixtures.Where(f => room.HostOf(f) is null)];

    internal static FixtureRules Rules(Survey survey)
    {
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        return FixtureRules.Of(survey, book.Limit("light-clearance", survey.Units == UnitSystem.Imperial).Value.Length);
    }

    private static List<Hole> Holes(IReadOnlyList<PlacedFixture> placed, Func<int, bool> taken) =>
        [.. placed.Where((_, i) => taken(i)).Select(p => p.Hole).OrderBy(h => h.At.U).ThenBy(h => h.At.V)];

    // rows tight to walls are where they are, whatever else is chosen
    private static List<PlanBox> WallStraps(FramedRoom room, RowRules rules) =>
        room.Survey.Strapping.Direct ? [] : [.. WallRows.Find(room, rules).SelectMany(row => row.Across.Select(across => new PlanBox(Face(row.At, rules), across, -1)))];

    private static IEnumerable<PlanBox> Straps(ChosenCeiling chosen) => chosen.Lines.SelectMany((line, i) =>
        line.Stretches.Select(s => new PlanBox(Face(line.At, chosen.Rules), s.Across, i)));

    // butts over the strip of their run; course lines as far as the board goes
    internal static IEnumerable<PlanBox> Seams(FramedRoom room, ChosenCeiling chosen) =>
        chosen.BoardRoom is { } turned ? SeamsIn(turned, chosen).Select(s => s.Turned()) : SeamsIn(room, chosen);

    private static IEnumerable<PlanBox> SeamsIn(FramedRoom room, ChosenCeiling chosen) => chosen.Layers.SelectMany(layout => SeamsOf(room, layout));

    private static IEnumerable<PlanBox> SeamsOf(FramedRoom room, SheetLayout layout)
    {
        for (var r = 0; r < layout.Runs.Count; r++)
        {
            foreach (var butt in layout.Butts[r])
            {
                yield return new PlanBox(new Span(layout.Lines[butt].At, layout.Lines[butt].At), layout.Runs[r].Across, -1);
            }
        }

        for (var c = 1; c < layout.Division.Courses; c++)
        {
            var line = layout.Division.Lines[c];
            yield return new PlanBox(new Span(room.Board.LowU, room.Board.HighU), new Span(line, line), -1);
        }
    }

    private static Span Face(long at, RowRules rules) => new(at - rules.Half, at + rules.Half);
}
