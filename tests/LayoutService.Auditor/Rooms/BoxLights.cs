using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Rooms;

/// <summary>Lights and speakers under bulkheads that are drawn already, from dice of their own: up to three for each, most of them in its middle.</summary>
internal sealed class BoxLights
{
    private static readonly GeometryFactory Factory = new();

    private readonly Dice dice;
    private readonly JsonObject request;
    private readonly double unit;
    private readonly double step;
    private readonly List<(double X, double Y)> ring;
    private readonly List<Geometry> openings;
    private readonly List<(double X, double Y)> taken;

    private BoxLights(JsonObject request, int seed)
    {
        (this.request, dice) = (request, new Dice(((ulong)seed * 2654435761UL) ^ 0x1191));
        dice.Bits();
        (unit, step) = Rewriting.Unit(request) > 1 ? (25.4, 25.4 / 16) : (1, 1);
        using var room = JsonDocument.Parse(request["room"]!.ToJsonString());
        ring = room.RootElement.GetProperty("outline").Ring(unit);
        taken = [.. (request["fixtures"] as JsonArray ?? []).Select(f => (Read(f!["at"]![0]!), Read(f["at"]![1]!)))];
        openings = [.. room.RootElement.Member("openings").Items().Select(o => Shape(o.GetProperty("outline").Ring(unit)).Buffer(1))];
    }

    public static void Add(JsonObject request, int seed)
    {
        var lights = new BoxLights(request, seed);
        var fixtures = request["fixtures"] as JsonArray ?? [];
        foreach (var box in request["bulkheads"]!.AsArray())
        {
            for (var (i, wanted) = (0, lights.dice.Whole(0, 3)); i < wanted; i++)
            {
                if (lights.Under(box!) is var (x, y))
                {
                    fixtures.Add((JsonNode)lights.Light($"under-{fixtures.Count + 1}", x, y));
                }
            }
        }

        if (fixtures.Count > 0 && fixtures.Parent is null)
        {
            request["fixtures"] = fixtures;
        }
    }

    private JsonObject Light(string id, double x, double y)
    {
        var light = new JsonObject
        {
            ["id"] = id, ["kind"] = dice.Pick("slim-light", "can-light", "speaker"), ["at"] = new JsonArray(Number(x), Number(y)),
            ["cutout"] = new JsonObject { ["diameter"] = Length(dice.Whole(70, 160)) }, ["bodyDepth"] = Length(dice.Whole(10, 120)),
        };
        if (dice.Chance(60))
        {
            light["maxShift"] = Length(dice.Whole(50, 300));
        }

        if (dice.Chance(30))
        {
            light["remoteBox"] = new JsonObject { ["width"] = Length(45), ["length"] = Length(110), ["height"] = Length(30) };
        }

        return light;
    }

    private (double X, double Y)? Under(JsonNode box)
    {
        var (x, y) = box["edges"] is JsonArray edges ? Beside(edges, Read(box["width"]!))
            : box["outline"] is JsonArray corners ? ((Read(corners[0]![0]!) + Read(corners[2]![0]!)) / 2, (Read(corners[0]![1]!) + Read(corners[2]![1]!)) / 2)
            : OnPath(box["hides"]![0]!.GetValue<string>());
        var at = Factory.CreatePoint(new Coordinate(x = Math.Round(x / step) * step, y = Math.Round(y / step) * step));
        if (!Shape(ring).Buffer(-1).Covers(at) || openings.Exists(o => o.Covers(at)) || taken.Exists(t => Math.Max(Math.Abs(t.X - x), Math.Abs(t.Y - y)) < 600))
        {
            return null;
        }

        taken.Add((x, y));
        return (x, y);
    }

    private (double X, double Y) Beside(JsonArray edges, double width)
    {
        var edge = dice.Pick([.. edges.Select(e => e!.GetValue<int>())]);
        var ((ax, ay), (bx, by)) = (ring[edge], ring[(edge + 1) % ring.Count]);
        var (length, share) = (Math.Sqrt(((bx - ax) * (bx - ax)) + ((by - ay) * (by - ay))), dice.Whole(15, 85) / 100.0);
        var inward = (NetTopologySuite.Algorithm.Orientation.IsCCW(Shape(ring).ExteriorRing.CoordinateSequence) ? 1 : -1) * width / 2 / length;
        return (ax + ((bx - ax) * share) - (inward * (by - ay)), ay + ((by - ay) * share) + (inward * (bx - ax)));
    }

    private (double X, double Y) OnPath(string service)
    {
        var path = request["services"]!.AsArray().First(s => s!["id"]!.GetValue<string>() == service)!["path"]!;
        var share = dice.Whole(15, 85) / 100.0;
        return (
            Read(path[0]![0]!) + ((Read(path[1]![0]!) - Read(path[0]![0]!)) * share), Read(path[0]![1]!) + ((Read(path[1]![1]!) - Read(path[0]![1]!)) * share));
    }

    private static Polygon Shape(List<(double X, double Y)> ring) => Factory.CreatePolygon([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]);

    private double Read(JsonNode length) => (double)Rewriting.Millimetres(length, (decimal)unit);

    private JsonNode Length(double millimetres) => Number(Math.Max(1, Math.Round(millimetres / step)) * step);

    private JsonNode Number(double millimetres) => JsonValue.Create(decimal.Round((decimal)(millimetres / unit), 6));
}
