using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Board that is screwed to the joists: no rows; every butt on the middle of a joist (or of several side by side) that runs behind all of it;
/// a joist, a ledger or blocks near every edge along the joists; and the widest bay told as what the board spans. What is asked of
/// board alone is asked of it with along and across changed over.
/// </summary>
internal static class DirectBoard
{
    private const double Close = 0.05;
    private const double Overhang = 150;
    private static readonly Action<GivenPlan, AuditReport>[] OfBoard =
    [
        SheetTiling.Check, SheetSizes.Check, ButtStagger.Check, JointLengths.Check, SheetCuts.Check, SheetCost.Check, TakeoffLines.Check, FixtureCutouts.Check,
    ];

    private static readonly Action<GivenPlan, AuditReport>[] OfStraps =
    [
        ButtBacking.Check, RowSpacing.Check, RowClearance.Check, RowPositions.Check, PieceRuns.Check, PieceBearing.Check, PieceJoints.Check, Crossings.Check, Packing.Check,
        LumberCost.Check, HoleTrims.Check,
    ];

    /// <summary>The checks that hold of such a plan: those of board look at it turned over, those of straps are left out.</summary>
    public static IEnumerable<Action<GivenPlan, AuditReport>> Checks(JsonElement request, JsonElement answer, IEnumerable<Action<GivenPlan, AuditReport>> all)
    {
        var turned = new GivenPlan(answer, new AskedRoom(request, turned: true));
        var asked = all.ToList();
        return
        [
            .. asked.Except(OfStraps).Except(OfBoard),
            .. OfBoard.Where(asked.Contains).Select(check => new Action<GivenPlan, AuditReport>((_, report) => check(turned, report))),
            .. asked.Contains(SheetTiling.Check) ? new Action<GivenPlan, AuditReport>[] { Check } : [],
        ];
    }

    /// <summary>The lowest underside that was read or lies between readings; null without any.</summary>
    public static double? Lowest(AskedRoom room)
    {
        if (room.Levels is not { } levels)
        {
            return null;
        }

        var (high, right) = (room.Rings[0].Max(p => p.U), room.Rings[0].Max(p => p.V));
        var places = room.Json.GetProperty("joistFields").EnumerateArray().SelectMany(f => f.Member("undersides").Items())
            .Select(r => room.Place(r.GetProperty("at")).U).Append(0).Append(high).ToList();
        return places.SelectMany(u => room.Joists.Members
            .Where(j => j.Along.From <= u && u <= j.Along.To && j.Centre >= 0 && j.Centre <= right)
            .Select(j => levels.OfJoist(j, u))).Min();
    }

    private static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Rows.Count > 0 || plan.Json.Member("strapping").Member("crossings").Items().Any())
        {
            report.Fault("direct.rows", "strapping", $"board on the joists has rows");
        }

        foreach (var butt in plan.Seams.Where(s => s.Run == SeamRun.Along))
        {
            Backed(butt, plan, report);
        }

        foreach (var wall in plan.Room.Border.Walls.Where(w => w.IsAlong && !(w.Ring > 0 && plan.Room.NeedsNoRow(w.Ring))))
        {
            Edge(wall, plan, report);
        }

        Bay(plan, report);
    }

    private static void Backed(BoardSeam butt, GivenPlan plan, AuditReport report)
    {
        var behind = plan.Room.Joists.Members.Where(j => j.Along.From <= butt.Stretch.To && butt.Stretch.From <= j.Along.To).ToList();
        var stops = behind.SelectMany(j => new[] { j.Along.From, j.Along.To }).Where(u => butt.Stretch.From < u && u < butt.Stretch.To)
            .Append(butt.Stretch.From).Append(butt.Stretch.To).Order().ToList();
        for (var i = 0; i + 1 < stops.Count; i++)
        {
            var u = (stops[i] + stops[i + 1]) / 2;
            if (!plan.Room.Joists.Supports(u).Any(s => Math.Abs(((s.From + s.To) / 2) - butt.At) <= Math.Max(0, (s.Length / 2) - 19) + Close))
            {
                report.Fault("direct.backing", butt.Board.Id, $"its butt at across {butt.At:F2} has no joist behind it along {u:F0}");
                return;
            }
        }

        var names = plan.Json.Member("joists").Member("members").Items().ToDictionary(j => j.Member("id").Text()!, j => j.Member("at").Length(plan.Room.Unit)!.Value);
        var ends = butt.Board.Ends.Where(e => Math.Abs(e.At - butt.At) <= Close).SelectMany(e => e.Backing).ToList();
        if (ends.Count == 0 || ends.Any(e => !names.TryGetValue(e, out var at) || Math.Abs(at - butt.At) > 120))
        {
            report.Fault("direct.listed", butt.Board.Id, $"behind the butt at across {butt.At:F2} it lists [{string.Join(' ', ends)}]");
        }
    }

    // walk along the edge: a joist starts near it on the board's side, or wood lies along it, or blocks cross under it near enough
    private static void Edge(Wall wall, GivenPlan plan, AuditReport report)
    {
        var spacing = plan.Room.Strapping.MaxSpacing;
        var at = wall.A.V;
        for (var u = wall.Us.From + 20; u < wall.Us.To - 20; u += 50)
        {
            var above = plan.Room.Border.AcrossAt(u).Any(p => Math.Abs(p.From - at) < 1);
            var near = plan.Room.Joists.Supports(u).Any(s => above ? s.To - at >= 15.9 && s.From - at <= Overhang + Close : at - s.From >= 15.9 && at - s.To <= Overhang + Close);
            var wood = plan.Nailers.Any(n => Math.Min(n.From.U, n.To.U) - (spacing / 2) - 25 <= u && u <= Math.Max(n.From.U, n.To.U) + (spacing / 2) + 25
                && Math.Min(n.From.V, n.To.V) - 16 <= at && at <= Math.Max(n.From.V, n.To.V) + 16);
            if (!near && !wood)
            {
                report.Fault("direct.edge", $"wall at across {at:F1}", $"the board's edge has no wood near along {u:F0}");
                return;
            }
        }
    }

    private static void Bay(GivenPlan plan, AuditReport report)
    {
        var ends = plan.Room.Joists.Members.SelectMany(j => new[] { j.Along.From, j.Along.To }).Where(double.IsFinite)
            .Append(0).Append(plan.Room.Rings[0].Max(p => p.U)).Distinct().Order().ToList();
        var widest = 0.0;
        for (var i = 0; i + 1 < ends.Count; i++)
        {
            var supports = plan.Room.Joists.Supports((ends[i] + ends[i + 1]) / 2);
            for (var s = 1; s < supports.Count; s++)
            {
                widest = Math.Max(widest, ((supports[s].From + supports[s].To) - (supports[s - 1].From + supports[s - 1].To)) / 2);
            }
        }

        var said = plan.Json.Member("checks").Items().Where(c => c.Member("rule").Text() == "row-spacing").Select(c => c.Member("value").Length(plan.Room.Unit)).FirstOrDefault();
        if (said is { } value && widest > 0 && Math.Abs(value - widest) > 0.1)
        {
            report.Fault("direct.span", "row-spacing", $"{value:F2} stated, the widest bay is {widest:F2} mm");
        }
    }
}
