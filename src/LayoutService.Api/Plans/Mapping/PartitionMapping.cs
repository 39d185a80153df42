using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Mapping;

internal static class PartitionMapping
{
    public static IReadOnlyList<PartitionWish> Of(IReadOnlyList<PartitionRequest>? partitions, Assumptions assumed) =>
        [.. (partitions ?? []).Select((partition, i) =>
        {
            var top = assumed.Word(
                string.Create(CultureInfo.InvariantCulture, $"#/partitions/{i}/top"), "What the top of the partition is fastened to", partition.Top, PartitionTopWord.Joists);
            return new PartitionWish(
                IdOf(partition, i),
                [.. partition.Line!.Select(p => RoomMapping.PointOf(p, assumed.Imperial))],
                partition.Thickness!.Value.In(assumed.Imperial),
                top switch { PartitionTopWord.Joists => PartitionTop.Joists, PartitionTopWord.Straps => PartitionTop.Straps, _ => PartitionTop.Board },
                partition.Rated ?? false);
        })];

    /// <summary>Id of a partition: the caller's, or its number in the list.</summary>
    public static string IdOf(PartitionRequest partition, int index) =>
        partition.Id ?? string.Create(CultureInfo.InvariantCulture, $"partition-{index + 1}");

    /// <summary>Adds to the digest what decides a plan.</summary>
    public static void Digest(IReadOnlyList<PartitionWish> partitions, Action<string, object?> add)
    {
        foreach (var partition in partitions)
        {
            add("partition", partition.Id);
            add("corners", partition.Line.Count);
            foreach (var corner in partition.Line)
            {
                add("corner", corner);
            }

            add("thickness", partition.Thickness);
            add("top", partition.Top);
            add("rated", partition.Rated);
        }
    }
}
