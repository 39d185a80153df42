using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Rooms;

/// <summary>The same room without a wall at one edge or two of those that run with the joists or square to them. Its throws are its own; null where no edge does.</summary>
public static class OpenRooms
{
    public static string? Of(string? request, int seed)
    {
        if (request is null)
        {
            return null;
        }

        var dice = new Dice(((ulong)seed * 0x85EB_CA6BUL) ^ 0x09E4_ED6E);
        dice.Bits();
        var ring = new AskedRoom(JsonDocument.Parse(request).RootElement).Rings[0];
        var straight = Enumerable.Range(0, ring.Count)
            .Where(i => new Wall(0, ring[i], ring[(i + 1) % ring.Count]) is var edge && (edge.IsAlong || edge.IsSquare)).ToList();
        if (straight.Count == 0)
        {
            return null;
        }

        var room = Rewriting.Copy(request);
        var edges = new SortedSet<int> { dice.Pick([.. straight]) };
        if (dice.Chance(30))
        {
            edges.Add(dice.Pick([.. straight]));
        }

        room["room"]!["walls"] = new JsonArray([.. edges.Select(edge => (JsonNode)new JsonObject { ["edge"] = edge, ["kind"] = "open" })]);
        return room.ToJsonString();
    }
}
