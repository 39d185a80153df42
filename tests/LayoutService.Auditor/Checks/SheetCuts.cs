using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The sheet cut plan can be cut with a knife and a T-square: every board once, inside its sheet, none overlapping,
/// every sheet separable by edge-to-edge cuts, no part smaller than its board less what is cut off at walls, offcuts
/// apart from the cuts. On a sheet x and length run along it, y and width across.
/// </summary>
internal static class SheetCuts
{
    private const double Exact = 0.02;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Boards.Count == 0)
        {
            return;
        }

        Once(plan, report);
        foreach (var fault in plan.CutSheets.SelectMany(Faults))
        {
            report.Fault(fault.Rule, fault.Where, $"{fault.Text}");
        }

        Sizes(plan, report);
    }

    private static void Once(GivenPlan plan, AuditReport report)
    {
        var times = plan.CutSheets.SelectMany(s => s.Cuts).GroupBy(c => c.PieceId).ToDictionary(g => g.Key, g => g.Count());
        foreach (var board in plan.Boards.Where(b => times.GetValueOrDefault(b.Id) != 1))
        {
            report.Fault("sheetcuts.once", board.Id, $"is cut {times.GetValueOrDefault(board.Id)} times");
        }

        var stock = plan.Room.Sheets.Stock.ById(s => s.Id);
        foreach (var sheet in plan.CutSheets.Where(_ => stock.Count > 0))
        {
            if (!stock.TryGetValue(sheet.StockId ?? "", out var asked))
            {
                report.Fault("sheetcuts.stock", sheet.Id, $"is cut from {sheet.StockId}, which is not in stock");
            }
            else if (Math.Abs(asked.Length - sheet.Length) > Exact || Math.Abs(asked.Width - sheet.Width) > Exact)
            {
                report.Fault("sheetcuts.stock", sheet.Id, $"{sheet.Length:F1} × {sheet.Width:F1}, {asked.Id} is {asked.Length:F1} × {asked.Width:F1} mm");
            }
        }

        foreach (var group in plan.CutSheets.GroupBy(s => s.StockId ?? "").Where(g => stock.GetValueOrDefault(g.Key)?.Quantity is { } q && g.Count() > q))
        {
            report.Fault("sheetcuts.quantity", group.Key, $"{group.Count()} used");
        }
    }

    /// <summary>What is wrong with one sheet's cuts, whatever room they are for.</summary>
    public static IEnumerable<Fault> Faults(GivenCutSheet sheet)
    {
        static Box Read(GivenCut c) => new(c.X, c.Y, c.Length, c.Width);
        var cuts = sheet.Cuts.Select(Read).ToList();
        var all = cuts.Concat(sheet.Offcuts.Select(Read)).ToList();
        for (var i = 0; i < all.Count; i++)
        {
            var name = i < cuts.Count ? sheet.Cuts[i].PieceId : "an offcut";
            if (all[i].X < -Exact || all[i].Y < -Exact || all[i].Right > sheet.Length + Exact || all[i].Top > sheet.Width + Exact)
            {
                yield return new Fault(i < cuts.Count ? "sheetcuts.inside" : "sheetcuts.offcuts", sheet.Id, $"{name} leaves the sheet");
            }

            for (var j = 0; j < i; j++)
            {
                if (all[i].Overlaps(all[j], Exact))
                {
                    yield return new Fault(i < cuts.Count ? "sheetcuts.overlap" : "sheetcuts.offcuts", sheet.Id, $"{name} overlaps another part");
                }
            }
        }

        if (!Separable(cuts))
        {
            yield return new Fault("sheetcuts.guillotine", sheet.Id, "the cuts do not run from edge to edge");
        }
    }

    /// <summary>Some edge-to-edge cut parts the boxes in two, and so on until each stands alone.</summary>
    private static bool Separable(List<Box> boxes)
    {
        if (boxes.Count <= 1)
        {
            return true;
        }

        return Parted(boxes) || Parted(boxes.Select(b => b.Flipped).ToList());
    }

    private static bool Parted(List<Box> boxes)
    {
        boxes = boxes.OrderBy(b => b.X).ToList();
        var right = boxes[0].Right;
        for (var i = 1; i < boxes.Count; i++)
        {
            if (boxes[i].X >= right - Exact)
            {
                return Separable(boxes[..i]) && Separable(boxes[i..]);
            }

            right = Math.Max(right, boxes[i].Right);
        }

        return false;
    }

    private static void Sizes(GivenPlan plan, AuditReport report)
    {
        var boards = plan.Boards.ById(b => b.Id);
        foreach (var cut in plan.CutSheets.SelectMany(s => s.Cuts).Where(c => boards.ContainsKey(c.PieceId)))
        {
            var board = boards[cut.PieceId];
            var from = plan.CutSheets.First(s => s.Cuts.Contains(cut)).StockId;
            if (board.StockId is not null && board.StockId != from)
            {
                report.Fault("sheetcuts.stock", board.Id, $"is to come from {board.StockId}, is cut from {from}");
            }

            var (offLength, offWidth) = SheetSizes.Less(board, plan.Room);
            bool Due(double length, double width) => length >= board.Us.Length - offLength - Exact && length <= board.Us.Length + Exact
                && width >= board.Vs.Length - offWidth - Exact && width <= board.Vs.Length + Exact;
            if (!Due(cut.Length, cut.Width) && !(cut.Turned && Due(cut.Width, cut.Length)))
            {
                report.Fault("sheetcuts.size", board.Id,
                    $"cut {cut.Length:F2} × {cut.Width:F2}, drawn {board.Us.Length:F2} × {board.Vs.Length:F2} less at most {offLength:F2} × {offWidth:F2} mm");
            }
        }
    }
}
