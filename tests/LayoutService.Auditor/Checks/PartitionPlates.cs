using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// A partition that stands before the straps: where its plate runs along the joists between two of them, blocks or ledgers carry it
/// at 600 mm or less; every row that ends at it is named with it. A partition stood after the board asks for neither.
/// </summary>
internal static class PartitionPlates
{
    private const double Apart = 600;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var room = plan.Room;
        var given = plan.Json.Member("partitions").Items().ToDictionary(p => p.Member("id").Text()!);
        foreach (var partition in room.Standing)
        {
            if (!given.TryGetValue(partition.Id, out var answer))
            {
                report.Fault("partitions", partition.Id, $"not in the answer");
                continue;
            }

            var rows = answer.Member("rows").Items().Select(r => r.GetString()).ToHashSet();
            foreach (var piece in plan.Pieces.Where(p => !rows.Contains(p.RowId)))
            {
                if (new[] { piece.Low, piece.High }.Any(end => partition.Footprint.Distance(Planes.Point(end)) < 0.1))
                {
                    report.Fault("partitions", partition.Id, $"row {piece.RowId} ends at it and is not named");
                }
            }

            for (var i = 0; i + 1 < partition.Line.Count; i++)
            {
                Plate(plan, partition, partition.Line[i], partition.Line[i + 1], report);
            }
        }

        foreach (var (id, answer) in given.Where(g => g.Value.Member("top").Text() == "board"))
        {
            if (answer.Member("blocking").Items().Any())
            {
                report.Fault("partitions", id, $"stands after the board and has blocking");
            }
        }
    }

    // walk along the plate: a joist over it, or wood across its bay within reach, all the way
    private static void Plate(GivenPlan plan, AskedPartition partition, Uv from, Uv to, AuditReport report)
    {
        if (Math.Abs(from.V - to.V) > 0.01)
        {
            return;
        }

        var half = partition.Thickness / 2;
        var wood = plan.Nailers.Where(n => Math.Min(n.From.V, n.To.V) - half - 40 <= from.V && from.V <= Math.Max(n.From.V, n.To.V) + half + 40).ToList();
        for (var u = Math.Min(from.U, to.U) + 20; u < Math.Max(from.U, to.U) - 20; u += 25)
        {
            var supports = plan.Room.Joists.Supports(u);
            var over = supports.Any(s => Math.Min(s.To, from.V + half) - Math.Max(s.From, from.V - half) >= 15.9);
            // between the last joist and a wall there is nothing to block to
            var between = supports.Any(s => s.To <= from.V) && supports.Any(s => s.From >= from.V);
            var floor = partition.Footprint.Distance(Planes.Point(new(u, from.V))) < 0.1;
            if (!over && between && floor && !wood.Any(n => Math.Max(Math.Min(n.From.U, n.To.U) - u, u - Math.Max(n.From.U, n.To.U)) <= (Apart / 2) + plan.Room.Step + 5))
            {
                report.Fault("partitions", partition.Id, $"its plate has no joist or blocking near along {u:F0}");
                return;
            }
        }
    }
}
