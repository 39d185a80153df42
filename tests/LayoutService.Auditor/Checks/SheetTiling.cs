using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Valid;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The boards of each layer cover the outline less openings and bulkheads exactly: areas sum to it within one part in a million,
/// no two overlap, none leaves the ceiling, each is one simple ring.
/// </summary>
internal static class SheetTiling
{
    private const double Sliver = 0.02;
    private static readonly GeometryFactory Factory = new();

    // rounding every crossing to a micrometre keeps near-coincident edges from turning the result inside out
    private static readonly PrecisionModel Micrometres = new(1000);

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var area = plan.Room.Area;
        for (var layer = 1; layer <= plan.Room.Sheets.Layers; layer++)
        {
            var low = plan.Boards.Count > 0 ? plan.Boards.Min(b => b.Layer) : 1;
            var boards = plan.Boards.Where(b => b.Layer - low + 1 == layer).ToList();
            var covered = boards.Sum(b => b.Area);
            if (Math.Abs(covered - area) > area * 1e-6)
            {
                report.Fault("sheets.tiling", $"layer {layer}", $"boards cover {covered:F0} mm², the ceiling is {area:F0} mm²");
            }

            boards.RemoveAll(b => !IsSimple(b));
            Overlaps(boards, report);
            Outside(boards, plan.Room, report);
        }

        foreach (var board in plan.Boards.Where(b => !IsSimple(b)))
        {
            report.Fault("sheets.ring", board.Id, $"outline is not one simple ring");
        }
    }

    private static bool IsSimple(GivenBoard board) =>
        board.Area > 0 && (board.IsBox || new IsValidOp(PolygonOf([board.Ring])).ValidationError is null);

    private static void Overlaps(List<GivenBoard> boards, AuditReport report)
    {
        for (var i = 0; i < boards.Count; i++)
        {
            for (var j = i + 1; j < boards.Count; j++)
            {
                var (a, b) = (boards[i], boards[j]);
                if (a.Us.Overlaps(b.Us, Sliver) && a.Vs.Overlaps(b.Vs, Sliver)
                    && ((a.IsBox && b.IsBox) || Common(a, b) > Sliver * (a.Us.Length + a.Vs.Length)))
                {
                    report.Fault("sheets.overlap", a.Id, $"overlaps {b.Id}");
                }
            }
        }
    }

    private static double Common(GivenBoard a, GivenBoard b) => OverlayNG.Overlay(
        PolygonOf([a.Ring]), PolygonOf([b.Ring]), NetTopologySuite.Operation.Overlay.SpatialFunction.Intersection, Micrometres).Area;

    private static void Outside(List<GivenBoard> boards, AskedRoom room, AuditReport report)
    {
        foreach (var board in boards.Where(b => !(b.IsBox && BoxIsInside(b, room))))
        {
            var outside = OverlayNG.Overlay(PolygonOf([board.Ring]), room.Ceiling,
                NetTopologySuite.Operation.Overlay.SpatialFunction.Difference, Micrometres).Area;
            if (outside > Sliver * (board.Us.Length + board.Vs.Length))
            {
                report.Fault("sheets.outside", board.Id, $"{outside:F1} mm² lie outside the ceiling");
            }
        }
    }

    /// <summary>No wall passes through the box, and its middle is inside.</summary>
    private static bool BoxIsInside(GivenBoard board, AskedRoom room)
    {
        if (room.Border.Walls.Any(w => w.Us.Overlaps(board.Us, Sliver) && w.Vs.Overlaps(board.Vs, Sliver)
            || (w.IsSquare && w.A.U > board.Us.From + Sliver && w.A.U < board.Us.To - Sliver && w.Vs.Overlaps(board.Vs, Sliver))
            || (w.IsAlong && w.A.V > board.Vs.From + Sliver && w.A.V < board.Vs.To - Sliver && w.Us.Overlaps(board.Us, Sliver))))
        {
            return false;
        }

        var middle = (board.Us.From + board.Us.To) / 2;
        return room.Border.AlongAt((board.Vs.From + board.Vs.To) / 2, _ => true).Any(p => p.From < middle && middle < p.To);
    }

    private static Polygon PolygonOf(IReadOnlyList<IReadOnlyList<Uv>> rings) =>
        Factory.CreatePolygon(Shell(rings[0]), rings.Skip(1).Select(Shell).ToArray());

    private static LinearRing Shell(IReadOnlyList<Uv> ring) =>
        Factory.CreateLinearRing(ring.Append(ring[0]).Select(p => new Coordinate(p.U, p.V)).ToArray());
}
