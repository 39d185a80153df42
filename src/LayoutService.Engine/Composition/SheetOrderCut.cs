using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>The sheets of an order as cut.</summary>
public sealed record CutBoards(IReadOnlyList<CutSheet> Sheets, CutResult Result);

/// <summary>Cuts the sheets of an order.</summary>
public sealed class SheetOrderCut(CutOrder order, SheetOrder sheets)
{
    /// <summary>Areas are counted in squares of so many length units a side: exact for whole sixty-fourths and tenths of a millimetre.</summary>
    private const long Grain = 25;

    public (CutBoards? Cut, IReadOnlyList<Finding> Obstacles) Of()
    {
        var tooLarge = sheets.Wanted.Where(w => !sheets.Stock.Any(s => Fits(w, s))).Select(w => w.Id).ToList();
        if (tooLarge.Count > 0)
        {
            return (null, [CutFindings.LargerThanStock(tooLarge)]);
        }

        var prices = OrderPrices.Of(
            [.. sheets.Stock.Select(s => (s.PackPrice, s.PackSize))],
            [.. sheets.Stock.Select(s => Math.Max(1, s.Width.Units / Grain) * Math.Max(1, s.Length.Units / Grain))],
            order.Units == UnitSystem.Imperial ? Square(12 * Length.PerInch / Grain) : Square(1000 * Length.PerMillimetre / Grain));
        var kinds = new List<int>();
        var wanted = new List<SheetWanted>();
        for (var w = 0; w < sheets.Wanted.Count; w++)
        {
            var panel = sheets.Wanted[w];
            for (var n = 0; n < panel.Count; n++)
            {
                kinds.Add(w);
                wanted.Add(new SheetWanted(panel.Width.Units, panel.Length.Units, (FactoryEdges)panel.FactoryEdges, panel.MayTurn));
            }
        }

        var plan = SheetCutter.Solve(
            new SheetProblem
            {
                Wanted = wanted,
                Stock = [.. sheets.Stock.Select((s, k) => new SheetKind(s.Width.Units, s.Length.Units, prices.Costs[k], s.Quantity))],
                Kerf = sheets.Kerf.Units,
                EndTrim = sheets.EndTrim.Units,
                EdgeTrim = sheets.EdgeTrim.Units,
            },
            OrderBudget.SheetSteps(order.Effort, wanted.Distinct().Count()));
        if (plan.Unplaced.Count > 0)
        {
            return (null, [CutFindings.OutOfStock("sheets", [.. plan.Unplaced.Select(p => kinds[p]).Distinct().Order().Select(w => sheets.Wanted[w].Id)], plan.Unplaced.Count)]);
        }

        var names = new PieceNames([.. sheets.Wanted.Select(w => (w.Id, w.Count))]);
        return (
            new CutBoards(
                [.. plan.Sheets.Select((s, i) => Write(s, i, kinds, names))],
                prices.Result("sheets", order, plan.Cost, plan.LowerBound, "area", order.Units == UnitSystem.Imperial ? "ft2" : "m2")),
            []);
    }

    private CutSheet Write(SheetUse sheet, int index, List<int> kinds, PieceNames names)
    {
        var stock = sheets.Stock[sheet.Kind];
        return new CutSheet(
            $"B{index + 1}",
            stock.Width,
            stock.Length,
            stock.Id,
            [.. sheet.Cuts.Select(c => new Ceilings.SheetCut(
                names.Next(kinds[c.Piece]), new Length(c.X), new Length(c.Y), new Length(c.Width), new Length(c.Length), c.Turned))],
            [.. sheet.Offcuts.Select(o => new SheetOffcut(new Length(o.X), new Length(o.Y), new Length(o.Width), new Length(o.Length)))]);
    }

    private bool Fits(WantedPanel panel, SheetStock stock)
    {
        var width = stock.Width - (sheets.EdgeTrim * 2);
        var length = stock.Length - (sheets.EndTrim * 2);
        var edges = sheets.EdgeTrim == default ? 2 : 0;
        var straight = panel.FactoryEdges switch
        {
            0 => panel.Width <= width,
            1 => edges > 0 && panel.Width <= width,
            _ => edges > 0 && panel.Width == width,
        };
        return (straight && panel.Length <= length)
            || (panel.MayTurn && panel.FactoryEdges == 0 && panel.Length <= width && panel.Width <= length);
    }

    private static decimal Square(decimal side) => side * side;
}
