using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Benchmarks;

/// <summary>
/// The typical room whole: the bare one with twelve slim lights in three columns, a duct under the joists along one wall in
/// a bulkhead, a duct between the joists, and batts of two thicknesses. The same room, but for
/// its joists, as the example <c>typical-room</c>.
/// </summary>
public static class FurnishedRoom
{
    public static Survey Of(Effort effort)
    {
        var bare = Scenes.Typical(effort);
        return bare with
        {
            Room = bare.Room with { Heights = [new HeightReading(null, Mm(2500))], FloorBuildUp = Mm(19), Use = "habitable" },
            Services =
            [
                Duct("trunk", [At(300, 0), At(300, 9000)], 300, 0, 200),
                Duct("branch", [At(300, 4000), At(5600, 4000)], 150, -200, -20),
            ],
            Bulkheads =
            [
                new BulkheadWish
                {
                    Id = "side", Edges = [3], Width = Mm(600), Drop = Mm(230),
                    Frame = new FrameWish("2x2", Mm(38), Mm(38), [.. new[] { 2400, 3000, 3600 }.Select(l => new StickStock($"2x2-{l}", Mm(l)))]),
                },
            ],
            Fixtures = [.. Enumerable.Range(0, 12).Select(Light)],
            Insulation = new InsulationWish
            {
                Purpose = InsulationPurpose.Sound,
                Batts = [new Batt("m3", Mm(76), Mm(387), Mm(1194), 2.1m, true, 12, 68.5m), new Batt("m6", Mm(152), Mm(387), Mm(1194), 4.2m, false, 6, 72m)],
                JoistDepths = [Mm(235)],
            },
        };
    }

    private static FixtureWish Light(int index) => new()
    {
        Id = $"L{index + 1}",
        Kind = FixtureKind.SlimLight,
        At = At(1400 + (1333 * (index % 3)), 1125 + (2250 * (index / 3))),
        Cutout = new Cutout(Mm(105), Mm(105), true),
        BodyDepth = Mm(13),
        RemoteBox = new RemoteBox(Mm(90), Mm(120), Mm(32)),
        ClipReach = Mm(19),
        InsulationContact = true,
        MaxShift = Mm(150),
        EdgeClearance = Mm(13),
    };

    private static Service Duct(string id, IReadOnlyList<Point> path, int width, int top, int bottom) => new()
    {
        Id = id,
        Kind = ServiceKind.Duct,
        Path = path,
        Width = Mm(width),
        Top = Mm(top),
        Bottom = Mm(bottom),
        Clearance = Length.Zero,
        Hot = false,
        NeedsReach = false,
    };

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    private static Point At(int x, int y) => new(Mm(x), Mm(y));
}
