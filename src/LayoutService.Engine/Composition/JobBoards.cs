using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>Board of one kind and width that rooms of a job buy from the same stock: cut together, or as the rooms have it.</summary>
/// <param name="Rooms">Numbers of the rooms.</param>
/// <param name="Together">The sheets as cut for all of them.</param>
/// <param name="Apart">The sheets as each room cuts them.</param>
/// <param name="MayBeApart">False when the quantities given do not suffice for the rooms' own sheets.</param>
/// <param name="Result">How good the cut is.</param>
public sealed record BoardPool(
    IReadOnlyList<int> Rooms, IReadOnlyList<CutSheet> Together, IReadOnlyList<CutSheet> Apart, bool MayBeApart, CutResult Result);

/// <summary>
/// Cuts the sheets of all rooms together; each piece keeps the factory edges that its room asks for. The rooms' own sheets
/// are kept when the search finds nothing that costs less.
/// </summary>
public sealed class JobBoards(IReadOnlyList<JobRoom> rooms)
{
    public (IReadOnlyList<BoardPool>? Pools, IReadOnlyList<Finding> Obstacles) Of()
    {
        var parts = new List<(string Key, int Room, long Width, List<CutSheet> Sheets)>();
        for (var r = 0; r < rooms.Count; r++)
        {
            var survey = StockOnSite.Of(rooms[r].Survey).Survey;
            foreach (var part in rooms[r].Plan.CutPlan.Sheets.GroupBy(s => s.Width))
            {
                parts.Add(($"{Say(survey.Sheets, part.Key)}\n{JobPrices.Key(survey.Prices)}", r, part.Key.Units, [.. part.Select(s => Named(r, s))]));
            }
        }

        var pools = new List<BoardPool>();
        var obstacles = new List<Finding>();
        foreach (var pool in parts.GroupBy(part => part.Key).Select(pool => pool.ToList()))
        {
            if (Cut(pool[0].Width, [.. pool.Select(p => p.Room)], [.. pool.SelectMany(p => p.Sheets)]) is { } made)
            {
                pools.Add(made);
            }
            else
            {
                obstacles.Add(Findings.OutOfStock("job: sheets"));
            }
        }

        return obstacles.Count > 0 ? (null, obstacles) : (pools, []);
    }

    private BoardPool? Cut(long width, List<int> members, List<CutSheet> apart)
    {
        var survey = StockOnSite.Of(rooms[members[0]].Survey).Survey;
        var prices = new StockPrices(survey.Sheets);
        var pricing = new SheetPricing(survey.Sheets, prices);
        var stock = pricing.Stock(width);
        var cuts = apart.SelectMany(s => s.Cuts).ToList();
        var wanted = cuts.Select(Wanted).ToList();
        var plan = SheetCutter.Solve(
            new SheetProblem { Wanted = wanted, Stock = pricing.Kinds(width) },
            OrderBudget.SheetSteps(survey.Effort, wanted.Distinct().Count()));
        var costApart = apart.Sum(s => prices.Cost(stock.First(k => k.Id == s.StockId)));
        var enough = stock.All(k => k.Quantity is null || apart.Count(s => s.StockId == k.Id) <= k.Quantity);
        if (plan.Unplaced.Count > 0 && !enough)
        {
            return null;
        }

        var better = plan.Unplaced.Count == 0 && (!enough || plan.Cost < costApart);
        var cost = better ? plan.Cost : costApart;
        var bound = plan.Unplaced.Count > 0 ? 0 : Math.Min(cost, plan.LowerBound);
        var perUnit = prices.PerUnit(survey.Units);
        return new BoardPool(
            members,
            better ? [.. plan.Sheets.Select(s => Write(stock[s.Kind], s, cuts))] : apart,
            apart,
            enough,
            new CutResult(
                "sheets",
                prices.Priced ? "cost" : "area",
                cost / perUnit,
                bound / perUnit,
                cost == bound ? 0 : bound == 0 ? 1 : decimal.Round((decimal)(cost - bound) / bound, 6),
                cost == bound,
                prices.Priced ? survey.Prices?.Currency ?? string.Empty : survey.Units == UnitSystem.Imperial ? "ft2" : "m2"));
    }

    private static SheetWanted Wanted(Ceilings.SheetCut cut) => cut.Turned
        ? new SheetWanted(cut.Length.Units, cut.Width.Units, (FactoryEdges)cut.FactoryEdges, MayTurn: true)
        : new SheetWanted(cut.Width.Units, cut.Length.Units, (FactoryEdges)cut.FactoryEdges);

    private static CutSheet Write(SheetStock stock, SheetUse use, List<Ceilings.SheetCut> cuts) => new(
        string.Empty,
        stock.Width,
        stock.Length,
        stock.Id,
        [.. use.Cuts.Select(c => new Ceilings.SheetCut(
            cuts[c.Piece].PieceId, new Length(c.X), new Length(c.Y), new Length(c.Width), new Length(c.Length), c.Turned, cuts[c.Piece].FactoryEdges))],
        [.. use.Offcuts.Select(o => new SheetOffcut(new Length(o.X), new Length(o.Y), new Length(o.Width), new Length(o.Length)))]);

    private CutSheet Named(int room, CutSheet sheet) =>
        sheet with { Cuts = [.. sheet.Cuts.Select(c => c with { PieceId = $"{rooms[room].Name}/{c.PieceId}" })] };

    private static string Say(SheetWish wish, Length width) => string.Join('\n', wish.Stock.Where(s => s.Width == width).Select(s =>
        string.Create(CultureInfo.InvariantCulture, $"{wish.Type}|{wish.Thickness.Units}|{s.Id}|{s.Width.Units}|{s.Length.Units}|{s.Sku}|{s.PackSize}|{s.PackPrice}|{s.Quantity}")));
}
