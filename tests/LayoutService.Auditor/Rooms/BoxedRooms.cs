using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Puts bulkheads into a room that is drawn already, from dice of their own: along one or several edges, round a duct that
/// crosses the room, by an outline; some below a boarded ceiling.
/// </summary>
public sealed class BoxedRooms
{
    private readonly Dice dice;
    private readonly JsonNode request;
    private readonly double unit;
    private readonly double step;
    private readonly List<(double X, double Y)> ring;
    private readonly JsonArray boxes = [];

    private BoxedRooms(string room, int seed)
    {
        (request, dice) = (Rewriting.Copy(room), new Dice(((ulong)seed * 2654435761UL) ^ 0xB0C5));
        dice.Bits();
        (unit, step) = Rewriting.Unit(request) > 1 ? (25.4, 25.4 / 16) : (1, 1);
        using var read = JsonDocument.Parse(request["room"]!.ToJsonString());
        ring = read.RootElement.GetProperty("outline").Ring(unit);
    }

    /// <summary>The request with one to three bulkheads. Any fixtures are taken out: where they may go is another matter.</summary>
    public static string In(string request, int seed)
    {
        var room = new BoxedRooms(request, seed);
        foreach (var name in new[] { "fixtures", "lightGrid", "mounts" })
        {
            room.request.AsObject().Remove(name);
        }

        room.Draw();
        return room.request.ToJsonString();
    }

    /// <summary>The same with the room's fixtures, services and mounts left in, and lights of its own under the bulkheads.</summary>
    public static string Mixed(string request, int seed)
    {
        var room = new BoxedRooms(request, seed);
        room.Draw();
        BoxLights.Add(room.request.AsObject(), seed);
        return room.request.ToJsonString();
    }

    private void Draw()
    {
        for (var (i, wanted) = (0, dice.Pick(1, 1, 1, 2, 2, 3)); i < wanted; i++)
        {
            var box = dice.Whole(0, 9) switch { < 5 => AlongEdges(), < 8 => Round(), _ => ByOutline() };
            if (box is null)
            {
                continue;
            }

            box["id"] = $"box-{boxes.Count + 1}";
            if (dice.Chance(25))
            {
                box["frame"] = new JsonObject { ["size"] = dice.Pick("2x2", "2x3") };
            }

            boxes.Add((JsonNode)box);
        }

        request["bulkheads"] = boxes;
    }

    private JsonObject AlongEdges()
    {
        var edges = new SortedSet<int>();
        for (var (i, wanted, at) = (0, dice.Pick(1, 1, 2, 2, 3, 4), (int)dice.Whole(0, ring.Count - 1)); i < wanted; i++)
        {
            edges.Add(at % ring.Count);
            at += dice.Pick(1, 1, 1, 2);
        }

        var box = new JsonObject { ["edges"] = new JsonArray([.. edges.Select(e => (JsonNode)e)]), ["width"] = Length(dice.Whole(250, 700)), ["drop"] = Length(dice.Whole(180, 360)) };
        if (dice.Chance(25))
        {
            box["boardedAbove"] = true;
        }

        return box;
    }

    private JsonObject Round()
    {
        if (request["services"] is not JsonArray services)
        {
            request["services"] = services = [];
        }

        var hides = new JsonArray();
        for (var (i, wanted) = (0, dice.Pick(1, 1, 1, 2)); i < wanted; i++)
        {
            var id = $"hidden-{services.Count + 1}";
            var (x, y) = (Between(p => p.X), Between(p => p.Y));
            var path = dice.Chance(50) ? new JsonArray(Point(x, ring.Min(p => p.Y)), Point(x, ring.Max(p => p.Y))) : new JsonArray(Point(ring.Min(p => p.X), y), Point(ring.Max(p => p.X), y));
            if (dice.Chance(25))
            {
                path[1] = Point(x, y);
                path.Add(dice.Chance(50) ? Point(x, ring.Max(p => p.Y)) : Point(ring.Max(p => p.X), y));
                path[0] = Point(x, ring.Min(p => p.Y));
            }

            var service = new JsonObject
            {
                ["id"] = id, ["kind"] = dice.Pick("duct", "duct", "pipe", "drain"), ["path"] = path,
                ["width"] = Length(dice.Whole(60, 400)), ["top"] = Length(dice.Whole(1, 30)), ["bottom"] = Length(dice.Whole(60, 280)),
            };
            if (dice.Chance(25))
            {
                service["clearance"] = Length(dice.Whole(10, 60));
            }

            if (dice.Chance(15))
            {
                service["needsReach"] = true;
            }

            if (!RunsOverTheRoom(service))
            {
                service["path"] = new JsonArray(Point(ring.Min(p => p.X), y), Point(ring.Max(p => p.X), y));
            }

            services.Add((JsonNode)service);
            hides.Add(id);
        }

        var box = new JsonObject { ["hides"] = hides };
        if (dice.Chance(25))
        {
            box["drop"] = Length(dice.Whole(180, 420));
        }

        return box;
    }

    // one that turns may keep to what an L or a T leaves out; one from side to side never does
    private bool RunsOverTheRoom(JsonObject service)
    {
        using var read = JsonDocument.Parse(service.ToJsonString());
        var (path, width) = (read.RootElement.GetProperty("path").Ring(unit), LengthText.Millimetres(read.RootElement.GetProperty("width"), unit));
        var room = Room();
        return room.Factory.CreateLineString([.. path.Select(p => new Coordinate(p.X, p.Y))]).Buffer(width / 2, EndCapStyle.Flat).Intersection(room).Area > 1;
    }

    private Polygon Room() => new GeometryFactory().CreatePolygon([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]);

    private JsonObject? ByOutline()
    {
        var room = Room();
        for (var attempt = 0; attempt < 40; attempt++)
        {
            var (x, y) = (Between(p => p.X), Between(p => p.Y));
            var (right, top) = (x + (step * Math.Round(dice.Whole(350, 1500) / step)), y + (step * Math.Round(dice.Whole(350, 1500) / step)));
            if (room.Covers(room.Factory.ToGeometry(new Envelope(x, right, y, top))))
            {
                var box = new JsonObject { ["outline"] = new JsonArray(Point(x, y), Point(right, y), Point(right, top), Point(x, top)), ["drop"] = Length(dice.Whole(180, 360)) };
                if (dice.Chance(35))
                {
                    box["boardedAbove"] = true;
                }

                return box;
            }
        }

        return null;
    }

    private double Between(Func<(double X, double Y), double> axis) =>
        Math.Round(dice.Whole((long)ring.Min(axis) + 150, (long)ring.Max(axis) - 150) / step) * step;

    private JsonArray Point(double x, double y) => new(Number(x), Number(y));

    private JsonNode Length(double millimetres) => Number(Math.Max(1, Math.Round(millimetres / step)) * step);

    private JsonNode Number(double millimetres) => JsonValue.Create(decimal.Round((decimal)(millimetres / unit), 6));
}
