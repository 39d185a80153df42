using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Rooms whose joists run two ways, square to each other: a rectangle divided across, an L with an addition, a T, a middle strip between two ends. What is
/// bought and asked beside comes from another room of the same seed; dice of its own.
/// </summary>
public static class TwoWayRooms
{
    /// <summary>A two-way room with the strapping, sheets and prices of <paramref name="request"/>, anywhere on the plane.</summary>
    public static string Of(string request, int seed)
    {
        var dice = new Dice(((ulong)seed * 0x9E3779B1UL) + 77);
        dice.Bits();
        var room = Rewriting.Copy(request).AsObject();
        var imperial = room["units"]!.GetValue<string>() == "imperial";
        var step = imperial ? 1 / 16m : 1m;
        long Steps(double millimetres) => (long)Math.Round(imperial ? millimetres * 16 / 25.4 : millimetres);
        long Some(int least, int most) => dice.Whole(Steps(least), Steps(most));
        var (width, height) = (Some(3000, 8000), Some(2500, 6000));
        var (more, high) = (Some(2000, 5000), Math.Min(Some(1800, 2400), height - Steps(400)));
        List<Corner> outline;
        List<(Corner Low, Corner High, bool Main)> regions;
        switch (dice.Whole(0, 3))
        {
            case 0:
                outline = Box(0, 0, width + more, height);
                regions = [(new(0, 0), new(width, height), true), (new(width, 0), new(width + more, height), false)];
                break;
            case 1:
                var shift = dice.Chance(50) ? 0 : height - high;
                outline = shift == 0
                    ? [new(0, 0), new(width + more, 0), new(width + more, high), new(width, high), new(width, height), new(0, height)]
                    : [new(0, 0), new(width, 0), new(width, shift), new(width + more, shift), new(width + more, height), new(0, height)];
                regions = [(new(0, 0), new(width, height), true), (new(width, shift), new(width + more, shift == 0 ? high : height), false)];
                break;
            case 2:
                var low = Some(200, 600);
                var top = Math.Min(height - Steps(200), low + high);
                outline = [new(0, 0), new(width, 0), new(width, low), new(width + more, low), new(width + more, top), new(width, top), new(width, height), new(0, height)];
                regions = [(new(0, 0), new(width, height), true), (new(width, low), new(width + more, top), false)];
                break;
            default:
                outline = Box(0, 0, width + more + more, height);
                regions = [(new(0, 0), new(more, height), false), (new(more, 0), new(more + width, height), true), (new(more + width, 0), new(width + more + more, height), false)];
                break;
        }

        // turned, moved and listed anyhow
        var swap = dice.Chance(50);
        var (ox, oy) = (dice.Whole(-Steps(9000), Steps(9000)), dice.Whole(-Steps(9000), Steps(9000)));
        Corner Put(Corner c) => swap ? new(c.Y + ox, c.X + oy) : new(c.X + ox, c.Y + oy);
        JsonArray Point(Corner c) => new(JsonValue.Create(Put(c).X * step), JsonValue.Create(Put(c).Y * step));
        var start = (int)dice.Whole(0, outline.Count - 1);
        List<Corner> listed = [.. outline.Skip(start), .. outline.Take(start)];
        if (dice.Chance(50))
        {
            listed.Reverse();
        }

        var mainAlongX = dice.Chance(50);
        var face = Steps(dice.Pick(38.1, 38.1, 44.45));
        var asked = room["room"]!.AsObject();
        asked["outline"] = new JsonArray([.. listed.Select(c => (JsonNode)Point(c))]);
        asked.Remove("openings");
        foreach (var member in new[] { "fixtures", "lightGrid", "mounts", "services", "insulation", "partitions" })
        {
            room.Remove(member);
        }

        var fields = new JsonArray();
        foreach (var (lo, hi, main) in regions)
        {
            var alongX = main == mainAlongX;
            var (from, to) = alongX ? (lo.Y, hi.Y) : (lo.X, hi.X);
            fields.Add(new JsonObject
            {
                ["id"] = $"field-{fields.Count + 1}",
                ["region"] = new JsonArray(Point(lo), Point(new(hi.X, lo.Y)), Point(hi), Point(new(lo.X, hi.Y))),
                ["run"] = alongX != swap ? "x" : "y",
                ["face"] = face * step,
                ["positions"] = new JsonArray([.. Places(dice, from, to, face, Steps).Select(p => (JsonNode)JsonValue.Create(p * step))]),
            });
        }

        room["joistFields"] = fields;
        return room.ToJsonString();
    }

    private static List<Corner> Box(long left, long low, long right, long high) => [new(left, low), new(right, low), new(right, high), new(left, high)];

    // from within 400 mm of one end to within 400 mm of the other, bays of 300 to 610 mm; some ends have a joist on the line
    private static List<long> Places(Dice dice, long from, long to, long face, Func<double, long> steps)
    {
        var at = from + dice.Whole((face / 2) + steps(10), steps(400));
        List<long> places = [at];
        while (to - at > steps(400))
        {
            var left = to - at - steps(25) - (face / 2);
            at += Math.Clamp(dice.Chance(60) ? steps(406.4) + dice.Whole(-steps(12), steps(12)) : dice.Whole(steps(300), steps(610)), Math.Min(steps(300), left), Math.Min(steps(610), left));
            places.Add(at);
        }

        return places;
    }
}
