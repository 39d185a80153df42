using LayoutService.Auditor.Likeness;

namespace LayoutService.Auditor.Rooms;

/// <summary>The same room with its board in two or three layers. Its throws are its own.</summary>
public static class LayeredRooms
{
    public static string? Of(string? request, int seed)
    {
        if (request is null)
        {
            return null;
        }

        var dice = new Dice(((ulong)seed * 0xC2B2_AE35UL) ^ 0x1A7E_4507);
        dice.Bits();
        var room = Rewriting.Copy(request);
        if (room["sheets"] is not System.Text.Json.Nodes.JsonObject sheets)
        {
            room["sheets"] = sheets = [];
        }

        sheets["layers"] = dice.Chance(20) ? 3 : 2;

        // stock of which there are few was counted for one layer
        foreach (var stock in sheets["stock"] as System.Text.Json.Nodes.JsonArray ?? [])
        {
            stock!.AsObject().Remove("quantity");
        }

        return room.ToJsonString();
    }
}
