using System.Text.Json;
using System.Text.Json.Nodes;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Reading;

/// <summary>
/// A room whose joists run more than one way, divided by the regions of its fields: each connected part in which they run one way becomes a
/// request and an answer of its own, in its own measures, so that it is held to what any ceiling is held to. What is bought and
/// the order of work stay with the whole.
/// </summary>
public sealed class RunDivision
{
    private readonly JsonElement request;
    private readonly JsonElement answer;
    private readonly double unit;
    private readonly IReadOnlyList<(double X, double Y)> outline;

    public RunDivision(JsonElement request, JsonElement answer)
    {
        (this.request, this.answer) = (request, answer);
        unit = request.GetProperty("units").GetString() == "imperial" ? 25.4 : 1;
        outline = request.GetProperty("room").GetProperty("outline").Ring(unit);
        Floors = [.. Divide()];
    }

    /// <summary>The floor of each part in the caller's own coordinates, mm, and the direction of its joists in degrees.</summary>
    internal IReadOnlyList<(Geometry Floor, double Degrees)> Floors { get; }

    /// <summary>True when the joists of a request run more than one way.</summary>
    public static bool Turns(JsonElement request) => request.GetProperty("joistFields").EnumerateArray().Select(DegreesOf).Distinct().Count() > 1;

    public IEnumerable<(JsonElement Request, JsonElement Answer)> Parts() => Floors.Select(f => Part(f.Floor, f.Degrees));

    internal static double DegreesOf(JsonElement field) => field.Member("run").Text() switch
    {
        "x" => 0,
        "y" => 90,
        _ => field.Member("runDegrees").Double() ?? 0,
    };

    internal static Geometry Area(IEnumerable<(double X, double Y)> ring) => Planes.Polygon([[.. ring.Select(p => new Uv(p.X, p.Y))]]);

    private IEnumerable<(Geometry Floor, double Degrees)> Divide()
    {
        foreach (var run in request.GetProperty("joistFields").EnumerateArray().GroupBy(DegreesOf))
        {
            var all = Planes.Union(run.Select(f => Area(f.GetProperty("region").Ring(unit)))).Meet(Area(outline));
            for (var i = 0; i < all.NumGeometries; i++)
            {
                if (all.GetGeometryN(i) is Polygon { IsEmpty: false, Area: > 100 } part)
                {
                    yield return (part, run.Key);
                }
            }
        }
    }

    private (JsonElement Request, JsonElement Answer) Part(Geometry floor, double degrees)
    {
        var corners = Corners((Polygon)floor);
        var (whole, own) = (new Frame(degrees, outline), new Frame(degrees, corners));
        var (there, here) = (whole.At(corners[0].X, corners[0].Y), own.At(corners[0].X, corners[0].Y));
        var (along, across) = (there.U - here.U, there.V - here.V);
        var near = floor.Grown(1);
        var direct = request.Member("strapping").Member("method").Text() == "direct";
        var size = corners.Max(c => own.At(c.X, c.Y).V);
        return (
            Element(new PartRequest(request, unit, floor, degrees, corners, across, whole).Write()),
            Element(new PartAnswer(answer, unit, near, degrees, along, across, size, direct).Write()));
    }

    // without corners on a straight line
    private static List<(double X, double Y)> Corners(Polygon floor)
    {
        var ring = floor.ExteriorRing.Coordinates.SkipLast(1).Select(c => (c.X, c.Y)).ToList();
        return [.. ring.Where((c, i) =>
        {
            var (a, b) = (ring[(i + ring.Count - 1) % ring.Count], ring[(i + 1) % ring.Count]);
            var turn = ((c.X - a.X) * (b.Y - c.Y)) - ((c.Y - a.Y) * (b.X - c.X));
            return Math.Abs(turn) > 0.01 * Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2));
        })];
    }

    private static JsonElement Element(JsonNode node)
    {
        using var document = JsonDocument.Parse(node.ToJsonString());
        return document.RootElement.Clone();
    }
}
