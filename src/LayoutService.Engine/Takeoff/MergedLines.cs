using System.Globalization;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Lines of several takeoffs as one order. Lines that are the same thing, in the same unit, with the same waste and the same
/// packs on sale are counted together and put into packs once, so that half a box here and half a box there is one box.
/// Where that were ever dearer than the packs bought apart (covering can be inexact for very many pack sizes), those stand.
/// </summary>
internal static class MergedLines
{
    /// <summary>A line of the whole order, and what each takeoff counted of it.</summary>
    public sealed record Merged(TakeoffLine Line, IReadOnlyDictionary<int, decimal> Counted);

    /// <param name="lines">The lines, each with the number of the takeoff that it comes from.</param>
    /// <param name="currency">ISO 4217 code; null or empty without prices.</param>
    public static IReadOnlyList<Merged> Of(IEnumerable<(int From, TakeoffLine Line)> lines, string? currency) =>
        [.. lines.GroupBy(entry => Key(entry.Line)).Select(same => One([.. same], currency))];

    /// <summary>The lines as they are, added up without buying anew.</summary>
    public static TakeoffLine Sum(IReadOnlyList<TakeoffLine> lines)
    {
        var first = lines[0];
        return first with
        {
            Counted = lines.Sum(line => line.Counted),
            Waste = lines.Sum(line => line.Waste),
            Quantity = lines.Sum(line => line.Quantity),
            Packs = [.. lines.SelectMany(line => line.Packs).GroupBy(pack => pack with { Count = 0 }).Select(same => same.Key with { Count = same.Sum(pack => pack.Count) })],
            Amount = lines.Any(line => line.Amount is null) ? null : lines.Sum(line => line.Amount),
            MassKilograms = lines.Any(line => line.MassKilograms is null) ? null : lines.Sum(line => line.MassKilograms),
            CountedFrom = lines.Count == 1 ? first.CountedFrom : Together(lines.Count),
        };
    }

    /// <summary>What makes two lines the same purchase.</summary>
    public static string Key(TakeoffLine line)
    {
        var need = line.Need;
        var packs = need is null ? [] : need.Packs.Select(pack => string.Create(CultureInfo.InvariantCulture, $"{pack.Id}|{pack.Sku}|{pack.Size}|{pack.Price}"));
        return string.Create(CultureInfo.InvariantCulture, $"{line.Code}\n{line.Id}\n{line.UnitCode}\n{need?.WasteFraction}\n{string.Join('\n', packs)}");
    }

    private static Merged One(List<(int From, TakeoffLine Line)> same, string? currency)
    {
        var counted = same.GroupBy(entry => entry.From).ToDictionary(from => from.Key, from => from.Sum(entry => entry.Line.Counted));
        var apart = Sum([.. same.Select(entry => entry.Line)]);
        if (same.Count == 1 || same[0].Line.Need is not { } need)
        {
            return new(apart, counted);
        }

        var together = Ordering.Order(need with { Counted = apart.Counted, CountedFrom = Together(same.Count) }, currency);
        return new(together.Amount > apart.Amount ? apart : together, counted);
    }

    private static string Together(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} rooms together");
}
