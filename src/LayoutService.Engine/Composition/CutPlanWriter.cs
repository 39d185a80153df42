using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>The sheets as cut, for parts given by index.</summary>
public sealed record CutBoard(IReadOnlyList<(SheetStock Stock, SheetUse Use)> Sheets, IReadOnlyDictionary<int, SheetStock> StockOf, CutResult Result);

/// <summary>Cuts the board parts from sheets.</summary>
public static class BoardCut
{
    /// <summary>The boards of bulkheads as the cutter wants them: no edge of theirs has to be the factory's, and they may be turned.</summary>
    public static IEnumerable<SheetWanted> OfBulkheads(IEnumerable<PlannedBoard> boards) =>
        boards.Select(b => new SheetWanted(b.Width, b.Length, FactoryEdges.None, true));

    /// <summary>A layout's pieces and the bulkheads' boards, to be cut together.</summary>
    public static SheetProblem Problem(FramedRoom room, Sheets.SheetLayout layout, IEnumerable<SheetWanted> bulkheads, IReadOnlyList<SheetKind> stock) => new()
    {
        Wanted = [.. LayoutCosting.Wanted(room, layout).Select(b => new SheetWanted(b.Width, b.Length, (FactoryEdges)b.FactoryEdges)), .. bulkheads],
        Stock = stock,
    };

    public static (CutBoard? Cut, Finding? Obstacle) Of(FramedRoom room, IReadOnlyList<BoardPart> parts, CutBulkheads bulkheads)
    {
        var prices = new StockPrices(room.Survey.Sheets);
        var pricing = new SheetPricing(room.Survey.Sheets, prices);
        var stock = room.Survey.Sheets.Stock;
        var plan = SheetCutter.Solve(
            new SheetProblem
            {
                Wanted =
                [
                    .. parts.Select(p => new SheetWanted(p.CutWidth, p.CutLength, (FactoryEdges)p.FactoryEdges)),
                    .. OfBulkheads(bulkheads.Boards),
                ],
                Stock = pricing.Kinds(),
            },
            room.Survey.Effort == Effort.Quick ? SheetCutter.QuickSteps : SheetCutter.ThoroughSteps);
        if (plan.Unplaced.Count > 0)
        {
            return (null, Findings.OutOfStock("sheets"));
        }

        var stockOf = new Dictionary<int, SheetStock>();
        foreach (var sheet in plan.Sheets)
        {
            foreach (var cut in sheet.Cuts)
            {
                stockOf[cut.Piece] = stock[sheet.Kind];
            }
        }

        var imperial = room.Survey.Units == UnitSystem.Imperial;
        var perUnit = prices.PerUnit(room.Survey.Units);
        var bound = Math.Min(plan.Cost, SheetBound.Of(room, prices, bulkheads.Boards.Sum(b => b.Area), room.Survey.Sheets.Layers));
        var result = new CutResult(
            "sheets",
            prices.Priced ? "cost" : "area",
            plan.Cost / perUnit,
            bound / perUnit,
            bound == 0 ? 0 : decimal.Round((decimal)(plan.Cost - bound) / bound, 6),
            plan.Cost == bound,
            prices.Priced ? room.Survey.Prices?.Currency ?? string.Empty : imperial ? "ft2" : "m2");
        return (new CutBoard([.. plan.Sheets.Select(s => (stock[s.Kind], s))], stockOf, result), null);
    }
}

/// <summary>Writes the cut plan with the ids of the pieces.</summary>
public static class CutPlanWriter
{
    public static CutPlan Write(FramedRoom room, CutLumber lumber, StrappingWriter straps, CutBoard board, SheetWriter sheets, CutBulkheads bulkheads, BulkheadWriter boxes)
    {
        var wish = room.Survey.Strapping;
        var sticks = lumber.StrapSticks.Concat(lumber.LedgerSticks).Select((s, i) => new Ceilings.Stick(
            $"K{i + 1}",
            s.Size,
            s.Stock.Length,
            s.Stock.Id,
            [.. s.Cuts.Select(c => new StickCut(Name(c.Run, c.Piece), new Length(c.Length)))],
            new Length(s.Offcut))).ToList();
        sticks.AddRange(boxes.Sticks(sticks.Count));
        var results = new List<CutResult>();
        if (lumber.StrapResult is not null)
        {
            results.Add(lumber.StrapResult);
        }

        if (lumber.LedgerResult is not null)
        {
            results.Add(lumber.LedgerResult);
        }

        if (bulkheads.Result is not null)
        {
            results.Add(bulkheads.Result);
        }

        results.Add(board.Result);
        return new CutPlan(
            sticks,
            [.. board.Sheets.Select((s, i) => Sheet(s.Stock, s.Use, i))],
            wish.Kerf,
            wish.EndTrim,
            results);

        string Name(int run, int piece) => run switch
        {
            -1 => straps.NailerIds[piece],
            -2 => straps.ScabId(piece),
            _ => straps.PieceIds[(run, lumber.Runs[run].Pieces[piece])],
        };

        CutSheet Sheet(SheetStock stock, SheetUse use, int index) => new(
            $"B{index + 1}",
            stock.Width,
            stock.Length,
            stock.Id,
            [.. use.Cuts.Select(c => new Ceilings.SheetCut(
                c.Piece < sheets.PieceIds.Length ? sheets.PieceIds[c.Piece] : boxes.BoardIds[c.Piece - sheets.PieceIds.Length], new Length(c.X), new Length(c.Y), new Length(c.Width), new Length(c.Length), c.Turned,
                c.Piece < sheets.PieceIds.Length ? sheets.FactoryEdges(c.Piece) : 0))],
            [.. use.Offcuts.Select(o => new SheetOffcut(new Length(o.X), new Length(o.Y), new Length(o.Width), new Length(o.Length)))]);
    }
}
