using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Puts a partition or two into a room: from wall to wall or ending free, along the joists or square to them, framed before the
/// straps or after the board, clear of corners and openings. Its throws are its own. Null where joists do not run along x or y, or
/// no partition fits.
/// </summary>
public static class PartitionedRooms
{
    private const double Clear = 700;

    public static string? Of(string request, int seed, string? top = null, bool askew = false)
    {
        var dice = new Dice(((ulong)seed * 0xD1B5_4A32UL) ^ 0x9A27_17105);
        dice.Bits();
        var asked = new AskedRoom(JsonDocument.Parse(request).RootElement);
        if (asked.Frame.Degrees is not (0 or 90) || asked.Json.GetProperty("joistFields").GetArrayLength() > 1)
        {
            return null;
        }

        var room = Rewriting.Copy(request);
        var partitions = new JsonArray();
        for (var attempt = 0; attempt < 12 && partitions.Count < 1; attempt++)
        {
            if (Line(dice, asked) is { } straight && (askew ? Askew(dice, asked, straight) : straight) is { } line)
            {
                var board = dice.Chance(25);
                partitions.Add(new JsonObject
                {
                    ["id"] = $"P{partitions.Count + 1}",
                    ["line"] = new JsonArray(Point(asked, room, line.From), Point(asked, room, line.To)),
                    ["thickness"] = Rewriting.Number(asked.Imperial ? dice.Pick(3.5m, 4.5m, 5.5m) * 25.4m : dice.Pick(89m, 115m, 140m), asked.Imperial ? 25.4m : 1m),
                    ["top"] = top ?? (board ? "board" : "joists"),
                });
            }
        }

        if (partitions.Count == 0)
        {
            return null;
        }

        room["partitions"] = partitions;
        return room.ToJsonString();
    }

    private static (Uv From, Uv To)? Line(Dice dice, AskedRoom room)
    {
        var across = dice.Chance(50);
        var extent = room.Rings[0].Max(p => across ? p.U : p.V);
        var at = Math.Floor(extent * dice.Whole(15, 85) / 100 / room.Step) * room.Step;
        var passages = across ? room.Floor.AcrossAt(at) : room.Floor.AlongAt(at, _ => true);
        var fits = passages.Where(p => across ? p.FromWall.IsAlong && p.ToWall.IsAlong : p.FromWall.IsSquare && p.ToWall.IsSquare).Where(p => p.Length > 1500).ToList();
        if (fits.Count == 0)
        {
            return null;
        }

        var passage = dice.Pick([.. fits]);
        var free = dice.Chance(30);
        var from = passage.From;
        var to = free ? Math.Floor((passage.From + (passage.Length * dice.Whole(40, 70) / 100)) / room.Step) * room.Step : passage.To;
        // room for whole courses and rows on both sides, and round a free end
        foreach (var wall in room.Floor.Walls)
        {
            foreach (var corner in new[] { wall.A, wall.B })
            {
                var (off, beside) = across ? (corner.U - at, corner.V) : (corner.V - at, corner.U);
                if (Math.Abs(off) < Clear && beside > from - 1 && beside < passage.To + 1)
                {
                    return null;
                }
            }
        }

        return across ? (new(at, from), new(at, to)) : (new(from, at), new(to, at));
    }

    // the far end moved along the wall that it stands at; null where it leaves that wall or comes near a corner
    private static (Uv From, Uv To)? Askew(Dice dice, AskedRoom room, (Uv From, Uv To) line)
    {
        var across = line.From.U == line.To.U;
        var shift = Math.Floor(dice.Whole(250, 1800) * (dice.Chance(50) ? 1 : -1) / room.Step) * room.Step;
        var to = across ? new Uv(line.To.U + shift, line.To.V) : new Uv(line.To.U, line.To.V + shift);
        var plate = new Wall(0, line.From, to);
        var ends = room.Floor.Walls.SelectMany(w => new[] { w.A, w.B });
        return room.Floor.Walls.Any(w => w.Distance(to) < 0.05) && ends.All(corner => plate.Distance(corner) > Clear) ? (line.From, to) : null;
    }

    private static JsonArray Point(AskedRoom asked, JsonNode room, Uv at)
    {
        var (x, y) = asked.Frame.Back(at);
        var unit = Rewriting.Unit(room);
        return new JsonArray(Rewriting.Number(decimal.Round((decimal)x, 4), unit), Rewriting.Number(decimal.Round((decimal)y, 4), unit));
    }
}
