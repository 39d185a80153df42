using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Fixtures, a duct, mounts and a light grid for a room that is drawn already, from dice of their own, so that the room
/// itself stays what its seed always gave.
/// </summary>
internal sealed class FixtureWishes
{
    private static readonly string[] Kinds =
        ["slim-light", "slim-light", "can-light", "can-light", "alarm", "register", "return", "fan", "speaker", "access-door", "box", "sprinkler", "other"];

    private readonly Dice dice;
    private readonly JsonObject request;
    private readonly double step;
    private readonly double unit;
    private readonly List<List<(double X, double Y)>> rings = [];
    private readonly List<(double X, double Y, double Reach)> taken = [];

    private FixtureWishes(JsonObject request, ulong seed)
    {
        (this.request, dice) = (request, new Dice(unchecked((seed * 2654435761UL) + 7919)));
        dice.Bits();
        (unit, step) = request["units"]!.GetValue<string>() == "imperial" ? (25.4, 25.4 / 16) : (1, 1);
        using var room = JsonDocument.Parse(request["room"]!.ToJsonString());
        rings.Add(room.RootElement.GetProperty("outline").Ring(unit));
        rings.AddRange(room.RootElement.Member("openings").Items().Select(o => o.GetProperty("outline").Ring(unit)));
    }

    public static void Add(JsonObject request, ulong seed)
    {
        var wishes = new FixtureWishes(request, seed);
        if (!wishes.dice.Chance(35))
        {
            return;
        }

        wishes.Fixtures();
        if (wishes.dice.Chance(25) && wishes.Place(300) is var (x, y))
        {
            wishes.Duct(x, y);
        }

        if (wishes.dice.Chance(20) && wishes.Place(100) is var (mx, my))
        {
            request["mounts"] = new JsonArray(new JsonObject { ["id"] = "mount-a", ["at"] = wishes.Point(mx, my), ["mass"] = wishes.dice.Whole(5, 60) });
        }

        if (wishes.dice.Chance(20))
        {
            request["lightGrid"] = new JsonObject { ["count"] = wishes.dice.Whole(2, 12), ["lumens"] = 800, ["fixture"] = wishes.Fixture(wishes.dice.Pick("slim-light", "can-light"), 110) };
        }
    }

    private void Fixtures()
    {
        var list = new JsonArray();
        for (var (i, wanted) = (0, dice.Whole(1, 7)); i < wanted; i++)
        {
            var kind = dice.Pick(Kinds);
            var reach = kind == "access-door" ? 300 : dice.Whole(40, 160);
            if (Place(reach + 20) is not var (x, y))
            {
                continue;
            }

            var fixture = Fixture(kind, reach);
            fixture["id"] = $"fixture-{i + 1}";
            fixture["at"] = Point(x, y);
            if (dice.Chance(55))
            {
                fixture["maxShift"] = Length(dice.Whole(50, 350));
            }

            list.Add((JsonNode)fixture);
        }

        if (list.Count > 0)
        {
            request["fixtures"] = list;
        }
    }

    private JsonObject Fixture(string kind, double reach)
    {
        var fixture = new JsonObject { ["kind"] = kind };
        var round = kind is not ("register" or "return" or "access-door") && dice.Chance(80);
        fixture["cutout"] = round
            ? new JsonObject { ["diameter"] = Length(2 * reach * 0.9) }
            : new JsonObject { ["width"] = Length(reach * dice.Whole(60, 130) / 100), ["height"] = Length(reach * dice.Whole(60, 130) / 100) };
        if (kind == "slim-light" && dice.Chance(60))
        {
            fixture["remoteBox"] = new JsonObject { ["width"] = Length(dice.Whole(30, 60)), ["length"] = Length(dice.Whole(90, 140)), ["height"] = Length(dice.Whole(20, 45)) };
        }

        if (dice.Chance(30))
        {
            fixture["bodyDepth"] = Length(dice.Whole(5, 120));
        }

        if (dice.Chance(30))
        {
            fixture["insulationContact"] = dice.Chance(50);
        }

        if (dice.Chance(20))
        {
            fixture["edgeClearance"] = Length(dice.Whole(5, 30));
        }

        return fixture;
    }

    private void Duct(double x, double y)
    {
        var along = dice.Chance(50);
        var length = dice.Whole(600, 2500);
        if (request["services"] is not JsonArray services)
        {
            request["services"] = services = [];
        }

        services.Add((JsonNode)new JsonObject
        {
            ["id"] = "duct-a", ["kind"] = "duct",
            ["path"] = new JsonArray(Point(x, y), along ? Point(x + length, y) : Point(x, y + length)),
            ["width"] = Length(dice.Whole(100, 300)), ["top"] = JsonValue.Create(-Math.Round(200 / step) * step / unit), ["bottom"] = JsonValue.Create(-Math.Round(dice.Whole(0, 60) / step) * step / unit),
        });
    }

    // a place in the room, out of its openings and clear of the holes so far
    private (double X, double Y)? Place(double reach)
    {
        double Draw(Func<(double X, double Y), double> axis) => Math.Round(dice.Whole((long)rings[0].Min(axis), (long)rings[0].Max(axis)) / step) * step;
        for (var attempt = 0; attempt < 40; attempt++)
        {
            var (x, y) = (Draw(p => p.X), Draw(p => p.Y));
            if (Holds(rings[0], x, y) && !rings.Skip(1).Any(r => Holds(r, x, y)) && taken.TrueForAll(t => Math.Max(Math.Abs(t.X - x), Math.Abs(t.Y - y)) > 1.5 * (t.Reach + reach)))
            {
                taken.Add((x, y, reach));
                return (x, y);
            }
        }

        return null;
    }

    private static bool Holds(List<(double X, double Y)> ring, double x, double y)
    {
        var inside = false;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.Y > y != b.Y > y && x < a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private JsonArray Point(double x, double y) => new(Number(x), Number(y));

    private JsonNode Length(double millimetres) => Number(Math.Max(1, Math.Round(millimetres / step)) * step);

    private JsonNode Number(double millimetres) => JsonValue.Create(decimal.Round((decimal)(millimetres / unit), 6));
}
