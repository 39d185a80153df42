using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;

namespace LayoutService.Auditor.Rooms;

/// <summary>A room and the two that it falls into, each a request; all three lie on the same plane, in the same units.</summary>
/// <param name="Whole">The room.</param>
/// <param name="WithCorners">The same room, the ends of the line listed as corners although its walls go straight on there.</param>
/// <param name="Low">What lies below the line.</param>
/// <param name="High">What lies above it.</param>
/// <param name="AlongX">True where the line runs along x.</param>
/// <param name="At">Where it runs: y where it runs along x, else x.</param>
/// <param name="Length">Its length from wall to wall.</param>
/// <param name="Parted">The two rooms with a partition between them: the upper one moved away by its thickness.</param>
/// <param name="Thickness">The thickness of the partition.</param>
public sealed record SplitRoom(
    string Whole, string WithCorners, string Low, string High, bool AlongX, decimal At, decimal Length, string Parted, decimal Thickness);

/// <summary>
/// Rooms of two boxes side by side, with the line between them: a rectangle, an L, a T lying down, a Z. The joists run along the line,
/// which is then in the middle of a bay, or square to it and over both boxes. What is bought comes from another room of the same seed.
/// </summary>
public static class SplitRooms
{
    public static SplitRoom Of(string request, int seed)
    {
        var dice = new Dice(((ulong)seed * 0x9E3779B1UL) + 4099);
        dice.Bits();
        var imperial = JsonNode.Parse(request)!["units"]!.GetValue<string>() == "imperial";
        var step = imperial ? 1 / 16m : 1m;
        long Steps(double millimetres) => (long)Math.Round(imperial ? millimetres * 16 / 25.4 : millimetres);
        long Some(int least, int most) => dice.Whole(Steps(least), Steps(most));
        var (cut, more, height) = (Some(2000, 6000), Some(2000, 5000), Some(2200, 6000));
        var (face, along) = (Steps(38.1), dice.Chance(50));
        var near = (face / 2) + Steps(12);

        // joists along the line stand within 200 mm of it on both sides; joists square to it run through
        var below = Places(dice, 0, along ? cut : height, near, Steps);
        var above = Places(dice, cut, cut + more, near, Steps);
        var (floor, top) = (0L, height);
        if (dice.Chance(60))
        {
            floor = Edge(dice, along ? null : below, Steps(height > Steps(3400) ? 1200 : 300), near, Steps);
        }

        var swap = dice.Chance(50);
        var (ox, oy) = (dice.Whole(-Steps(9000), Steps(9000)), dice.Whole(-Steps(9000), Steps(9000)));
        JsonArray Point(long u, long v) => new(JsonValue.Create(((swap ? v : u) + ox) * step), JsonValue.Create(((swap ? u : v) + oy) * step));
        string Room((long U, long V)[] ring, IEnumerable<long> places, long from, JsonObject? partition = null)
        {
            var room = Rewriting.Copy(request).AsObject();
            room["room"]!.AsObject().Remove("openings");
            foreach (var member in new[] { "fixtures", "lightGrid", "mounts", "services", "insulation", "partitions" })
            {
                room.Remove(member);
            }

            room["room"]!["outline"] = new JsonArray([.. ring.Select(c => (JsonNode)Point(c.U, c.V))]);
            room["joistFields"] = new JsonArray(new JsonObject
            {
                ["run"] = along == swap ? "x" : "y",
                ["face"] = face * step,
                ["positions"] = new JsonArray([.. places.Select(p => (JsonNode)JsonValue.Create((p - from) * step))]),
            });
            if (partition is not null)
            {
                room["partitions"] = new JsonArray(partition);
            }

            return room.ToJsonString();
        }

        (long, long)[] Both(long gap, bool corners) => floor == 0 && !corners
            ? [(0, 0), (cut + gap + more, 0), (cut + gap + more, top), (0, top)]
            : [(0, 0), (cut, 0), .. floor == 0 ? [] : new[] { (cut, floor) }, (cut + more, floor), (cut + more, top), .. corners ? new[] { (cut, top) } : [], (0, top)];
        var thickness = Steps(114.3);
        var wall = new JsonObject { ["id"] = "P1", ["line"] = new JsonArray(Point(cut + (thickness / 2), 0), Point(cut + (thickness / 2), height)), ["thickness"] = thickness * step, ["top"] = "joists" };
        List<long> all = along ? [.. below, .. above] : below;
        return new SplitRoom(
            Room(Both(0, corners: false), all, 0),
            Room(Both(0, corners: true), all, 0),
            Room([(0, 0), (cut, 0), (cut, height), (0, height)], below, 0),
            Room([(cut, floor), (cut + more, floor), (cut + more, top), (cut, top)], along ? above : below.Where(p => p > floor), along ? cut : floor),
            swap,
            (cut + (swap ? oy : ox)) * step,
            (top - floor) * step,
            floor == 0 ? Room(Both(thickness, corners: false), along ? [.. below, .. above.Select(p => p + thickness)] : below, 0, wall) : "",
            thickness * step);
    }

    // joists from within 200 mm of one end to within 200 mm of the other, bays of 610 mm at most
    private static List<long> Places(Dice dice, long from, long to, long near, Func<double, long> steps)
    {
        List<long> places = [from + dice.Whole(near, steps(200))];
        while (to - places[^1] > steps(200))
        {
            var left = to - places[^1] - near;
            places.Add(places[^1] + Math.Min(left, dice.Chance(60) ? steps(406.4) : dice.Whole(steps(300), steps(610))));
        }

        return places;
    }

    /// <summary>Where the upper box begins: with joists square to the line 12 to 200 mm before one of them and clear of the one before it.</summary>
    private static long Edge(Dice dice, List<long>? joists, long most, long near, Func<double, long> steps)
    {
        var edge = dice.Whole(steps(200), most);
        if (joists?.Find(p => p > edge) is { } next)
        {
            edge = next - dice.Whole(near, steps(200));
            return edge > steps(100) && joists.TrueForAll(p => Math.Abs(p - edge) >= near) ? edge : 0;
        }

        return edge;
    }
}
