using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Bought lengths of wood, counted as sticks of the cut plan, and the spare ones. Lumber is strap when its size is one
/// that rows are cut from; any other size is nailer stock. Straps come first; within a size, the longest length first.
/// </summary>
internal static class LumberLines
{
    /// <summary>Thickness below which lumber is one-inch goods: midway between 19 and 38 mm.</summary>
    private static readonly Length OneBy = Length.FromMillimetres(28.5m);

    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts, PriceBook prices)
    {
        var pieces = facts.Strapping.Rows.SelectMany(row => row.Pieces).Select(piece => piece.Id).ToHashSet();
        var members = facts.Bulkheads.Bulkheads.SelectMany(b => b.Members).Select(m => m.Id).ToHashSet();
        var sizes = facts.CutPlan.Sticks
            .Where(stick => members.Count == 0 || !stick.Cuts.Any(cut => members.Contains(cut.PieceId)))
            .GroupBy(stick => stick.Size)
            .Select(size => (Sticks: size.ToList(), Strap: size.Any(stick => stick.Cuts.Any(cut => pieces.Contains(cut.PieceId)))))
            .OrderByDescending(size => size.Strap);
        return sizes.SelectMany(size => CountSize(facts, prices, size.Sticks, size.Strap)).ToList();
    }

    private static IEnumerable<TakeoffLine> CountSize(TakeoffFacts facts, PriceBook prices, List<Stick> sticks, bool strap)
    {
        var section = strap
            ? (facts.StrappingWish.Thickness, facts.StrappingWish.Face)
            : LumberSections.Find(sticks[0].Size);
        var needs = sticks
            .GroupBy(stick => stick.StockId)
            .Select(stock => stock.ToList())
            .OrderByDescending(stock => stock[0].Length)
            .Select(stock => Lengths(facts, prices, stock, strap, section))
            .ToList();
        var lines = needs.Select(need => Ordering.Order(need, prices.Currency)).ToList();
        var fraction = section is { } cut && cut.Thickness >= OneBy ? facts.Allowances.TwoByCulls : facts.Allowances.OneByCulls;
        if (fraction > 0m)
        {
            var asked = decimal.Ceiling(sticks.Count * fraction);
            var left = lines.Select(line => strap ? Left(facts.StrappingWish, line) : decimal.MaxValue).ToList();
            var enough = Enumerable.Range(0, lines.Count).Where(i => left[i] >= asked).DefaultIfEmpty(left.IndexOf(left.Max())).First();
            lines.Add(Ordering.Order(Culls(needs[enough], lines[enough], sticks.Count, fraction, strap, Math.Min(asked, left[enough])), prices.Currency));
        }

        return lines;
    }

    private static Need Lengths(
        TakeoffFacts facts, PriceBook prices, List<Stick> sticks, bool strap, (Length Thickness, Length Face)? section)
    {
        var first = sticks[0];
        var length = facts.TapeText(first.Length);
        return new Need
        {
            Code = strap ? TakeoffCodes.Strap : TakeoffCodes.Nailer,
            Description = strap ? $"Strap {first.Size}, {length}" : $"{first.Size} for ledgers, nailers and blocks, {length}",
            Id = first.StockId,
            Measure = Measure.Length,
            Counted = sticks.Count,
            Packs = Packs(facts, prices, first.StockId, strap),
            KilogramsEach = section is { } cut ? facts.Masses.StickKilograms(cut.Thickness, cut.Face, first.Length) : null,
            CountedFrom = CountedFrom(first, sticks.Count),
        };
    }

    private static IReadOnlyList<Pack> Packs(TakeoffFacts facts, PriceBook prices, string stockId, bool strap)
    {
        var code = strap ? TakeoffCodes.Strap : TakeoffCodes.Nailer;
        var stock = strap ? facts.StrappingWish.Stock.FirstOrDefault(known => known.Id == stockId) : null;
        return stock is null
            ? prices.Packs(code, stockId)
            : prices.StockPacks(code, stock.Id, stock.Sku, stock.PackSize, stock.PackPrice);
    }

    // how many sticks of a line's stock the yard has beyond those that are cut
    private static decimal Left(StrappingWish wish, TakeoffLine line) =>
        wish.Stock.FirstOrDefault(stock => stock.Id == line.Id)?.Quantity is { } quantity ? Math.Max(0m, quantity - line.Counted) : decimal.MaxValue;

    /// <summary>
    /// The culls' fraction of all sticks of a size, at least one, of the longest length bought of which the yard has so many,
    /// since that can stand in for any other. Where no length suffices what is left of one is taken, and the line says so.
    /// Sticks that its packs hold beyond the cut plan are spares already and are not bought again.
    /// </summary>
    private static Need Culls(Need longest, TakeoffLine bought, int sticks, decimal fraction, bool strap, decimal asked)
    {
        var due = decimal.Ceiling(sticks * fraction);
        var wanting = due > asked ? $"; the yard has {asked:0} left of {longest.Id}" : string.Empty;
        var spare = Math.Min(asked, bought.Quantity - bought.Counted);
        var already = spare > 0m ? $"; {spare:0} already spare in the packs of {longest.Id}" : string.Empty;
        return longest with
        {
            Code = strap ? TakeoffCodes.StrapCulls : TakeoffCodes.NailerCulls,
            Description = $"Spare for culls: {longest.Description}",
            Counted = asked - spare,
            CountedFrom = string.Create(
                CultureInfo.InvariantCulture, $"{fraction * 100m:0.##} % of {Measures.Counted.Of(sticks, "stick")}, at least one: {due:0}{wanting}{already}"),
        };
    }

    private static string CountedFrom(Stick stick, int count)
    {
        var board = LumberSections.BoardFeet(stick.Size, stick.Length.Inches / 12m, count);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Measures.Counted.Of(count, "stick")} in the cut plan{(board is null ? string.Empty : $", {board:0.##} board feet")}");
    }
}
