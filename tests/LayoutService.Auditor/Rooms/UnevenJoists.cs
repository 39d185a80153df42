using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Makes of a room with one joist field the same room with its undersides read: some joists or all, once or twice along each,
/// nearly level, uneven or with one joist far out. Its throws are its own. Null where joists do not run along x or y, or no
/// reading falls into the room.
/// </summary>
public static class UnevenJoists
{
    public static string? Under(string request, int seed)
    {
        var dice = new Dice(((ulong)seed * 0x9E37_79B9UL) ^ 0x1E7E_15EED);
        dice.Bits();
        var room = Rewriting.Copy(request);
        var unit = Rewriting.Unit(room);
        var field = room["joistFields"]![0]!.AsObject();
        var asked = new AskedRoom(System.Text.Json.JsonDocument.Parse(request).RootElement);
        if (asked.Frame.Degrees is not (0 or 90) || room["joistFields"]!.AsArray().Count > 1)
        {
            return null;
        }

        var ring = Rewriting.Rings(room).First().Ring.Select(p => Rewriting.Point(p!, unit)).ToList();
        var (lowX, lowY) = (ring.Min(p => p.X), ring.Min(p => p.Y));
        var alongX = asked.Frame.Degrees == 0;
        var spread = dice.Pick(3, 8, 15, 45);
        var wild = dice.Chance(25);
        var readings = new JsonArray();
        var extent = asked.Rings[0].Max(p => p.U);
        foreach (var centre in asked.Joists.Centres)
        {
            for (var times = dice.Chance(70) ? dice.Whole(1, 3) : 0; times > 0; times--)
            {
                var along = (decimal)Math.Floor(extent * dice.Whole(2, 98) / 100);
                var place = new Uv((double)along, centre);
                // oblique ends round differently, and a place on a wall is neither in nor out
                if (asked.Floor.AlongAt(centre, _ => true).All(s => place.U < s.From + 5 || place.U > s.To - 5))
                {
                    continue;
                }

                var level = dice.Whole(-spread, spread) + (wild && dice.Chance(10) ? dice.Whole(10, 30) : 0);
                readings.Add(new JsonObject
                {
                    ["at"] = new JsonArray(
                        Rewriting.Number(alongX ? lowX + along : lowX + (decimal)centre, unit), Rewriting.Number(alongX ? lowY + (decimal)centre : lowY + along, unit)),
                    ["level"] = Rewriting.Number(level, unit),
                });
            }
        }

        if (readings.Count == 0)
        {
            return null;
        }

        field["undersides"] = readings;
        return room.ToJsonString();
    }
}
