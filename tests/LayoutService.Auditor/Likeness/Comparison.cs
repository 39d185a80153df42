using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Likeness;

/// <summary>Compares two answers that should be one plan, the second moved.</summary>
public static class Comparison
{
    private const double Close = 0.02;

    /// <summary>
    /// What a person buys and builds must be equal: rows, pieces, lengths, sheets, each stock's count, every result's cost
    /// and the total cost.
    /// </summary>
    public static IReadOnlyList<Fault> Counts(JsonElement first, JsonElement second)
    {
        var faults = new List<Fault>();
        foreach (var name in new[] { "rows", "strapPieces", "lengthsToBuy", "sheetsToBuy", "cost" })
        {
            Same(faults, name, first.GetProperty("summary").Member(name).Decimal()?.ToString(), second.GetProperty("summary").Member(name).Decimal()?.ToString());
        }

        foreach (var kind in new[] { "stock", "sheetStock" })
        {
            Same(faults, kind, ByStock(first, kind), ByStock(second, kind));
        }

        foreach (var (a, b) in first.Member("cutPlan").Member("results").Items().Zip(second.Member("cutPlan").Member("results").Items()))
        {
            Same(faults, $"{a.Member("use").Text()} cost", a.Member("cost").Text(), b.Member("cost").Text());
        }

        return faults;
    }

    /// <summary>Straps and boards lie where the motion takes them: each one of either plan has its like in the other.</summary>
    public static IReadOnlyList<Fault> Geometry(JsonElement first, JsonElement second, Motion motion, double firstUnit, double secondUnit)
    {
        var faults = new List<Fault>();
        Matched(faults, "straps", Straps(first, firstUnit, motion), Straps(second, secondUnit, Motion.Still));
        Matched(faults, "boards", Boards(first, firstUnit, motion), Boards(second, secondUnit, Motion.Still));
        Matched(faults, "fixtures", Fixtures(first, firstUnit, motion), Fixtures(second, secondUnit, Motion.Still));
        Matched(faults, "frames", Frames(first, firstUnit, motion), Frames(second, secondUnit, Motion.Still));
        Matched(faults, "bulkhead boards", BoxBoards(first, firstUnit, motion), BoxBoards(second, secondUnit, Motion.Still));
        return faults;
    }

    private static List<(double X, double Y)[]> Frames(JsonElement answer, double unit, Motion motion) =>
        answer.Member("bulkheads").Items().SelectMany(b => b.Member("members").Items())
            .Select(m => new[] { m.GetProperty("from").Point(unit), m.GetProperty("to").Point(unit) }.Select(c => motion.Move(c.X, c.Y)).ToArray()).ToList();

    private static List<(double X, double Y)[]> BoxBoards(JsonElement answer, double unit, Motion motion) =>
        answer.Member("bulkheads").Items().SelectMany(b => b.Member("boards").Items())
            .Select(b => b.GetProperty("outline").Ring(unit).Select(c => motion.Move(c.X, c.Y)).ToArray()).ToList();

    private static List<(double X, double Y)[]> Fixtures(JsonElement answer, double unit, Motion motion) =>
        answer.Member("fixtures").Items().Select(f => f.GetProperty("at").Point(unit)).Select(p => new[] { motion.Move(p.X, p.Y) }).ToList();

    private static void Same(List<Fault> faults, string what, string? a, string? b)
    {
        if (a != b)
        {
            faults.Add(new Fault("likeness.counts", what, $"{a} against {b}"));
        }
    }

    private static string ByStock(JsonElement answer, string kind) => string.Join(' ', answer.Member("cutPlan").Member(kind).Items()
        .GroupBy(s => s.Member("stockId").Text() ?? "").OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => $"{g.Count()}×{g.Key}"));

    private static void Matched(List<Fault> faults, string what, List<(double X, double Y)[]> first, List<(double X, double Y)[]> second)
    {
        if (first.Count != second.Count)
        {
            faults.Add(new Fault("likeness.geometry", what, $"{first.Count} against {second.Count}"));
            return;
        }

        var left = second.ToList();
        foreach (var shape in first)
        {
            var at = left.FindIndex(other => other.Length == shape.Length
                && shape.All(p => other.Any(q => Math.Abs(p.X - q.X) <= Close && Math.Abs(p.Y - q.Y) <= Close)));
            if (at < 0)
            {
                faults.Add(new Fault("likeness.geometry", what, FormattableString.Invariant($"none like the one at {shape[0].X:F2}, {shape[0].Y:F2}")));
                return;
            }

            left.RemoveAt(at);
        }
    }

    private static List<(double X, double Y)[]> Straps(JsonElement answer, double unit, Motion motion) =>
        answer.Member("strapping").Member("rows").Items().SelectMany(r => r.Member("pieces").Items())
            .Select(p => new[] { p.GetProperty("from").Point(unit), p.GetProperty("to").Point(unit) }.Select(c => motion.Move(c.X, c.Y)).ToArray()).ToList();

    private static List<(double X, double Y)[]> Boards(JsonElement answer, double unit, Motion motion) =>
        answer.Member("sheets").Member("pieces").Items()
            .Select(p => p.GetProperty("outline").Ring(unit).Select(c => motion.Move(c.X, c.Y)).ToArray()).ToList();
}
