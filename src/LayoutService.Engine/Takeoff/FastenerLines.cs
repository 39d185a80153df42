using System.Globalization;
using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Takeoff;

/// <summary>Screws and wall fasteners, each counted where it is driven.</summary>
internal static class FastenerLines
{
    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts, PriceBook prices)
    {
        var needs = new List<Need>();
        needs.AddRange(Straps(facts));
        needs.AddRange(Nailers(facts));
        needs.AddRange(Boards(facts));
        var waste = prices.Waste("fasteners", facts.Allowances.FastenerWaste);
        return needs
            .Where(need => need.Counted > 0)
            .Select(need => need with { WasteFraction = waste, Packs = prices.Packs(need.Code, need.Id) })
            .Select(need => Ordering.Order(need, prices.Currency))
            .ToList();
    }

    private static IEnumerable<Need> Straps(TakeoffFacts facts)
    {
        var strap = facts.StrappingWish.Thickness;
        var crossings = facts.Strapping.Crossings;
        // a packed crossing takes a screw that reaches through its packing as well
        foreach (var group in crossings
            .GroupBy(crossing => ScrewLengths.ForStrap(strap + facts.Through + crossing.Packing, facts.Allowances.StrapScrewGrip))
            .OrderBy(group => group.Key.Length))
        {
            var joints = group.Count(crossing => crossing.Kind == CrossingKind.Joint);
            yield return Screws(
                facts,
                TakeoffCodes.StrapScrew,
                "#8 wood screw for straps",
                group.Key,
                group.Sum(crossing => crossing.Fasteners),
                $"{Number(group.Count() - joints)} crossings and {Number(joints)} joints");
        }

        var scabs = facts.Strapping.Scabs.Count;
        yield return Screws(
            facts,
            TakeoffCodes.ScabScrew,
            "#8 wood screw for scabs",
            ScrewLengths.ForScab(strap),
            scabs * facts.Allowances.ScrewsPerScab,
            $"{Number(scabs)} scabs, {Number(facts.Allowances.ScrewsPerScab)} each");
    }

    private static IEnumerable<Need> Nailers(TakeoffFacts facts)
    {
        var masonry = facts.Strapping.Nailers.Where(nailer => nailer.Masonry).ToList();
        var nailers = facts.Strapping.Nailers.Where(nailer => !nailer.Masonry).ToList();
        var boxed = facts.Bulkheads.Bulkheads.SelectMany(box => box.Members.Where(m => box.OnConcrete.Contains(m.Id))).ToList();
        yield return Of(
            TakeoffCodes.MasonryFastener, "Concrete screw for ledgers and nailers, as its maker says for this concrete",
            masonry, "ledgers and nailers on concrete" + (boxed.Count > 0 ? ", those of bulkheads among them" : string.Empty), boxed);
        yield return Of(TakeoffCodes.NailerFastener, "Fastener for ledgers, nailers and blocks, to suit what they are fastened to", nailers, "ledgers, nailers and blocks", []);

        Need Of(string code, string what, List<Nailer> those, string counted, List<BulkheadMember> members) => new()
        {
            Code = code,
            Description = what,
            Measure = Measure.Fastener,
            Counted = those.Sum(nailer => PerNailer(facts.Allowances, nailer)) + members.Sum(member => Along(facts.Allowances, member.Length)),
            KilogramsEach = null,
            CountedFrom = $"{Number(those.Count + members.Count)} {counted}",
        };
    }

    private static int PerNailer(Allowances allowances, Nailer nailer)
    {
        return nailer.Role == NailerRole.Block ? allowances.FastenersPerBlock : Along(allowances, nailer.Length);
    }

    /// <summary>Two at each end of a length and at every spacing between.</summary>
    internal static int Along(Allowances allowances, Length length)
    {
        var spacing = allowances.NailerFastenerSpacing.Units;
        return 2 * (int)(((length.Units + spacing - 1) / spacing) + 1);
    }

    /// <summary>Each layer of board has its own screws, as long as all the board under them asks for.</summary>
    private static IEnumerable<Need> Boards(TakeoffFacts facts) =>
        facts.Sheets.Pieces
            .GroupBy(piece => ScrewLengths.ForBoard((facts.SheetWish.Thickness * piece.Layer) + facts.StrappingWish.BehindBoard(facts.Through), facts.Ruleset))
            .OrderBy(group => group.Key.Length)
            .Select(group => new Need
            {
                Code = TakeoffCodes.BoardScrew,
                Description = $"Board screw for wood, coarse, {facts.TapeText(group.Key.Length)}",
                Id = group.Key.Name,
                Measure = Measure.Fastener,
                Counted = group.Sum(piece => piece.Screws) + (group.First().Layer == 1 ? facts.Bulkheads.Bulkheads.SelectMany(b => b.Boards).Sum(b => b.Screws) : 0),
                KilogramsEach = facts.Masses.BoardScrewGramsPerInch * group.Key.Length.Inches / 1000m,
                CountedFrom = $"the screws of {Number(group.Count() + (group.First().Layer == 1 ? facts.Bulkheads.Bulkheads.Sum(b => b.Boards.Count) : 0))} board pieces",
            });

    private static Need Screws(
        TakeoffFacts facts, string code, string what, (string Name, Length Length) screw, int count, string countedFrom) => new()
        {
            Code = code,
            Description = $"{what}, {facts.TapeText(screw.Length)}",
            Id = screw.Name,
            Measure = Measure.Fastener,
            Counted = count,
            KilogramsEach = facts.Masses.WoodScrewGramsPerInch * screw.Length.Inches / 1000m,
            CountedFrom = countedFrom,
        };

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
