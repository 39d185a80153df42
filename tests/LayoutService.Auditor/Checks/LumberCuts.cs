using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The lumber cut plan can be sawn: every drawn piece is cut once and only once; it is cut as long as drawn, less the
/// clearance at each wall end and plus at most a bevel; cuts, one kerf after each that does not end at the stock's end,
/// and the offcut make up the stick less its trim; no stock is used beyond its quantity.
/// </summary>
internal static class LumberCuts
{
    private const double Exact = 0.02;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Pieces.Count == 0)
        {
            return;
        }

        Once(plan, report);
        Lengths(plan, report);
        foreach (var stick in plan.Sticks)
        {
            if (!Balances(stick, Trim(plan.Room), Kerf(plan)))
            {
                report.Fault("cuts.balance", stick.Id,
                    $"cuts {stick.Cuts.Sum(c => c.Length):F2} in {stick.Cuts.Count} pieces and offcut {stick.Offcut:F2} do not make {stick.Length:F2} mm with kerf {Kerf(plan):F2}");
            }
        }

        Stock(plan, report);
        var pieces = plan.Pieces.ById(p => p.Id);
        foreach (var stick in plan.Sticks)
        {
            foreach (var (id, _) in stick.Cuts.Where(c => pieces.TryGetValue(c.PieceId, out var piece) && piece.StockId != stick.StockId))
            {
                report.Fault("cuts.stock", id, $"is to come from {pieces[id].StockId}, is cut from {stick.StockId}");
            }
        }
    }

    /// <summary>The request's kerf, or 3 mm or 1/8 in where none was asked.</summary>
    public static double Kerf(GivenPlan plan) => plan.Room.Strapping.Kerf ?? (plan.Room.Imperial ? 3.175 : 3);

    /// <summary>What trim takes off one end of a stick; 3 mm or 1/8 in where none was asked.</summary>
    public static double Trim(AskedRoom room) => room.Strapping.EndTrim ?? (room.Imperial ? 3.175 : 3);

    private static void Once(GivenPlan plan, AuditReport report)
    {
        var cut = plan.Sticks.SelectMany(s => s.Cuts).GroupBy(c => c.PieceId).ToDictionary(g => g.Key, g => g.Count());
        foreach (var piece in plan.Pieces)
        {
            var times = cut.GetValueOrDefault(piece.Id);
            if (times != 1)
            {
                report.Fault("cuts.once", piece.Id, $"is cut {times} times");
            }
        }

        var strapping = plan.Json.Member("strapping");
        foreach (var (list, member) in new[] { ("nailers", "cutLength"), ("scabs", "length") })
        {
            foreach (var wood in strapping.Member(list).Items())
            {
                var id = wood.Member("id").Text() ?? list;
                var total = plan.Sticks.SelectMany(s => s.Cuts).Where(c => c.PieceId == id).Sum(c => c.Length);
                if (wood.Member(member).Length(plan.Room.Unit) is { } due && Math.Abs(total - due) > Exact)
                {
                    report.Fault("cuts.once", id, $"is {due:F2} mm long, {total:F2} mm of it are cut");
                }
            }
        }

        if (plan.Kerf is { } kerf && Math.Abs(kerf - Kerf(plan)) > Exact)
        {
            report.Fault("cuts.kerf", "cutPlan", $"kerf {kerf:F3}, due {Kerf(plan):F3} mm");
        }
    }

    private static void Lengths(GivenPlan plan, AuditReport report)
    {
        var pieces = plan.Pieces.ById(p => p.Id);
        var clearance = plan.Room.Strapping.EndClearance ?? (plan.Room.Imperial ? 6.35 : 6);
        foreach (var (id, length) in plan.Sticks.SelectMany(s => s.Cuts))
        {
            if (!pieces.TryGetValue(id, out var piece))
            {
                continue;
            }

            var ends = new[] { piece.LowEnd, piece.HighEnd };
            var walls = ends.Count(e => e.Wall is { Ring: 0 });
            var openings = ends.Count(e => e.Wall is { Ring: not 0 });
            var bevels = ends.Sum(e => e.Wall is { IsAlong: false } w ? plan.Room.Strapping.Face / 2 * w.Slant : 0);
            var least = piece.Length - ((walls + openings) * clearance) - (bevels > 0 ? clearance * 2 : 0);
            var most = piece.Length - (bevels > 0 ? 0 : walls * clearance) + bevels;
            if (piece.CutLength is { } said && Math.Abs(said - length) > Exact)
            {
                report.Fault("cuts.length", id, $"cut {length:F3}, its own cut length is {said:F3} mm");
            }

            if (length < least - Exact || length > most + Exact)
            {
                report.Fault("cuts.length", id, $"cut {length:F3}, due {least:F3} to {most:F3} mm");
            }
        }
    }

    /// <summary>Cuts, a kerf after each that does not end at the stock's end, the offcut and the trim make up the stick.</summary>
    public static bool Balances(GivenStick stick, double trim, double kerf)
    {
        var usable = stick.Length - trim;
        var cuts = stick.Cuts.Sum(c => c.Length);
        var between = usable - cuts - (Math.Max(0, stick.Cuts.Count - 1) * kerf);
        if (between < -Exact)
        {
            return false;
        }

        var left = between <= Exact ? 0 : Math.Max(0, between - kerf);
        return Math.Abs(left - stick.Offcut) <= Exact;
    }

    private static void Stock(GivenPlan plan, AuditReport report)
    {
        var stock = plan.Room.Strapping.Stock.ById(s => s.Id);
        foreach (var group in plan.StrapSticks.Where(_ => stock.Count > 0).GroupBy(s => s.StockId ?? ""))
        {
            if (!stock.TryGetValue(group.Key, out var asked))
            {
                report.Fault("cuts.stock", group.First().Id, $"is cut from {group.Key}, which is not in stock");
                continue;
            }

            if (asked.Quantity is { } quantity && group.Count() > quantity)
            {
                report.Fault("cuts.quantity", group.Key, $"{group.Count()} used, {quantity} available");
            }

            foreach (var stick in group.Where(s => Math.Abs(s.Length - asked.Length) > Exact))
            {
                report.Fault("cuts.stock", stick.Id, $"{stick.Length:F2} mm long, {group.Key} is {asked.Length:F2}");
            }
        }

        if (plan.Room.Strapping.LongestHandled is { } longest && plan.Sticks.SelectMany(s => s.Cuts).Any(c => c.Length > longest + Exact))
        {
            report.Fault("cuts.handled", "cutPlan", $"a cut is longer than can be handled, {longest:F0} mm");
        }
    }
}
