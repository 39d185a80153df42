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
        if (Math.Abs(from.U - to.U) < 0.01)
        {
            return;
        }

        var (half, slope) = (partition.Thickness / 2, (to.V - from.V) / (to.U - from.U));
        var stretch = Math.Sqrt(1 + (slope * slope));
        double At(double u) => from.V + (slope * (u - from.U));
        var wood = plan.Nailers.Where(n => Math.Min(n.From.V, n.To.V) - half - 40 <= At(n.From.U) && At(n.From.U) <= Math.Max(n.From.V, n.To.V) + half + 40).ToList();
        var low = Math.Min(from.U, to.U);
        var over = new List<double>();
        for (var u = low; u < Math.Max(from.U, to.U) && slope != 0; u += 5)
        {
            if (plan.Room.Joists.Supports(u).Any(s => Math.Min(s.To, At(u) + half) - Math.Max(s.From, At(u) - half) >= 15.9))
            {
                over.Add(u);
            }
        }

        for (var u = low + 20; u < Math.Max(from.U, to.U) - 20; u += 25)
        {
            var (v, supports) = (At(u), plan.Room.Joists.Supports(u));
            var held = supports.Any(s => Math.Min(s.To, v + half) - Math.Max(s.From, v - half) >= 15.9);
            // between the last joist and a wall there is nothing to block to
            var between = supports.Any(s => s.To <= v) && supports.Any(s => s.From >= v);
            var floor = partition.Footprint.Distance(Planes.Point(new(u, v))) < 0.1;
            var reach = (Apart / 2 / stretch) + plan.Room.Step + 5;
            if (!held && between && floor && !over.Exists(o => Math.Abs(o - u) <= reach)
                && !wood.Any(n => Math.Max(Math.Min(n.From.U, n.To.U) - u, u - Math.Max(n.From.U, n.To.U)) <= reach))
            {
                report.Fault("partitions", partition.Id, $"its plate has no joist or blocking near along {u:F0}");
                return;
            }
        }
    }
}
