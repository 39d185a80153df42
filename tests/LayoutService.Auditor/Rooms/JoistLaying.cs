using System.Text.Json.Nodes;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Lays joists under a room: the first and the last within 400 mm of the walls, bays of 300 to 610 mm, regular by
/// spacing and first, or as found: irregular, doubled, in any order.
/// </summary>
internal static class JoistLaying
{
    public static JsonObject Draw(Dice dice, RoomWishes wishes, IReadOnlyList<Corner> outline, LengthWriting write, Func<double, long> steps)
    {
        var field = new JsonObject();
        if (dice.Chance(70))
        {
            field["id"] = "field-1";
        }

        var degrees = Direction(field, dice, wishes);
        var points = outline.Select(c => ((double)c.X, (double)c.Y)).ToList();
        var frame = new Frame(degrees, points);
        var extent = points.Max(p => frame.At(p.Item1, p.Item2).V);
        var face = steps(dice.Pick(38.1, 38.1, 38.1, 44.45, 63.5));
        if (!wishes.Defaults || dice.Chance(80))
        {
            field["face"] = write.Length(face);
        }
        else
        {
            face = steps(38.1);
        }

        if (dice.Chance(70))
        {
            field["depth"] = write.Length(steps(dice.Pick(184.15, 235, 285.75)));
            field["kind"] = dice.Pick("sawn", "sawn", "i-joist");
        }

        if (dice.Chance(35) && Regular(dice, extent, face, steps) is var (first, spacing))
        {
            field["spacing"] = write.Length(spacing);
            field["first"] = write.Length(first);
        }
        else
        {
            var positions = Irregular(dice, wishes, extent, face, steps);
            field["positions"] = new JsonArray([.. positions.Select(write.Length)]);
        }

        return field;
    }

    private static double Direction(JsonObject field, Dice dice, RoomWishes wishes)
    {
        if (dice.Chance(75))
        {
            var run = dice.Pick("x", "y");
            field["run"] = run;
            return run == "x" ? 0 : 90;
        }

        var degrees = wishes.ObliqueJoists && dice.Chance(25) ? dice.Pick(15m, 22.5m, 30m, 45m, 60m, 112.5m, 135m, 150m) : dice.Pick(0m, 90m);
        field["runDegrees"] = degrees;
        return (double)degrees;
    }

    /// <summary>First and spacing that leave both walls within 400 mm, no joist half in the wall; null when none was found.</summary>
    private static (long First, long Spacing)? Regular(Dice dice, double extent, long face, Func<double, long> steps)
    {
        for (var attempt = 0; attempt < 20; attempt++)
        {
            var spacing = steps(dice.Pick(304.8, 406.4, 406.4, 487.363, 609.6));
            var first = dice.Whole((face / 2) + steps(10), Math.Min(steps(400), spacing));
            var left = (extent - first) % spacing;
            if (left > (face / 2) + steps(10) && left < Math.Min(steps(400), spacing - face) && extent > first + spacing)
            {
                return (first, spacing);
            }
        }

        return null;
    }

    private static List<long> Irregular(Dice dice, RoomWishes wishes, double extent, long face, Func<double, long> steps)
    {
        var (least, most, reach) = (steps(300), steps(610), steps(400));
        var usual = steps(dice.Pick(304.8, 406.4, 406.4, 487.363, 600));
        var at = dice.Whole((face / 2) + steps(10), reach);
        var positions = new List<long> { at };
        while (extent - at > reach)
        {
            var room = (long)extent - at - steps(25) - (face / 2);
            var bay = dice.Chance(60) ? usual + dice.Whole(-steps(12), steps(12)) : dice.Whole(least, most);
            at += Math.Clamp(bay, Math.Min(least, room), Math.Min(most, room));
            positions.Add(at);
        }

        if (wishes.DoubledJoists && dice.Chance(35))
        {
            var doubled = (int)dice.Whole(0, positions.Count - 2);
            positions.Add(positions[doubled] + face);
        }

        if (dice.Chance(50))
        {
            dice.Shuffle(positions);
        }
        else
        {
            positions.Sort();
        }

        return positions;
    }
}
