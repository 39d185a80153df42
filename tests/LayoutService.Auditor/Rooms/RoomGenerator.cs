using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Seeded random rooms: one plan request per seed, the same on every machine. Rectangles, L, T, U, Z, jogged and angled
/// rooms of 2 to 12 m, anywhere on the plane, either way round, closed or open, with openings; joists in either
/// direction as found or by spacing; stock with and without prices.
/// </summary>
public sealed class RoomGenerator(RoomWishes wishes)
{
    public RoomGenerator()
        : this(new RoomWishes())
    {
    }

    /// <summary>The request of this seed, as JSON text.</summary>
    public string Next(int seed) => Next((ulong)(uint)seed);

    /// <summary>The request of this seed, as JSON text.</summary>
    public string Next(ulong seed)
    {
        var dice = new Dice(seed);
        dice.Bits();
        var imperial = dice.Chance(50);
        imperial = wishes.Imperial ?? imperial;
        long Steps(double millimetres) => (long)Math.Round(imperial ? millimetres * 16 / 25.4 : millimetres);
        var write = new LengthWriting(dice, imperial, wishes.Texts && dice.Chance(30) ? 60 : 0);
        var outline = Outlines.Draw(dice, wishes, Steps);
        var openings = wishes.Openings ? OpeningPlaces.Draw(dice, outline, Steps) : [];
        var request = new JsonObject { ["reference"] = $"seed-{seed}", ["units"] = imperial ? "imperial" : "metric" };
        if (!wishes.Defaults || dice.Chance(70))
        {
            request["ruleset"] = dice.Pick("us-irc-2021", "us-irc-2024", "ca-nbc-2020", "ca-on-2024");
        }

        request["room"] = Room(dice, outline, openings, write, Steps);
        request["joistFields"] = new JsonArray(JoistLaying.Draw(dice, wishes, outline, write, Steps));
        var materials = new MaterialWishes(dice, wishes, imperial, write, Steps);
        if (!wishes.Defaults || dice.Chance(92))
        {
            request["strapping"] = materials.Strapping();
        }

        if (!wishes.Defaults || dice.Chance(92))
        {
            request["sheets"] = materials.Sheets();
        }

        if (materials.Priced)
        {
            request["prices"] = new JsonObject { ["currency"] = dice.Pick("CAD", "USD", "EUR") };
        }

        if (wishes.Batts)
        {
            BattWishes.Add(request, seed, imperial, Placed(request, imperial));
        }

        if (wishes.Fixtures)
        {
            FixtureWishes.Add(request, seed);
        }

        return request.ToJsonString();
    }

    // the outline where it was put, back in whole steps
    private static List<Corner> Placed(JsonObject request, bool imperial)
    {
        var unit = imperial ? 25.4m : 1m;
        var step = imperial ? 25.4m / 16 : 1m;
        long Whole(JsonNode length) => (long)decimal.Round(Likeness.Rewriting.Millimetres(length, unit) / step);
        return [.. request["room"]!["outline"]!.AsArray().Select(p => new Corner(Whole(p![0]!), Whole(p[1]!)))];
    }

    private static JsonObject Room(Dice dice, List<Corner> outline, List<PlacedOpening> openings, LengthWriting write, Func<double, long> steps)
    {
        var origin = dice.Chance(40)
            ? new Corner(-outline.Min(c => c.X), -outline.Min(c => c.Y))
            : new Corner(dice.Whole(-steps(20000), steps(20000)), dice.Whole(-steps(20000), steps(20000)));
        var room = new JsonObject { ["outline"] = Ring(dice, outline, origin, write) };
        if (openings.Count > 0)
        {
            room["openings"] = new JsonArray([.. openings.Select((o, i) => (JsonNode)new JsonObject
            {
                ["id"] = $"opening-{i + 1}", ["kind"] = o.Kind, ["outline"] = Ring(dice, o.Ring, origin, write),
            })]);
        }

        if (dice.Chance(60))
        {
            room["heights"] = new JsonArray(new JsonObject { ["floorToJoist"] = write.Length(steps(dice.Whole(2150, 2700))) });
        }

        if (dice.Chance(40))
        {
            room["floorBuildUp"] = write.Length(steps(dice.Whole(8, 40)));
        }

        return room;
    }

    private static JsonArray Ring(Dice dice, IReadOnlyList<Corner> ring, Corner origin, LengthWriting write)
    {
        var start = (int)dice.Whole(0, ring.Count - 1);
        var corners = ring.Skip(start).Concat(ring.Take(start)).Select(c => new Corner(c.X + origin.X, c.Y + origin.Y)).ToList();
        if (dice.Chance(50))
        {
            corners.Reverse();
        }

        if (dice.Chance(30))
        {
            corners.Add(corners[0]);
        }

        return new JsonArray([.. corners.Select(write.Point)]);
    }
}
