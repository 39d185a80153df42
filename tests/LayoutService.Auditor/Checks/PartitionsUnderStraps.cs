using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// A partition framed under the straps: its plate is named with every row that lies over it, and no other; where it runs square to the joists
/// further than the row spacing a strap lies along each face, over the plate by 6 mm or more and past it by 19 mm or more for the board's edge.
/// </summary>
internal static class PartitionsUnderStraps
{
    private const double OverPlate = 6, ForBoard = 19;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var room = plan.Room;
        var half = room.Strapping.Face / 2;
        var given = plan.Json.Member("partitions").Items().ToDictionary(p => p.Member("id").Text()!);
        var under = room.Json.Member("partitions").Items().Where(p => p.Member("top").Text() == "straps").Select(p => p.Member("id").Text()).ToHashSet();
        foreach (var partition in room.Standing.Where(p => under.Contains(p.Id)))
        {
            var named = given[partition.Id].Member("rows").Items().Select(r => r.GetString()!).ToHashSet();
            foreach (var row in plan.Pieces.GroupBy(p => p.RowId))
            {
                var over = row.Max(p => Strap(p.U, half, p.Low.V, p.High.V).Meet(partition.Footprint).Area);
                if (over > 100 != named.Contains(row.Key) && over is > 100 or < 1)
                {
                    report.Fault("partitions.under", partition.Id, $"row {row.Key} lies over {over:F0} mm² of its plate and is {(named.Contains(row.Key) ? "" : "not ")}named");
                }
            }

            for (var i = 0; i + 1 < partition.Line.Count; i++)
            {
                var (from, to) = (partition.Line[i], partition.Line[i + 1]);
                if (Math.Abs(from.U - to.U) < 0.01 && Math.Abs(from.V - to.V) > room.Strapping.MaxSpacing + partition.Thickness + 1)
                {
                    Face(plan, partition, from, to, -1, report);
                    Face(plan, partition, from, to, 1, report);
                }
            }
        }
    }

    private static void Face(GivenPlan plan, AskedPartition partition, Uv from, Uv to, int side, AuditReport report)
    {
        var half = plan.Room.Strapping.Face / 2;
        var face = from.U + (side * partition.Thickness / 2);
        var rows = plan.Pieces.Where(p => half - ((p.U - face) * side) >= OverPlate - 0.1 && half + ((p.U - face) * side) >= ForBoard - 0.1 && Math.Abs(p.U - face) < half).ToList();
        for (var v = Math.Min(from.V, to.V) + 30; v < Math.Max(from.V, to.V) - 30; v += 40)
        {
            var beside = new Uv(face + (side * 2), v);
            if (plan.Room.Ceiling.Distance(Planes.Point(beside)) < 0.1 && !rows.Exists(p => p.Low.V - 1 <= v && v <= p.High.V + 1))
            {
                report.Fault("partitions.under", partition.Id, $"no strap carries plate and board along {face:F1} at {v:F0}");
                return;
            }
        }
    }

    private static NetTopologySuite.Geometries.Geometry Strap(double u, double half, double low, double high) =>
        Planes.Polygon([[new Uv(u - half, low), new Uv(u + half, low), new Uv(u + half, high), new Uv(u - half, high)]]);
}
