using LayoutService.Api.Plans.Answers;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Api.Documents;

/// <summary>What is bought of a line in one size of pack; a line without packs is bought as it is.</summary>
internal sealed record PackAmount(PackAnswer? Pack, decimal Quantity, decimal? Amount);

/// <summary>Divides a line over its packs, so that the amounts add up to the line's to the minor unit.</summary>
internal static class PackAmounts
{
    public static IReadOnlyList<PackAmount> Of(TakeoffLineAnswer line, string? currency)
    {
        if (line.Packs.Count == 0)
        {
            return [new(null, line.Quantity, line.Amount)];
        }

        var amounts = line.Amount is { } amount && currency is not null
            ? Allocation.Of(amount, [.. line.Packs.Select(p => p.Count * (p.PackPrice ?? 0))], currency)
            : null;
        return [.. line.Packs.Select((pack, i) => new PackAmount(pack, pack.Count * pack.PackSize, amounts?[i]))];
    }
}
