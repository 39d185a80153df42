using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Steps;

/// <summary>Partitions that stand before the straps, those that stand under them, and those that wait for the board.</summary>
internal static class PartitionSteps
{
    public static void Before(StepList list, IReadOnlyList<PlannedPartition> partitions, bool direct)
    {
        foreach (var partition in partitions.Where(p => p.Wish.Top == PartitionTop.Joists))
        {
            list.Add(
                Sentence.Of(
                    "frame-partition",
                    $"Frame partition {partition.Id} and fasten its plate to the joists{(partition.Blocks.Count > 0 ? $" and to {StepList.Names(partition.Blocks)}" : string.Empty)}: "
                    + $"{(direct ? "the board stops" : "straps and board stop")} at it.",
                    ("partition", partition.Id), ("blocks", StepList.Names(partition.Blocks))),
                [new Touch(TouchKinds.Partition, partition.Id)]);
        }
    }

    /// <summary>Those that stand under the straps, before the board.</summary>
    public static void Under(StepList list, IReadOnlyList<PlannedPartition> partitions)
    {
        foreach (var partition in partitions.Where(p => p.Wish.Top == PartitionTop.Straps))
        {
            list.Add(
                Sentence.Of(
                    "frame-partition-under-straps",
                    $"Frame partition {partition.Id} under the straps{(partition.Rows.Count > 0 ? $" and screw its plate up into rows {StepList.Names(partition.Rows)}" : string.Empty)}, without lifting them off their plane: the board stops at it.",
                    ("partition", partition.Id), ("rows", StepList.Names(partition.Rows))),
                [new Touch(TouchKinds.Partition, partition.Id)]);
        }
    }

    public static void After(StepList list, IReadOnlyList<PlannedPartition> partitions)
    {
        foreach (var partition in partitions.Where(p => p.Wish.Top == PartitionTop.Board))
        {
            list.Add(
                Sentence.Of(
                    "stand-partition",
                    $"Stand partition {partition.Id} under the board{(partition.Rows.Count > 0 ? $" and screw its plate through the board into {(partition.Rows[0].StartsWith('J') ? "joists" : "rows")} {StepList.Names(partition.Rows)}" : string.Empty)}.",
                    ("partition", partition.Id), ("rows", StepList.Names(partition.Rows))),
                [new Touch(TouchKinds.Partition, partition.Id)]);
        }
    }
}
