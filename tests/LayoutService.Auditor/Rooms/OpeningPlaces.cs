namespace LayoutService.Auditor.Rooms;

/// <summary>A rectangular opening, in whole steps.</summary>
internal sealed record PlacedOpening(string Kind, Corner Low, Corner High)
{
    public IReadOnlyList<Corner> Ring => [Low, new(High.X, Low.Y), High, new(Low.X, High.Y)];
}

/// <summary>Places openings inside a room, clear of its walls and of each other, by trying places.</summary>
internal static class OpeningPlaces
{
    public static List<PlacedOpening> Draw(Dice dice, IReadOnlyList<Corner> room, Func<double, long> steps)
    {
        var placed = new List<PlacedOpening>();
        var wanted = dice.Chance(55) ? 0 : dice.Whole(1, 3);
        for (var i = 0; i < wanted; i++)
        {
            var kind = dice.Pick("post", "post", "chimney", "stair", "other");
            var (w, h, margin) = kind switch
            {
                "post" => (dice.Whole(80, 200), dice.Whole(80, 200), 250L),
                "chimney" => (dice.Whole(400, 1000), dice.Whole(400, 800), 450L),
                "stair" => (dice.Whole(850, 1000), dice.Whole(2000, 3200), 620L),
                _ => (dice.Whole(300, 1200), dice.Whole(300, 1200), 500L),
            };
            if (dice.Chance(50))
            {
                (w, h) = (h, w);
            }

            if (Place(dice, room, placed, kind, steps(w), steps(h), steps(margin)) is { } opening)
            {
                placed.Add(opening);
            }
        }

        return placed;
    }

    private static PlacedOpening? Place(Dice dice, IReadOnlyList<Corner> room, List<PlacedOpening> placed, string kind, long w, long h, long margin)
    {
        long lowX = room.Min(c => c.X) + margin, highX = room.Max(c => c.X) - margin - w;
        long lowY = room.Min(c => c.Y) + margin, highY = room.Max(c => c.Y) - margin - h;
        for (var attempt = 0; attempt < 30 && lowX < highX && lowY < highY; attempt++)
        {
            var low = new Corner(dice.Whole(lowX, highX), dice.Whole(lowY, highY));
            var opening = new PlacedOpening(kind, low, new(low.X + w, low.Y + h));
            if (Clear(room, opening, margin) && placed.All(p => Apart(p, opening, margin)))
            {
                return opening;
            }
        }

        return null;
    }

    private static bool Apart(PlacedOpening a, PlacedOpening b, long margin) =>
        a.High.X + margin < b.Low.X || b.High.X + margin < a.Low.X || a.High.Y + margin < b.Low.Y || b.High.Y + margin < a.Low.Y;

    private static bool Clear(IReadOnlyList<Corner> room, PlacedOpening o, long margin)
    {
        var inside = false;
        for (var i = 0; i < room.Count; i++)
        {
            var (a, b) = (room[i], room[(i + 1) % room.Count]);
            if (Meets(a, b, o.Low.X - margin, o.Low.Y - margin, o.High.X + margin, o.High.Y + margin))
            {
                return false;
            }

            if ((a.Y > o.Low.Y) != (b.Y > o.Low.Y) && o.Low.X < a.X + ((double)(b.X - a.X) * (o.Low.Y - a.Y) / (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Liang and Barsky: does the segment pass through the box?</summary>
    private static bool Meets(Corner a, Corner b, double left, double low, double right, double high)
    {
        double from = 0, to = 1, dx = b.X - a.X, dy = b.Y - a.Y;
        foreach (var (p, q) in new[] { (-dx, a.X - left), (dx, right - a.X), (-dy, a.Y - low), (dy, high - a.Y) })
        {
            if (p == 0 && q < 0)
            {
                return false;
            }

            if (p < 0)
            {
                from = Math.Max(from, q / p);
            }
            else if (p > 0)
            {
                to = Math.Min(to, q / p);
            }
        }

        return from <= to;
    }
}
