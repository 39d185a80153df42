using System.Globalization;
using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>What bulkheads add: frame lumber and its spares, frame screws, bead, fireblocking, access panels; and trim in length, for control joints as well.</summary>
internal static class BoxLines
{
    public static IEnumerable<TakeoffLine> Lumber(TakeoffFacts facts, PriceBook prices)
    {
        var members = facts.Bulkheads.Bulkheads.SelectMany(b => b.Members).Select(m => m.Id).ToHashSet();
        var sticks = facts.CutPlan.Sticks.Where(s => members.Count > 0 && s.Cuts.Any(c => members.Contains(c.PieceId))).ToList();
        foreach (var size in sticks.GroupBy(s => s.Size))
        {
            var section = LumberSections.Find(size.Key);
            var lines = new List<(Need Need, TakeoffLine Line)>();
            foreach (var stock in size.GroupBy(s => s.StockId).Select(s => s.ToList()).OrderByDescending(s => s[0].Length))
            {
                var known = facts.Bulkheads.Bulkheads.SelectMany(b => b.FrameStock).FirstOrDefault(s => s.Id == stock[0].StockId);
                var need = new Need
                {
                    Code = TakeoffCodes.BulkheadFrame,
                    Description = $"{size.Key} for bulkhead frames, {facts.TapeText(stock[0].Length)}",
                    Id = stock[0].StockId,
                    Measure = Measure.Length,
                    Counted = stock.Count,
                    Packs = known is null
                        ? prices.Packs(TakeoffCodes.BulkheadFrame, stock[0].StockId)
                        : prices.StockPacks(TakeoffCodes.BulkheadFrame, known.Id, known.Sku, known.PackSize, known.PackPrice),
                    KilogramsEach = section is { } cut ? facts.Masses.StickKilograms(cut.Thickness, cut.Face, stock[0].Length) : null,
                    CountedFrom = $"{Measures.Counted.Of(stock.Count, "stick")} in the cut plan",
                };
                lines.Add((need, Ordering.Order(need, prices.Currency)));
            }

            foreach (var line in lines)
            {
                yield return line.Line;
            }

            var fraction = section is { } s && s.Thickness >= Length.FromMillimetres(28.5m) ? facts.Allowances.TwoByCulls : facts.Allowances.OneByCulls;
            var asked = decimal.Ceiling(size.Count() * fraction);
            var spare = Math.Min(asked, lines[0].Line.Quantity - lines[0].Line.Counted);
            yield return Ordering.Order(
                lines[0].Need with
                {
                    Code = TakeoffCodes.BulkheadFrameCulls,
                    Description = $"Spare for culls: {lines[0].Need.Description}",
                    Counted = asked - spare,
                    CountedFrom = string.Create(CultureInfo.InvariantCulture, $"{fraction * 100m:0.##} % of {Measures.Counted.Of(size.Count(), "stick")}, at least one: {asked:0}"),
                },
                prices.Currency);
        }
    }

    public static IEnumerable<TakeoffLine> Finish(TakeoffFacts facts, PriceBook prices)
    {
        var boxes = facts.Bulkheads.Bulkheads;
        var needs = new[]
        {
            Count(facts, TakeoffCodes.BulkheadScrew, "Wood screw for bulkhead frames, to suit", Measure.Fastener, boxes.Sum(b => Screws(facts, b)), "two at each end of every member, and of a rail or ledger that holds the frame two every 400 mm as well; on concrete: masonry-fastener", prices.Waste("fasteners", facts.Allowances.FastenerWaste)),
            Bead(facts),
            Run(facts, TakeoffCodes.ControlJoint, "Control joint trim for gypsum board", facts.Sheets.ControlJointLength, "lines where the joists change direction"),
            Run(facts, TakeoffCodes.Fireblocking, "Fireblocking where bulkheads meet walls and joist bays, as the code wants it", boxes.SelectMany(b => b.Fireblocking).Aggregate(Length.Zero, (sum, t) => sum + t.Length), "walls that bulkheads run along"),
        }.Concat(facts.Fixtures.Fixtures.Where(f => f.Wish.AccessPanel).GroupBy(f => f.Wish.Cutout.Width).OrderByDescending(g => g.Key).Select(size =>
            Count(facts, TakeoffCodes.AccessPanel, $"Access panel with a trim flange, {facts.TapeText(size.Key)} square", Measure.Panel, size.Count(), "services that must be reached later", 0)));
        return needs
            .Where(need => need.Counted > 0)
            .Select(need => Ordering.Order(need with { Packs = prices.Packs(need.Code, need.Id) }, prices.Currency))
            .ToList();
    }

    // what holds the frame is fastened like a ledger of the ceiling, the rest at its ends
    private static int Screws(TakeoffFacts facts, Bulkhead box)
    {
        var backed = box.Backing.Select(b => b.MemberId).ToHashSet(StringComparer.Ordinal);
        return box.Members.Where(m => !box.OnConcrete.Contains(m.Id)).Sum(m => backed.Contains(m.Id) ? FastenerLines.Along(facts.Allowances, m.Length) : 4);
    }

    private static Need Bead(TakeoffFacts facts)
    {
        var wells = facts.Sheets.WellBeads;
        var open = facts.Sheets.EdgeBeadLength;
        var boxed = facts.Bulkheads.Bulkheads.SelectMany(b => b.Beads).Aggregate(Length.Zero, (sum, t) => sum + t.Length);
        return Run(
            facts, TakeoffCodes.CornerBead, "Corner bead", wells.Aggregate(boxed + open, (sum, bead) => sum + bead.Length),
            open > Length.Zero ? "edges that show: without a wall, of stairs and wells, of bulkheads" : wells.Count == 0 ? "outside corners of bulkheads" : boxed == Length.Zero ? "edges of stairs and wells" : "outside corners of bulkheads, edges of stairs and wells");
    }

    private static Need Count(TakeoffFacts facts, string code, string what, Measure measure, int count, string from, decimal waste) => new()
    {
        Code = code,
        Description = what,
        Measure = measure,
        Counted = count,
        WasteFraction = waste,
        KilogramsEach = null,
        CountedFrom = from,
    };

    private static Need Run(TakeoffFacts facts, string code, string what, Length length, string from)
    {
        var imperial = facts.Units == UnitSystem.Imperial;
        return new Need
        {
            Code = code,
            Description = what,
            Measure = imperial ? Measure.Foot : Measure.Metre,
            Counted = decimal.Round(imperial ? length.Inches / 12m : length.Millimetres / 1000m, 2),
            KilogramsEach = null,
            CountedFrom = from,
        };
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
