using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Batts, and things in the bays for them to go round, in some rooms. Its throws are its own, so that the rooms of the
/// other wishes are the same with and without it.
/// </summary>
internal sealed class BattWishes
{
    private readonly Dice _dice;
    private readonly bool _imperial;
    private readonly Corner _low;
    private readonly Corner _high;
    private readonly IReadOnlyList<Corner> _outline;

    private BattWishes(ulong seed, bool imperial, IReadOnlyList<Corner> outline)
    {
        _dice = new Dice(seed ^ 0xBA77_5EED);
        _dice.Bits();
        (_imperial, _outline) = (imperial, outline);
        _low = new Corner(outline.Min(c => c.X), outline.Min(c => c.Y));
        _high = new Corner(outline.Max(c => c.X), outline.Max(c => c.Y));
    }

    /// <summary>Adds batts to a request in four of ten rooms. Corners are in the request's own coordinates, in whole steps.</summary>
    public static void Add(JsonObject request, ulong seed, bool imperial, IReadOnlyList<Corner> outline)
    {
        var wishes = new BattWishes(seed, imperial, outline);
        if (!wishes._dice.Chance(40))
        {
            return;
        }

        request["insulation"] = wishes.Insulation();
        if (!request.ContainsKey("services") && wishes._dice.Chance(75))
        {
            request["services"] = new JsonArray([.. Enumerable.Range(1, (int)wishes._dice.Whole(1, 5)).Select(i => (JsonNode)wishes.Service(i))]);
        }
    }

    private JsonObject Insulation()
    {
        var wish = new JsonObject { ["purpose"] = _dice.Pick("sound", "sound", "thermal") };
        if (_dice.Chance(85))
        {
            wish["batts"] = new JsonArray([.. Enumerable.Range(1, (int)_dice.Whole(1, 4)).Select(i => (JsonNode)Batt(i))]);
        }

        if (_dice.Chance(25))
        {
            var (x, y) = ((_low.X + _high.X) / 2, (_low.Y + _high.Y) / 2);
            var (right, top) = _dice.Chance(50) ? (x, _high.Y) : (_high.X, y);
            wish["bays"] = "region";
            wish["region"] = new JsonArray(Point(_low.X, _low.Y), Point(right, _low.Y), Point(right, top), Point(_low.X, top));
        }

        return wish;
    }

    private JsonObject Batt(int number)
    {
        var thickness = _dice.Pick(50.8, 63.5, 76.2, 88.9, 139.7, 158.75, 184.15, 254);
        var batt = new JsonObject
        {
            ["id"] = $"batt-{number}",
            ["thickness"] = Length(Steps(thickness)),
            ["width"] = Length(Steps(_dice.Pick(381.0, 387.35, 406.4, 584.2, 609.6))),
            ["length"] = Length(Steps(_dice.Pick(1193.8, 1219.2, 2362.2))),
        };
        if (_dice.Chance(80))
        {
            batt["r"] = decimal.Round((decimal)thickness / 25.4m * 3.7m * (_imperial ? 1m : 0.176110m), 2);
        }

        if (_dice.Chance(70))
        {
            batt["splittable"] = _dice.Chance(60);
        }

        if (_dice.Chance(40))
        {
            batt["packSize"] = _dice.Whole(1, 12);
        }

        return batt;
    }

    private JsonObject Service(int number)
    {
        var service = new JsonObject { ["id"] = $"service-{number}" };
        switch (_dice.Whole(0, 6))
        {
            case 0:
                Place(service, "duct", _dice.Whole(100, 400), _dice.Whole(-230, -120), _dice.Whole(-110, 150));
                break;
            case 1:
                Place(service, "pipe", _dice.Whole(20, 120), _dice.Whole(-180, -130), _dice.Whole(-120, -30));
                break;
            case 2:
                Place(service, "cable", _dice.Whole(6, 20), -60, _dice.Whole(-50, -20));
                break;
            case 3:
                Place(service, "duct", _dice.Whole(100, 200), _dice.Whole(-220, -120), _dice.Whole(-100, 60));
                service["hot"] = true;
                if (_dice.Chance(50))
                {
                    service["clearance"] = Length(Steps(_dice.Whole(10, 150)));
                }

                break;
            case 4:
                Place(service, "panned-return", _dice.Whole(250, 380), null, null);
                break;
            case 5:
                Place(service, "drain", _dice.Whole(50, 120), _dice.Whole(20, 40), _dice.Whole(60, 200));
                break;
            default:
                var corner = _dice.Pick([.. _outline]);
                var half = Steps(_dice.Whole(30, 120));
                service["kind"] = _dice.Pick("valve", "box", "beam");
                service["outline"] = new JsonArray(
                    Point(corner.X - half, corner.Y - half), Point(corner.X + half, corner.Y - half), Point(corner.X + half, corner.Y + half), Point(corner.X - half, corner.Y + half));
                service["top"] = Length(-Steps(90));
                service["bottom"] = Length(-Steps(_dice.Whole(0, 60)));
                break;
        }

        return service;
    }

    // from one side of the box round the room to the other, so that it surely runs over the room
    private void Place(JsonObject service, string kind, long width, long? top, long? bottom)
    {
        service["kind"] = kind;
        var (x, y) = (_dice.Whole(_low.X, _high.X), _dice.Whole(_low.Y, _high.Y));
        var (x2, y2) = _dice.Chance(25) ? (_dice.Whole(_low.X, _high.X), _dice.Whole(_low.Y, _high.Y)) : (x, y);
        service["path"] = _dice.Chance(50)
            ? new JsonArray(Point(x, _low.Y), Point(x2, _high.Y))
            : new JsonArray(Point(_low.X, y), Point(_high.X, y2));
        service["width"] = Length(Steps(width));
        if (top is { } t && bottom is { } b)
        {
            service["top"] = Length(Steps(t));
            service["bottom"] = Length(Steps(b));
        }
    }

    private long Steps(double millimetres) => (long)Math.Round(_imperial ? millimetres * 16 / 25.4 : millimetres);

    private JsonArray Point(long x, long y) => new(Length(x), Length(y));

    private JsonNode Length(long steps) => JsonValue.Create(_imperial ? steps / 16m : steps);
}
