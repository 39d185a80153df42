using System.Text.Json;
using System.Text.Json.Nodes;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Reading;

/// <summary>The request of one part of a room: its outline, its fields with their joists counted from its own lowest place, and what lies in it.</summary>
internal sealed class PartRequest(
    JsonElement request, double unit, Geometry floor, double degrees, IReadOnlyList<(double X, double Y)> corners, double across, Frame whole)
{
    public JsonNode Write()
    {
        var node = JsonNode.Parse(request.GetRawText())!.AsObject();
        var room = node["room"]!.AsObject();
        room["outline"] = new JsonArray([.. corners.Select(c => (JsonNode)new JsonArray(c.X / unit, c.Y / unit))]);
        room.Remove("walls");
        Keep(room, "openings", o => Shared(o.GetProperty("outline").Ring(unit)));
        node["joistFields"] = new JsonArray([.. request.GetProperty("joistFields").EnumerateArray()
            .Where(f => RunDivision.DegreesOf(f) == degrees && Shared(f.GetProperty("region").Ring(unit))).Select(Field)]);
        node.Remove("lightGrid");
        foreach (var list in new[] { "fixtures", "mounts" })
        {
            Keep(node, list, o => Holds(o.GetProperty("at").Point(unit)));
        }

        Keep(node, "partitions", o => Holds(Middle([.. o.GetProperty("line").EnumerateArray().Select(p => p.Point(unit))])));
        if (request.Member("insulation").Member("region") is { } region && !Shared(region.Ring(unit)))
        {
            node.Remove("insulation");
        }

        return node;
    }

    private JsonObject Field(JsonElement asked)
    {
        var field = JsonNode.Parse(asked.GetRawText())!.AsObject();
        var extent = corners.Max(c => whole.At(c.X, c.Y).V);
        var first = asked.Member("first").Length(unit) ?? 0;
        var centres = asked.Member("positions") is { } positions
            ? positions.EnumerateArray().Select(p => LengthText.Millimetres(p, unit))
            : Enumerable.Range(0, 10_000).Select(i => first + (i * (asked.Member("spacing").Length(unit) ?? 400))).TakeWhile(c => c <= extent + 0.01);
        field.Remove("spacing");
        field.Remove("first");
        field["positions"] = new JsonArray([.. centres.Select(c => (JsonNode)((c - across) / unit))]);
        return field;
    }

    private static (double X, double Y) Middle(IReadOnlyList<(double X, double Y)> line) => ((line[0].X + line[1].X) / 2, (line[0].Y + line[1].Y) / 2);

    private bool Holds((double X, double Y) at) => floor.Distance(Planes.Point(new Uv(at.X, at.Y))) < 0.01;

    private bool Shared(IReadOnlyList<(double X, double Y)> ring) => RunDivision.Area(ring).Meet(floor).Area > 1;

    private static void Keep(JsonObject owner, string name, Func<JsonElement, bool> stays)
    {
        if (owner[name] is JsonArray list)
        {
            owner[name] = new JsonArray([.. list.Where(i => stays(JsonSerializer.SerializeToElement(i))).Select(i => i!.DeepClone())]);
        }
    }
}
