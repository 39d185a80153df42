using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The board of each bulkhead covers its underside and its faces by area, each piece is cut once and large enough; bead,
/// frame screws and lowest underside are what the layout shows.
/// </summary>
internal static class BoxCovers
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Bulkheads.Count == 0)
        {
            return;
        }

        var cuts = plan.CutSheets.SelectMany(s => s.Cuts.Select(c => (c.PieceId, c.Length, c.Width, s.StockId))).ToLookup(c => c.PieceId);
        foreach (var box in plan.Bulkheads)
        {
            Underside(box, report);
            Faces(plan, box, report);
            foreach (var board in box.Boards)
            {
                var own = cuts[board.Id].ToList();
                bool Fits(double length, double width) => Math.Abs(length - board.Length) < 8 && Math.Abs(width - board.Width) < 8;
                if (own.Count != 1 || own[0].StockId != board.StockId || !(Fits(own[0].Length, own[0].Width) || Fits(own[0].Width, own[0].Length)))
                {
                    report.Fault("boxes.boardcuts", board.Id, $"{board.Length:F1} × {board.Width:F1} mm, cut {own.Count} times: {string.Join(' ', own.Select(c => $"{c.Length:F1} × {c.Width:F1}"))}");
                }
            }
        }

        Figures(plan, report);
    }

    private static void Underside(GivenBulkhead box, AuditReport report)
    {
        var pieces = box.Boards.Where(b => !b.IsFace).Select(b => Planes.Polygon([b.Outline])).ToList();
        var (sum, due) = (pieces.Sum(p => p.Area), box.Footprint.Area);
        var left = box.Footprint.Minus(Planes.Union(pieces)).Area;
        if (Math.Abs(sum - due) > 100 + (due * 1e-5) || left > 100 + (due * 1e-5))
        {
            report.Fault("boxes.underside", box.Id, $"boards of {sum:F0} mm² on an underside of {due:F0}, {left:F0} left open");
        }

        foreach (var board in box.Boards.Where(b => !b.IsFace))
        {
            var drawn = Math.Abs(Border.SignedArea(board.Outline));
            if (Math.Abs(drawn - board.Area) > 60)
            {
                report.Fault("boxes.underside", board.Id, $"says {board.Area:F0}, drawn {drawn:F0} mm²");
            }
        }
    }

    private static void Faces(GivenPlan plan, GivenBulkhead box, AuditReport report)
    {
        var layers = plan.Room.Sheets.Layers;
        double due = 0;
        foreach (var side in box.Sides)
        {
            due += Split(plan, box, side);
        }

        double Split(GivenPlan p, GivenBulkhead b, Wall side)
        {
            // a side may lie partly against a wall or another bulkhead
            Geometry line = Planes.Factory.CreateLineString([new Coordinate(side.A.U, side.A.V), new Coordinate(side.B.U, side.B.V)]);
            foreach (var wall in p.Room.Floor.Walls.Where(w => !p.Room.IsOpen(w.Middle())))
            {
                line = line.Difference(Planes.Factory.CreateLineString([new Coordinate(wall.A.U, wall.A.V), new Coordinate(wall.B.U, wall.B.V)]).Buffer(0.1));
            }

            double area = 0;
            foreach (var other in p.Bulkheads.Where(o => o != b))
            {
                var shared = line.Intersection(other.Footprint.Buffer(0.1));
                area += shared.Length * Math.Max(0, b.Underside - other.Underside);
                line = line.Difference(other.Footprint.Buffer(0.1));
            }

            return area + (line.Length * (b.Drop - b.Board + (b.BoardedAbove ? 0 : layers * b.Board)));
        }

        var given = box.Boards.Where(b => b.IsFace).Sum(b => b.Length * b.Width);
        if (Math.Abs(given - due) > 500 + (due * 1e-3))
        {
            report.Fault("boxes.faces", box.Id, $"{given:F0} mm² of face boards, {due:F0} due");
        }
    }

    private static void Figures(GivenPlan plan, AuditReport report)
    {
        var unit = plan.Room.Unit;
        foreach (var box in plan.Bulkheads)
        {
            var listed = box.Json.Member("beads").Items().Sum(b => b.Member("length").Length(unit) ?? 0);
            var level = box.Json.Member("beads").Items().Where(b => b.Member("upright") is not { ValueKind: System.Text.Json.JsonValueKind.True })
                .Sum(b => Planes.Apart(plan.Room.Place(b.GetProperty("from")), plan.Room.Place(b.GetProperty("to"))));
            var faces = box.Boards.Where(b => b.IsFace).GroupBy(b => (b.Outline[0], b.Outline[1])).Sum(g => g.First().Length);
            if (Math.Abs(listed - box.BeadLength) > 1 || Math.Abs(level - faces) > 1 + (faces * 1e-3))
            {
                report.Fault("boxes.bead", box.Id, $"bead of {box.BeadLength:F0} mm stated, {listed:F0} listed; {level:F0} of it level on faces of {faces:F0} mm");
            }
        }

        var lines = plan.Json.Member("takeoff").Member("lines").Items().ToList();
        double Counted(string code) => lines.Where(l => l.Member("code").Text() == code).Sum(l => l.Member("counted").Double() ?? 0);
        var run = plan.Room.Imperial ? 304.8 : 1000;
        var concrete = plan.Room.Json.Member("room").Member("walls").Items().Where(w => w.Member("kind").Text() == "concrete").Select(w => $"W{w.Member("edge").Decimal() + 1}").ToHashSet();
        var spacing = plan.Room.Json.Member("rules").Items().Where(r => r.Member("id").Text() == "nailer-fastener-spacing").Select(r => r.Member("value").Length(unit)).FirstOrDefault() ?? 400;
        var screws = plan.Bulkheads.Sum(b => b.Members.Sum(m => Screws(b, m, concrete, spacing)));
        if (lines.Count > 0 && (Counted("bulkhead-screw") != screws
            || Math.Abs((Counted("corner-bead") * run) - plan.Bulkheads.Sum(b => b.BeadLength) - WellEdges.Shown(plan) - OpenEdges.Length(plan)) > 0.01 * run))
        {
            report.Fault("boxes.takeoff", "takeoff", $"{Counted("bulkhead-screw")} frame screws and {Counted("corner-bead") * run:F0} mm of bead counted, due {screws} and {plan.Bulkheads.Sum(b => b.BeadLength):F0} mm");
        }

        var summary = plan.Json.Member("summary");
        if (summary.Member("finishedHeight").Length(unit) is { } finished)
        {
            var due = finished - plan.Bulkheads.Max(b => b.Drop);
            if (summary.Member("lowestUnderside").Length(unit) is not { } lowest || lowest > due + 0.01)
            {
                report.Fault("boxes.lowest", "lowestUnderside", $"{summary.Member("lowestUnderside").Text()} stated, the deepest bulkhead ends at {due:F2} mm");
            }
        }
    }

    // two at each end; what holds the frame two every 400 mm as well, into concrete another kind
    private static int Screws(GivenBulkhead box, GivenMember member, HashSet<string> concrete, double spacing)
    {
        var held = box.Backing.Where(b => b.MemberId == member.Id).ToList();
        if (held.Count == 0)
        {
            return 4;
        }

        return held[0].Kind == "wall" && held[0].Of.Count > 0 && held[0].Of.All(concrete.Contains)
            ? 0
            : 2 * (int)(Math.Ceiling(Math.Round(member.Length / spacing, 6)) + 1);
    }
}
