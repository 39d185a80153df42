using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>A rectangular opening in whole tape steps.</summary>
internal readonly record struct Hole(OpeningKind Kind, Corner Low, Corner High)
{
    public Corner[] Ring => [Low, new(High.X, Low.Y), High, new(Low.X, High.Y)];
}

/// <summary>Posts, chimneys and stairs inside a room, at least 350 mm clear of its walls and of each other.</summary>
internal static class SeededHoles
{
    public static List<Hole> Draw(RoomDice dice, List<Corner> room, Func<long, long> steps)
    {
        var placed = new List<Hole>();
        var wanted = dice.Chance(50) ? 0 : dice.Whole(1, 2);
        var margin = steps(350);
        for (var i = 0; i < wanted; i++)
        {
            var kind = dice.Pick(OpeningKind.Post, OpeningKind.Post, OpeningKind.Chimney, OpeningKind.Stair);
            var (w, h) = kind switch
            {
                OpeningKind.Post => (steps(dice.Whole(80, 200)), steps(dice.Whole(80, 200))),
                OpeningKind.Chimney => (steps(dice.Whole(450, 900)), steps(dice.Whole(450, 900))),
                _ => (steps(dice.Whole(850, 1000)), steps(dice.Whole(2000, 2800))),
            };
            (w, h) = dice.Chance(50) ? (h, w) : (w, h);
            for (var attempt = 0; attempt < 20; attempt++)
            {
                var low = new Corner(
                    dice.Whole(room.Min(c => c.X) + margin, room.Max(c => c.X) - margin - w),
                    dice.Whole(room.Min(c => c.Y) + margin, room.Max(c => c.Y) - margin - h));
                var hole = new Hole(kind, low, new Corner(low.X + w, low.Y + h));
                if (Inside(room, Wider(hole, margin)) && placed.TrueForAll(p => Apart(p, Wider(hole, margin))))
                {
                    placed.Add(hole);
                    break;
                }
            }
        }

        return placed;
    }

    private static Hole Wider(Hole h, long by) => h with { Low = new(h.Low.X - by, h.Low.Y - by), High = new(h.High.X + by, h.High.Y + by) };

    private static bool Apart(Hole a, Hole b) => a.High.X < b.Low.X || b.High.X < a.Low.X || a.High.Y < b.Low.Y || b.High.Y < a.Low.Y;

    // every corner of the box in the room, and no corner or edge of the room in the box (sampled at the tape's step)
    private static bool Inside(List<Corner> room, Hole box)
    {
        if (!box.Ring.All(c => Holds(room, c)))
        {
            return false;
        }

        for (var i = 0; i < room.Count; i++)
        {
            var (a, b) = (room[i], room[(i + 1) % room.Count]);
            var parts = Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y));
            for (long k = 0; k <= parts; k++)
            {
                double x = a.X + ((double)(b.X - a.X) * k / parts), y = a.Y + ((double)(b.Y - a.Y) * k / parts);
                if (x > box.Low.X && x < box.High.X && y > box.Low.Y && y < box.High.Y)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static bool Holds(List<Corner> room, Corner place)
    {
        var inside = false;
        for (var i = 0; i < room.Count; i++)
        {
            var (a, b) = (room[i], room[(i + 1) % room.Count]);
            if ((a.Y > place.Y) != (b.Y > place.Y) && place.X < a.X + ((double)(b.X - a.X) * (place.Y - a.Y) / (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
