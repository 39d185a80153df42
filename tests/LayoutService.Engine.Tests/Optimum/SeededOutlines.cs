namespace LayoutService.Engine.Tests.Optimum;

/// <summary>A corner in whole tape steps.</summary>
internal readonly record struct Corner(long X, long Y);

/// <summary>
/// Invented outlines in whole tape steps (a quarter inch or 5 mm). A step count is asked for in millimetres through
/// <c>steps</c>. Arms are at least 900 mm wide, jogs 20 to 300 mm deep.
/// </summary>
internal static class SeededOutlines
{
    private static readonly string[] Names = ["rectangle", "L", "T", "U", "Z", "jog", "chamfer", "slant", "cut-L"];

    public static (string Shape, List<Corner> Ring) Draw(RoomDice dice, Func<long, long> steps)
    {
        var shape = dice.Pick(Names);
        long w = dice.Whole(steps(2400), steps(9000)), h = dice.Whole(steps(2400), steps(9000));
        if (shape == "U")
        {
            w = Math.Max(w, steps(3600));
        }

        var ring = Ring(shape, dice, w, h, steps);
        bool mirror = dice.Chance(50), turn = dice.Chance(50);
        var turned = ring.Select(c => mirror ? c with { X = w - c.X } : c).Select(c => turn ? new Corner(c.Y, c.X) : c).ToList();
        return (shape, turned);
    }

    private static List<Corner> Ring(string shape, RoomDice dice, long w, long h, Func<long, long> steps)
    {
        var arm = steps(900);
        long Width(long whole) => dice.Whole(arm, whole - arm);
        switch (shape)
        {
            case "L":
                return Elbow(w, h, Width(w), Width(h));
            case "T":
                var stem = dice.Whole(arm, w - steps(600));
                long left = dice.Whole(steps(250), w - stem - steps(250)), cap = Width(h);
                long other = dice.Chance(50) ? cap : Width(h);
                return [new(0, 0), new(w, 0), new(w, other), new(left + stem, other), new(left + stem, h), new(left, h), new(left, cap), new(0, cap)];
            case "U":
                long west = dice.Whole(arm, (w - arm) / 2), east = dice.Whole(arm, (w - arm) / 2), floor = Width(h);
                var short1 = dice.Chance(50) ? h : dice.Whole(Math.Min(h, floor + steps(400)), h);
                return [new(0, 0), new(w, 0), new(w, h), new(w - east, h), new(w - east, floor), new(west, floor), new(west, short1), new(0, short1)];
            case "Z":
                var a = dice.Whole(steps(400), (w - arm) / 2);
                long low = dice.Whole(arm, h - arm), high = dice.Whole(arm, h - arm);
                return [new(0, 0), new(w - a, 0), new(w - a, low), new(w, low), new(w, h), new(a, h), new(a, high), new(0, high)];
            case "jog":
                long jog = dice.Whole(steps(20), steps(300)), at = Width(h);
                return [new(0, 0), new(w, 0), new(w, at), new(w - jog, at), new(w - jog, h), new(0, h)];
            case "chamfer":
                var c = dice.Whole(steps(300), steps(1200));
                return [new(0, 0), new(w, 0), new(w, h - c), new(w - c, h), new(0, h)];
            case "slant":
                return [new(0, 0), new(w, 0), new(w - dice.Whole(steps(150), steps(1200)), h), new(0, h)];
            case "cut-L":
                var cut = dice.Whole(steps(300), steps(700));
                return [new(cut, 0), .. Elbow(w, h, Width(w), Width(h)).Skip(1), new(0, cut)];
            default:
                return [new(0, 0), new(w, 0), new(w, h), new(0, h)];
        }
    }

    private static List<Corner> Elbow(long w, long h, long a, long b) => [new(0, 0), new(w, 0), new(w, b), new(a, b), new(a, h), new(0, h)];
}
