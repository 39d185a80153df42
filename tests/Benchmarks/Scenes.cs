using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Benchmarks;

/// <summary>Invented rooms to measure with; metres and millimetres here, exact lengths in the survey.</summary>
public static class Scenes
{
    /// <summary>6 × 9 m, joists across the short way at irregular places 340 to 480 mm apart, two of them doubled.</summary>
    public static Survey Typical(Effort effort) => Room(6000, 9000, effort, Joists(new Random(20), 9000));

    /// <summary>A room of about this area, its sides as 2 to 3, joists at irregular places.</summary>
    public static Survey OfArea(double squareMetres, Effort effort = Effort.Quick)
    {
        var across = (int)(Math.Round(Math.Sqrt(squareMetres * 1.5), 1) * 1000);
        var along = (int)(Math.Round(squareMetres / across * 1000, 2) * 1000);
        return Room(along, across, effort, Joists(new Random(20), across));
    }

    /// <summary>A room of any shape that the seed gives: rectangles, L and T shapes, cut corners, posts and chimneys, either unit.</summary>
    public static Survey Seeded(int seed)
    {
        var random = new Random(seed);
        var (width, depth) = (random.Next(220, 1200) * 10, random.Next(220, 1000) * 10);
        var across = random.Next(2) == 0 ? width : depth;
        var room = Room(width, depth, random.Next(12) == 0 ? Effort.Thorough : Effort.Quick, Joists(random, across));
        var openings = new List<Opening>();
        for (var i = random.Next(3); i > 0; i--)
        {
            var size = random.Next(8, 80) * 10;
            var (x, y) = (random.Next(30, (width / 10) - 100) * 10, random.Next(30, (depth / 10) - 100) * 10);
            if (openings.Count == 0)
            {
                openings.Add(new Opening(
                    $"o{i}",
                    size < 300 ? OpeningKind.Post : OpeningKind.Chimney,
                    [At(x, y), At(x + size, y), At(x + size, y + size), At(x, y + size)],
                    Mm(random.Next(2) * 50)));
            }
        }

        return room with
        {
            Units = random.Next(2) == 0 ? UnitSystem.Imperial : UnitSystem.Metric,
            Room = room.Room with { Outline = Outline(random, width, depth), Openings = openings },
            JoistFields = [room.JoistFields[0] with { RunDegrees = across == width ? 90 : 0 }],
            Strapping = room.Strapping with
            {
                JointsAllowed = random.Next(2) == 0 ? JointStyles.OnJoist : JointStyles.OnJoist | JointStyles.Scab,
            },
            Sheets = room.Sheets with { ButtCostPerMetre = random.Next(3) },
        };
    }

    private static Point[] Outline(Random random, int width, int depth)
    {
        var (x, y) = (width * random.Next(30, 70) / 1000 * 10, depth * random.Next(30, 70) / 1000 * 10);
        return random.Next(5) switch
        {
            0 => [At(0, 0), At(width, 0), At(width, y), At(x, y), At(x, depth), At(0, depth)],
            1 => [At(0, 0), At(width, 0), At(width, y), At(x, depth), At(0, depth)],
            2 => [At(0, 0), At(width, 0), At(width, depth), At(x + 600, depth), At(x + 600, depth - 130), At(x, depth - 130), At(x, depth), At(0, depth)],
            3 => [At(0, 0), At(x, 0), At(x, y / 2), At(width, y / 2), At(width, depth), At(0, depth)],
            _ => [At(0, 0), At(width, 0), At(width, depth), At(0, depth)],
        };
    }

    private static Survey Room(int width, int depth, Effort effort, List<Length> joists) => new()
    {
        Units = UnitSystem.Metric,
        Ruleset = "ca-nbc-2020",
        Effort = effort,
        Room = new RoomSurvey { Outline = [At(0, 0), At(width, 0), At(width, depth), At(0, depth)] },
        JoistFields = [new JoistField { Id = "main", RunDegrees = 0, Face = Mm(38), Depth = Mm(235), Positions = joists }],
        Strapping = new StrappingWish
        {
            SizeName = "1x3",
            Thickness = Mm(19),
            Face = Mm(64),
            MaxSpacing = Mm(400),
            JointsAllowed = JointStyles.OnJoist,
            MinPiece = Mm(600),
            Stock = [Strap(2400, 3.10m), Strap(3000, 4.05m), Strap(3600, 4.75m), Strap(4200, 5.80m), Strap(4800, 6.90m)],
            Kerf = Mm(3),
            EndTrim = Mm(3),
            EndClearance = Mm(6),
        },
        Sheets = new SheetWish
        {
            Type = "regular",
            Thickness = Mm(12.7m),
            Stock = [Sheet(2400, 14.90m), Sheet(3000, 19.40m), Sheet(3600, 23.10m)],
            CutAllowance = Mm(3),
            ButtCostPerMetre = 1.5m,
        },
        Prices = new PriceList { Currency = "CAD" },
    };

    private static List<Length> Joists(Random random, int across)
    {
        var found = new List<Length>();
        for (var at = random.Next(20, 120); at < across - 19; at += random.Next(340, 480))
        {
            found.Add(Mm(at));
            if (found.Count is 5 or 13 && at + 38 < across - 19)
            {
                at += 38;
                found.Add(Mm(at));
            }
        }

        return found;
    }

    private static StickStock Strap(int length, decimal price) => new($"1x3x{length}", Mm(length), PackPrice: price);

    private static SheetStock Sheet(int length, decimal price) => new($"1200x{length}", Mm(1200), Mm(length), PackPrice: price);

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    private static Point At(int x, int y) => new(Mm(x), Mm(y));
}
