using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Seeded orders of two to five random rooms: one saw and one currency; in half of them the rooms of like units buy the first
/// such room's stock, so that there is something to pool.
/// </summary>
public static class SeededJobs
{
    /// <summary>The request of this seed, as JSON text.</summary>
    public static string Next(int seed)
    {
        var dice = new Dice(((ulong)seed * 2654435761UL) ^ 0x10B5);
        dice.Bits();
        var generator = new RoomGenerator();
        var boxed = dice.Chance(25);
        var rooms = Enumerable.Range(0, (int)dice.Whole(2, 5))
            .Select(i => JsonNode.Parse(boxed && i == 0 ? BoxedRooms.In(generator.Next((seed * 5) + i), seed) : generator.Next((seed * 5) + i))!.AsObject())
            .ToList();
        var shared = dice.Chance(50);
        for (var i = 0; i < rooms.Count; i++)
        {
            var room = rooms[i];
            room["reference"] = $"room-{(char)('a' + i)}";
            foreach (var saw in new[] { "kerf", "endTrim" })
            {
                (room["strapping"] as JsonObject)?.Remove(saw);
            }

            if (rooms.FirstOrDefault(other => (string?)other["units"] == (string?)room["units"]) is { } first && first != room && shared)
            {
                Share(first, room);
            }

            if (room["prices"] is JsonObject prices)
            {
                prices["currency"] = "CAD";
            }
        }

        return new JsonObject { ["reference"] = $"job-{seed}", ["rooms"] = new JsonArray([.. rooms]) }.ToJsonString();
    }

    private static void Share(JsonObject first, JsonObject room)
    {
        foreach (var part in new[] { "strapping", "sheets", "prices" })
        {
            if (first[part] is { } given)
            {
                room[part] = given.DeepClone();
            }
            else
            {
                room.Remove(part);
            }
        }
    }
}
