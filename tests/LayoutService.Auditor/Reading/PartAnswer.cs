using System.Text.Json;
using System.Text.Json.Nodes;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Reading;

/// <summary>
/// The answer of one part of a room: what lies on its floor, with places along and across counted from its own lowest. The cut
/// plan stays whole; what counts the whole room is left out.
/// </summary>
internal sealed class PartAnswer(JsonElement answer, double unit, Geometry floor, double degrees, double along, double across, double size, bool direct)
{
    public JsonNode Write()
    {
        var node = JsonNode.Parse(answer.GetRawText())!.AsObject();
        foreach (var whole in new[] { "summary", "takeoff", "steps", "walls", "alternatives", "cautions" })
        {
            node.Remove(whole);
        }

        // the widest bay is told of the whole room
        Keep(node, "checks", c => !direct || Text(c["rule"]) != "row-spacing");
        foreach (var check in (node["checks"] as JsonArray ?? []).Where(c => Text(c!["rule"]) == "butt-stagger-rows"))
        {
            // the least of all parts
            check!.AsObject().Remove("value");
        }

        Strapping(node["strapping"]!.AsObject());
        Sheets(node["sheets"]!.AsObject());
        var joists = node["joists"]!.AsObject();
        Keep(joists, "members", j => j["field"] is not null && Holds(Middle(j["from"]!, j["to"]!)) && Runs(j));
        Shift(joists, "members", across, "at");
        Keep(joists, "bays", IsOwnBay);
        Shift(joists, "bays", across, "from", "to");
        Shift(joists, "bays", along, "alongFrom", "alongTo");
        var bays = Ids(joists, "bays");
        if (node["insulation"] is JsonObject batts)
        {
            foreach (var list in new[] { "fills", "uncovered" })
            {
                Keep(batts, list, f => bays.Contains(Text(f["bay"])));
            }

            foreach (var whole in new[] { "areaR", "framingFraction", "area" })
            {
                batts.Remove(whole);
            }

            if (batts["fills"]!.AsArray().Count == 0 && batts["uncovered"] is not JsonArray { Count: > 0 })
            {
                node.Remove("insulation");
            }
        }

        foreach (var list in new[] { "fixtures", "mounts" })
        {
            Keep(node, list, f => Holds(At(f["at"]!)));
        }

        var status = (node["fixtures"] as JsonArray ?? []).Select(f => Text(f!["status"])).ToList();
        node["summary"] = new JsonObject { ["fixturesMoved"] = status.Count(s => s == "moved"), ["fixturesInConflict"] = status.Count(s => s == "conflict") };
        Keep(node, "partitions", p => p["outlines"] is JsonArray { Count: > 0 } rings && Holds(At(rings[0]![0]!)));
        return node;
    }

    private void Strapping(JsonObject strapping)
    {
        Keep(strapping, "rows", r => Holds(Middle(r["pieces"]![0]!["from"]!, r["pieces"]![0]!["to"]!)) && Square(r["pieces"]![0]!));
        foreach (var row in strapping["rows"]!.AsArray())
        {
            Shift(row!.AsObject(), "marks", along, "nearEdge");
            foreach (var mark in row["marks"]!.AsArray())
            {
                mark!.AsObject().Remove("nearEdgeText");
            }
        }

        Shift(strapping, "rows", along, "at");
        var rows = Ids(strapping, "rows");
        Keep(strapping, "crossings", c => rows.Contains(Text(c["rowId"])));
        Keep(strapping, "scabs", c => rows.Contains(Text(c["rowId"] ?? c["row"])));
        var held = strapping["crossings"]!.AsArray().Select(c => Text(c!["supportId"])).ToHashSet();
        Keep(strapping, "nailers", n => held.Contains(Text(n["id"])) || Holds(Middle(n["from"]!, n["to"]!)));
        strapping.Remove("widestSpacing");
        strapping.Remove("widestSpacingRows");
    }

    private void Sheets(JsonObject sheets)
    {
        // board that is screwed to the joists lies across them
        var (boardAlong, boardAcross) = direct ? (across, along) : (along, across);
        Keep(sheets, "pieces", p => RunDivision.Area(p["outline"]!.AsArray().Select(c => At(c!))) is var area && area.Meet(floor).Area > area.Area / 2);
        foreach (var piece in sheets["pieces"]!.AsArray())
        {
            Shift(piece!.AsObject(), "ends", boardAlong, "at");
            Shift(piece.AsObject(), "ends", boardAcross, "from", "to");
        }

        var pieces = Ids(sheets, "pieces");
        Keep(sheets, "joints", j => pieces.Contains(Text(j["pieceA"])) && pieces.Contains(Text(j["pieceB"])));
        var courses = sheets["pieces"]!.AsArray().Select(p => Text(p!["course"])).ToHashSet();
        Keep(sheets, "courses", c => courses.Contains(Text(c["id"])));
        Shift(sheets, "courses", boardAcross, "from", "to");
        int Layer(JsonNode? piece) => piece!["layer"]?.GetValue<int>() ?? 1;
        var last = sheets["pieces"]!.AsArray().Select(Layer).DefaultIfEmpty(1).Max();
        var shown = sheets["pieces"]!.AsArray().Where(p => Layer(p) == last).Select(p => Text(p!["id"])).ToHashSet();
        foreach (var (name, kind) in new[] { ("buttJointLength", "butt"), ("taperedJointLength", "tapered"), ("cutEdgeJointLength", "cut-edge") })
        {
            sheets[name] = sheets["joints"]!.AsArray().Where(j => shown.Contains(Text(j!["pieceA"]))).Where(j => Text(j!["kind"]) == kind).Sum(j => j!["length"]!.GetValue<double>());
        }

        sheets.Remove("perimeterLength");
    }

    private bool IsOwnBay(JsonNode bay)
    {
        double Number(string name) => (bay[name]?.GetValue<double>() ?? double.NaN) * unit;
        return bay["runDegrees"]?.GetValue<double>() == degrees && Number("from") >= across - 0.1 && Number("to") <= across + size + 0.1
            && Math.Abs(Math.Max(Number("alongFrom"), along) - Number("alongFrom")) < 0.1 && InFloor(bay);
    }

    // the middle of a bay may lie beside an L; its ends are looked at as well
    private bool InFloor(JsonNode bay)
    {
        var (u, v) = ((bay["alongFrom"]!.GetValue<double>() * unit) - along, (bay["alongTo"]!.GetValue<double>() * unit) - along);
        var extent = floor.EnvelopeInternal;
        var length = degrees switch { 0 => extent.Width, 90 => extent.Height, _ => Math.Sqrt((extent.Width * extent.Width) + (extent.Height * extent.Height)) };
        return u >= -0.1 && v <= length + 0.1;
    }

    // a row of this part lies square to its joists; one of a neighbour may lie on the same line
    private bool Square(JsonNode piece) => Math.Abs(Along(piece)) < 0.01;

    private bool Runs(JsonNode joist) => Math.Abs(Math.Abs(Along(joist)) - 1) < 0.01;

    private double Along(JsonNode line)
    {
        var (from, to) = (At(line["from"]!), At(line["to"]!));
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return ((x * cos) + (y * sin)) / Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
    }

    private bool Holds((double X, double Y) at) => floor.Distance(Planes.Point(new Uv(at.X, at.Y))) < 0.01;

    private (double X, double Y) At(JsonNode point) => (point[0]!.GetValue<double>() * unit, point[1]!.GetValue<double>() * unit);

    private (double X, double Y) Middle(JsonNode from, JsonNode to)
    {
        var (a, b) = (At(from), At(to));
        return ((a.X + b.X) / 2, (a.Y + b.Y) / 2);
    }

    private static string Text(JsonNode? node) => node?.GetValue<string>() ?? "";

    private static HashSet<string> Ids(JsonObject owner, string list) => [.. owner[list]!.AsArray().Select(i => Text(i!["id"]))];

    private static void Keep(JsonObject owner, string name, Func<JsonNode, bool> stays)
    {
        if (owner[name] is JsonArray list)
        {
            owner[name] = new JsonArray([.. list.Where(i => stays(i!)).Select(i => i!.DeepClone())]);
        }
    }

    private void Shift(JsonObject owner, string name, double by, params string[] members)
    {
        foreach (var item in owner[name] as JsonArray ?? [])
        {
            foreach (var member in members.Where(m => item![m] is not null))
            {
                item![member] = item[member]!.GetValue<double>() - (by / unit);
            }
        }
    }
}
