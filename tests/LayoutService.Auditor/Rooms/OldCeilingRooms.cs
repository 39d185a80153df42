using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;

namespace LayoutService.Auditor.Rooms;

/// <summary>The same room under an old ceiling that stays, without batts, for which it leaves no room. Its throws are its own.</summary>
public static class OldCeilingRooms
{
    public static string Of(string request, int seed)
    {
        var dice = new Dice(((ulong)seed * 0x9E37_79B1UL) ^ 0x01DC_E111);
        dice.Bits();
        var room = Rewriting.Copy(request);
        room.AsObject().Remove("insulation");
        if (room["strapping"] is JsonObject straps)
        {
            straps.Remove("jointsAllowed");
        }

        var imperial = room["units"]!.GetValue<string>() == "imperial";
        room["room"]!["existing"] = new JsonObject
        {
            ["material"] = dice.Pick("gypsum", "plaster", "wood"),
            ["thickness"] = imperial ? dice.Pick(0.375m, 0.5m, 1m) : dice.Pick(9.5m, 12.7m, 25m),
        };
        return room.ToJsonString();
    }
}
