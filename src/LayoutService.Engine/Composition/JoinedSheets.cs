using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The board of all parts of a room as one list, and the control joints between: where a piece of one part and a piece of another have
/// a stretch of the same line for an edge. Cost: edges × lines, and pairs of pieces at one line.
/// </summary>
internal static class JoinedSheets
{
    /// <summary>Two units of 1/8000 mm: what turning a corner leaves.</summary>
    private const double Near = 2;

    public static SheetPlan Of(RunParts division, IReadOnlyList<SheetPlan> parts)
    {
        var layers = parts.Max(p => p.Layers);
        var control = division.Lines.SelectMany(line => Joints(division, line, parts)).ToList();

        // every layer stops there; the trim covers the one that shows
        var length = new Length(control.Where(j => j.Layer == layers).Sum(j => j.Joint.Length.Units));
        return new SheetPlan
        {
            Courses = [.. parts.SelectMany(p => p.Courses)],
            Pieces = [.. parts.SelectMany(p => p.Pieces)],
            Joints = [.. parts.SelectMany(p => p.Joints), .. control.Select(j => j.Joint)],
            ButtJointLength = new Length(parts.Sum(p => p.ButtJointLength.Units)),
            TaperedJointLength = new Length(parts.Sum(p => p.TaperedJointLength.Units)),
            CutEdgeJointLength = new Length(parts.Sum(p => p.CutEdgeJointLength.Units)),
            ControlJointLength = length,
            PerimeterLength = new Length(parts.Sum(p => p.PerimeterLength.Units)) - (length * 2),
            StartWalls = [],
            EdgeBeads = [.. parts.SelectMany(p => p.EdgeBeads)],
            WellBeads = [.. parts.SelectMany(p => p.WellBeads)],
        };
    }

    private static IEnumerable<(BoardJoint Joint, int Layer)> Joints(RunParts division, (Uv From, Uv To) line, IReadOnlyList<SheetPlan> parts)
    {
        var edges = parts.SelectMany((part, n) => part.Pieces.SelectMany(piece => EdgesOn(division, line, piece).Select(e => (Part: n, Piece: piece.Id, piece.Layer, e.A, e.B)))).ToList();
        foreach (var one in edges)
        {
            foreach (var other in edges.Where(e => e.Part > one.Part && e.Layer == one.Layer))
            {
                var from = one.A.Along > other.A.Along ? one.A : other.A;
                var to = one.B.Along < other.B.Along ? one.B : other.B;
                if (to.Along - from.Along > Near)
                {
                    yield return (
                        new BoardJoint(BoardJointKind.Control, one.Piece, other.Piece, from.At, to.At, new Length((long)Math.Round(to.Along - from.Along))), one.Layer);
                }
            }
        }
    }

    // edges of a piece on a line, each from the end nearer to the line's start
    private static IEnumerable<((double Along, Point At) A, (double Along, Point At) B)> EdgesOn(RunParts division, (Uv From, Uv To) line, BoardPiece piece)
    {
        for (var i = 0; i < piece.Outline.Count; i++)
        {
            var (p, q) = (piece.Outline[i], piece.Outline[(i + 1) % piece.Outline.Count]);
            if (On(p) is { } a && On(q) is { } b && Math.Abs(b - a) > Near)
            {
                yield return a < b ? ((a, p), (b, q)) : ((b, q), (a, p));
            }
        }

        double? On(Point at)
        {
            var place = division.At(at);
            var size = Rings.DistanceBetween(line.From, line.To);
            double u = (line.To.U - line.From.U) / size, v = (line.To.V - line.From.V) / size;
            double du = place.U - line.From.U, dv = place.V - line.From.V;
            return Math.Abs((u * dv) - (v * du)) <= 2 * Near ? (u * du) + (v * dv) : null;
        }
    }
}
