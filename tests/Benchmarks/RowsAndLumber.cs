using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Strapping;

namespace LayoutService.Benchmarks;

/// <summary>Rows and their lumber alone, without sheets: the part of a plan that a general solver is also given.</summary>
public static class RowsAndLumber
{
    /// <summary>How many rows, and what their sticks cost in ten-thousandths of the currency's unit.</summary>
    public readonly record struct Answer(int Rows, long Cost, int Sticks);

    public static Answer Plan(Survey survey)
    {
        var room = FramedRoom.Of(survey);
        var (rules, lines, runs) = Runs(room);
        var (cut, _) = new LumberCut(room).Of(lines, runs, rules, room.Say);
        return new Answer(lines.Count, (long)(cut!.StrapResult!.Cost * 10_000m), cut.StrapSticks.Count);
    }

    /// <summary>The fewest rows as far as each reaches, and where each may break.</summary>
    public static (RowRules Rules, List<StrapLine> Lines, List<StrapRun> Runs) Runs(FramedRoom room)
    {
        var rules = RowRules.Of(room.Survey.Strapping);
        var skeleton = RowSkeletons.Choose(room, rules, WallRows.Find(room, rules), [])!;
        var rows = new RowLattices(rules, skeleton).Offer([], 1)[0];
        var lines = new StrapLines(room, rules).Lay(rows, skeleton.Locals);
        return (rules, lines, new StrapRuns(room, rules).Of(lines, [.. lines.Select(_ => (IReadOnlyList<Span>)[])]));
    }
}
