using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>
/// How near butts of neighbouring courses come to each other, in the finished board: butts of one layer that meet the same course line at one
/// place each. Cost: butts of a layer, squared.
/// </summary>
internal static class ButtStagger
{
    // what rounding leaves between the ends of two butts on one course line, units
    private const long Touches = 2;

    /// <summary>The least distance, and the pieces of the butts that show it, or of all that are nearer than what was asked; null where no two are neighbours.</summary>
    public static (Length Least, IReadOnlyList<string> Pieces)? Of(FramedRoom room, SheetPlan sheets, Length asked)
    {
        var layer = sheets.Pieces.ToDictionary(p => p.Id, p => p.Layer);
        var butts = sheets.Joints.Where(j => j.Kind == BoardJointKind.Butt)
            .Select(j => (Joint: j, Layer: layer[j.PieceA], A: Place(j.From), B: Place(j.To)))
            .Select(b => (b.Joint, b.Layer, At: b.A.U, Across: new Span(Math.Min(b.A.V, b.B.V), Math.Max(b.A.V, b.B.V))))
            .ToList();
        var pairs = butts.SelectMany((a, i) => butts.Skip(i + 1).Where(b => b.Layer == a.Layer && Meet(a.Across, b.Across)).Select(b => (A: a.Joint, B: b.Joint, Apart: Math.Abs(a.At - b.At)))).ToList();
        if (pairs.Count == 0)
        {
            return null;
        }

        var least = pairs.Min(p => p.Apart);
        var shown = pairs.Where(p => p.Apart == least || p.Apart < asked.Units);
        return (new Length(least), [.. shown.SelectMany(p => new[] { p.A.PieceA, p.A.PieceB, p.B.PieceA, p.B.PieceB }).Distinct()]);

        // along a sheet and across it: on the joists sheets lie square to them
        Uv Place(Point point) => room.Frame.In(point) is var at && room.Survey.Strapping.Direct ? new Uv(at.V, at.U) : at;
    }

    private static bool Meet(Span a, Span b) => Math.Abs(a.Hi - b.Lo) <= Touches || Math.Abs(b.Hi - a.Lo) <= Touches;
}
