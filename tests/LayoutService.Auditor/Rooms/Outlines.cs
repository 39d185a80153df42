namespace LayoutService.Auditor.Rooms;

/// <summary>A corner in whole steps: sixteenths of an inch or millimetres.</summary>
internal readonly record struct Corner(long X, long Y);

/// <summary>Outlines of rooms by family: rectangle, L, T, U, Z, jogged, chamfered, slanted, angled; no arm under 1.2 m.</summary>
internal static class Outlines
{
    public static List<Corner> Draw(Dice dice, RoomWishes wishes, Func<double, long> steps)
    {
        var families = new List<string> { "rectangle", "rectangle", "L", "L", "T", "U", "Z" };
        families.AddRange(wishes.Jogs ? ["jog"] : []);
        families.AddRange(wishes.OnlyOrthogonal ? [] : ["chamfer", "slant", "angled", "L-chamfer"]);
        var family = dice.Pick([.. families]);
        var least = family switch { "rectangle" => wishes.LeastSide, "T" or "U" => 3800, _ => 3000 };
        long Side() => Round(dice, steps(dice.Whole(Math.Min(Math.Max(least, wishes.LeastSide), wishes.MostSide), wishes.MostSide)), steps);
        var ring = Of(family, dice, Side(), Side(), steps);
        return Turned(ring, dice);
    }

    private static List<Corner> Of(string family, Dice dice, long w, long h, Func<double, long> steps)
    {
        var arm = steps(1200);
        long Cut(long from, long to) => Round(dice, dice.Whole(from, Math.Max(from, to)), steps);
        switch (family)
        {
            case "L":
                return L(w, h, Cut(arm, w - arm), Cut(arm, h - arm));
            case "T":
                var (left, right, shelf) = (Cut(steps(600), (w / 2) - arm), Cut(steps(600), (w / 2) - arm), Cut(arm, h - arm));
                return [new(0, 0), new(w, 0), new(w, shelf), new(w - right, shelf), new(w - right, h), new(left, h), new(left, shelf), new(0, shelf)];
            case "U":
                var (west, east, floor) = (Cut(arm, (w / 2) - steps(500)), Cut(arm, (w / 2) - steps(500)), Cut(arm, h - steps(600)));
                return [new(0, 0), new(w, 0), new(w, h), new(w - east, h), new(w - east, floor), new(west, floor), new(west, h), new(0, h)];
            case "Z":
                var (a, low, high) = (Cut(steps(500), (w - arm) / 2), Cut(steps(500), h - arm), Cut(arm, h - steps(500)));
                return [new(0, 0), new(w - a, 0), new(w - a, low), new(w, low), new(w, h), new(a, h), new(a, high), new(0, high)];
            case "jog":
                var (jog, at) = (Cut(steps(20), steps(300)), Cut(arm, h - arm));
                return [new(0, 0), new(w, 0), new(w, at), new(w - jog, at), new(w - jog, h), new(0, h)];
            case "chamfer":
                var (cx, cy) = (Cut(steps(300), steps(1400)), dice.Chance(50) ? 0 : Cut(steps(300), steps(1400)));
                return dice.Chance(50)
                    ? [new(0, 0), new(w, 0), new(w, h - (cy == 0 ? cx : cy)), new(w - cx, h), new(0, h)]
                    : [new(cx, 0), new(w - cx, 0), new(w, cx), new(w, h), new(0, h), new(0, cx)];
            case "slant":
                return [new(0, 0), new(w, 0), new(w - Cut(steps(150), steps(1500)), h), new(0, h)];
            case "angled":
                long In() => Cut(steps(50), steps(900));
                return [new(In(), In()), new(w - In(), 0), new(w, h - In()), new(In(), h)];
            case "L-chamfer":
                var corner = Cut(steps(300), steps(800));
                return [new(corner, 0), .. L(w, h, Cut(arm, w - arm), Cut(arm, h - arm)).Skip(1), new(0, corner)];
            default:
                return [new(0, 0), new(w, 0), new(w, h), new(0, h)];
        }
    }

    private static List<Corner> L(long w, long h, long a, long b) =>
        [new(0, 0), new(w, 0), new(w, b), new(a, b), new(a, h), new(0, h)];

    /// <summary>A tape is mostly read to a quarter inch or five millimetres, sometimes finer.</summary>
    private static long Round(Dice dice, long steps, Func<double, long> of)
    {
        var coarse = dice.Chance(15) ? 1 : of(6.35);
        return Math.Max(1, steps / Math.Max(1, coarse)) * Math.Max(1, coarse);
    }

    private static List<Corner> Turned(List<Corner> ring, Dice dice)
    {
        var (mirror, turn) = (dice.Chance(50), dice.Chance(50));
        return ring.Select(c => mirror ? c with { X = -c.X } : c).Select(c => turn ? new Corner(c.Y, -c.X) : c).ToList();
    }
}
