using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;

using Stick = LayoutService.Engine.Ceilings.Stick;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Wood of one size that rooms of a job buy from the same stock at the same prices: cut together, or as the rooms' own plans
/// have it. Ids of sticks are unique in neither; <see cref="JobWriter"/> numbers them.
/// </summary>
/// <param name="Rooms">Numbers of the rooms.</param>
/// <param name="Together">The sticks as cut for all of them.</param>
/// <param name="Apart">The sticks as each room cuts them.</param>
/// <param name="MayBeApart">False when the quantities given do not suffice for the rooms' own sticks.</param>
/// <param name="Result">How good the cut is.</param>
public sealed record LumberPool(
    IReadOnlyList<int> Rooms, IReadOnlyList<Stick> Together, IReadOnlyList<Stick> Apart, bool MayBeApart, CutResult Result);

/// <summary>
/// Cuts the sticks of all rooms together. The pieces stand as the rooms have them, so what remains is plain cutting stock over
/// all of them; the rooms' own sticks are one of its plans, and are kept when the search finds none that costs less.
/// </summary>
public sealed class JobLumber(IReadOnlyList<JobRoom> rooms)
{
    /// <summary>Steps for one pool: a twentieth of what a cut plan alone may take, because a job has several pools.</summary>
    private const int Share = 20;

    public (IReadOnlyList<LumberPool>? Pools, IReadOnlyList<Finding> Obstacles) Of()
    {
        var parts = new List<(string Key, int Room, string Size, IReadOnlyList<StickStock> Offer, List<Stick> Sticks)>();
        for (var r = 0; r < rooms.Count; r++)
        {
            var survey = StockOnSite.Of(rooms[r].Survey).Survey;
            foreach (var part in rooms[r].Plan.CutPlan.Sticks.Select(s => (Offer: OfferOf(survey, s), Stick: s)).GroupBy(s => (s.Stick.Size, Key: Say(s.Offer))))
            {
                // only sticks that no list explains are known by what was seen of them
                var offer = part.First().Offer;
                parts.Add(($"{part.Key}\n{JobPrices.Key(survey.Prices)}", r, part.Key.Size, offer, [.. part.Select(s => Named(r, s.Stick))]));
            }
        }

        var pools = new List<LumberPool>();
        var obstacles = new List<Finding>();
        foreach (var pool in parts.GroupBy(part => part.Key).Select(pool => pool.ToList()))
        {
            var (made, obstacle) = Cut(pool[0].Size, pool[0].Offer, [.. pool.Select(p => p.Room)], [.. pool.SelectMany(p => p.Sticks)]);
            if (made is null)
            {
                obstacles.Add(obstacle!);
            }
            else
            {
                pools.Add(made);
            }
        }

        return obstacles.Count > 0 ? (null, obstacles) : (pools, []);
    }

    private (LumberPool? Pool, Finding? Obstacle) Cut(string size, IReadOnlyList<StickStock> offer, List<int> members, List<Stick> apart)
    {
        var first = rooms[members[0]].Survey;
        var priced = offer.All(s => s.PackPrice is not null);
        var kinds = offer.Where(s => s.Length > first.Strapping.EndTrim).ToList();
        var cuts = apart.SelectMany(s => s.Cuts).ToList();
        var problem = new StickProblem(
            [.. cuts.Select(c => new StickWanted(c.Length.Units, 1))],
            [.. kinds.Select(s => new StickKind(s.Length.Units, Cost(s, priced), s.Quantity))],
            first.Strapping.Kerf.Units,
            first.Strapping.EndTrim.Units);
        var steps = OrderBudget.StickSteps(first.Effort, cuts.Select(c => c.Length).Distinct().Count(), kinds.Any(k => k.Quantity is not null)) / Share;
        var plan = StickCutter.Solve(problem, steps);
        var costApart = apart.Sum(s => Cost(kinds.First(k => k.Id == s.StockId), priced));
        var enough = kinds.All(k => k.Quantity is null || apart.Count(s => s.StockId == k.Id) <= k.Quantity);
        if (plan.Missing.Count > 0 && !enough)
        {
            return (null, Findings.OutOfStock("job: " + size));
        }

        var better = plan.Missing.Count == 0 && (!enough || plan.Cost < costApart);
        var together = better
            ? [.. plan.Sticks.Select(s => new Stick(string.Empty, size, kinds[s.Kind].Length, kinds[s.Kind].Id, [.. s.Pieces.Select(p => cuts[p])], new Length(s.Offcut)))]
            : apart;
        var cost = better ? plan.Cost : costApart;
        var bound = plan.Missing.Count > 0 ? 0 : Math.Min(cost, plan.LowerBound);
        return (new LumberPool(members, together, apart, enough, Result(size, first, priced, cost, bound)), null);
    }

    private static CutResult Result(string size, Survey survey, bool priced, long cost, long bound)
    {
        var perUnit = priced ? 10_000m : survey.Units == UnitSystem.Imperial ? Length.PerInch : Length.PerMillimetre;
        return new CutResult(
            size,
            priced ? "cost" : "length",
            cost / perUnit,
            bound / perUnit,
            cost == bound ? 0 : bound == 0 ? 1 : decimal.Round((decimal)(cost - bound) / bound, 6),
            cost == bound,
            priced ? survey.Prices?.Currency ?? string.Empty : survey.Units == UnitSystem.Imperial ? "in" : "mm");
    }

    private Stick Named(int room, Stick stick) =>
        stick with { Cuts = [.. stick.Cuts.Select(c => c with { PieceId = $"{rooms[room].Name}/{c.PieceId}" })] };

    /// <summary>The stock that a stick was chosen from: the strap's, a bulkhead frame's, the ledgers', or the stick itself where none has it.</summary>
    private static IReadOnlyList<StickStock> OfferOf(Survey survey, Stick stick)
    {
        var wish = survey.Strapping;
        if (stick.Size == LumberCut.SizeName(wish) && wish.Stock.Any(s => s.Id == stick.StockId && s.Length == stick.Length))
        {
            return wish.Stock;
        }

        if (survey.Bulkheads.FirstOrDefault(b => b.Frame.Size == stick.Size && b.Frame.Stock.Any(s => s.Id == stick.StockId && s.Length == stick.Length)) is { } box)
        {
            return box.Frame.Stock;
        }

        var ledgers = LedgerStock.For(survey.Units);
        return stick.Size == LedgerStock.Size && ledgers.Any(s => s.Id == stick.StockId) ? ledgers : [new StickStock(stick.StockId, stick.Length)];
    }

    private static string Say(IReadOnlyList<StickStock> offer) => string.Join('\n', offer.Select(s =>
        string.Create(CultureInfo.InvariantCulture, $"{s.Id}|{s.Length.Units}|{s.Sku}|{s.PackSize}|{s.PackPrice}|{s.Quantity}")));

    private static long Cost(StickStock stock, bool priced) =>
        priced ? (long)decimal.Round(stock.PackPrice!.Value * 10_000m / stock.PackSize) : stock.Length.Units;
}
