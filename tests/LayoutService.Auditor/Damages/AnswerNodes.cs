using System.Globalization;
using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Finding and changing parts of an answer's JSON. Lengths are given in mm and written in the answer's units.</summary>
internal static class AnswerNodes
{
    public static List<JsonObject> List(this JsonNode? node, params string[] path)
    {
        foreach (var name in path)
        {
            node = node is JsonObject parent ? parent[name] : null;
        }

        return node is JsonArray list ? list.OfType<JsonObject>().ToList() : [];
    }

    public static List<JsonObject> Rows(this JsonNode answer) =>
        [.. answer.List("strapping", "rows").OrderBy(r => r.Number("at"))];

    public static List<JsonObject> Boards(this JsonNode answer) => answer.List("sheets", "pieces");

    public static decimal Number(this JsonNode node, string name) =>
        decimal.Parse(node[name]!.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture);

    public static void Raise(this JsonNode node, string name, decimal by) => node[name] = JsonValue.Create(node.Number(name) + by);

    /// <summary>Millimetres as a number in the answer's units.</summary>
    public static decimal Units(this JsonNode answer, decimal millimetres) =>
        decimal.Round(answer["units"]?.GetValue<string>() == "imperial" ? millimetres / 25.4m : millimetres, 6);

    public static string Id(this JsonNode node) => node["id"]!.GetValue<string>();

    public static decimal Coordinate(this JsonNode point, int axis) =>
        decimal.Parse(point[axis]!.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture);

    public static void Move(this JsonNode point, int axis, decimal by) => point[axis] = JsonValue.Create(point.Coordinate(axis) + by);

    /// <summary>The axis along which the joists run, 0 for x and 1 for y; -1 at another angle.</summary>
    public static int Along(this JsonNode answer)
    {
        var piece = answer.Rows().SelectMany(r => r.List("pieces")).FirstOrDefault();
        if (piece is null)
        {
            return -1;
        }

        return piece["from"]!.Coordinate(0) == piece["to"]!.Coordinate(0) ? 0 : piece["from"]!.Coordinate(1) == piece["to"]!.Coordinate(1) ? 1 : -1;
    }

    /// <summary>Moves a row, its pieces and its marks by so much along the joists, in the answer's units.</summary>
    public static bool Shift(this JsonNode answer, JsonObject row, decimal by)
    {
        var along = answer.Along();
        if (along < 0)
        {
            return false;
        }

        row.Raise("at", by);
        foreach (var piece in row.List("pieces"))
        {
            piece["from"]!.Move(along, by);
            piece["to"]!.Move(along, by);
        }

        foreach (var mark in row.List("marks"))
        {
            if (mark["nearEdge"] is not null)
            {
                mark.Raise("nearEdge", by);
            }

            mark.Remove("nearEdgeText");
        }

        return true;
    }

    /// <summary>Half a strap's face, in the answer's units, from a row's own mark; null without marks.</summary>
    public static decimal? HalfFace(this JsonNode answer) => answer.Rows().SelectMany(r => r.List("marks")
        .Where(m => m["nearEdge"] is not null).Select(m => (decimal?)(r.Number("at") - m.Number("nearEdge")))).FirstOrDefault();

    /// <summary>Moves every board end that lies at this along to another; the boards on both sides change length.</summary>
    public static bool MoveButt(this JsonNode answer, decimal at, decimal by, Func<JsonObject, bool>? only = null)
    {
        var along = answer.Along();
        if (along < 0)
        {
            return false;
        }

        var low = answer.Boards().SelectMany(b => b["outline"]!.AsArray()).Min(p => p!.Coordinate(along));
        var moved = false;
        foreach (var board in answer.Boards().Where(b => only?.Invoke(b) ?? true).Where(b => b.List("ends").Any(e => Math.Abs(e.Number("at") - at) < 0.001m)))
        {
            foreach (var corner in board["outline"]!.AsArray().Where(p => Math.Abs(p!.Coordinate(along) - low - at) < 0.001m))
            {
                corner!.Move(along, by);
                moved = true;
            }

            foreach (var end in board.List("ends").Where(e => Math.Abs(e.Number("at") - at) < 0.001m))
            {
                end.Raise("at", by);
            }

            var alongs = board["outline"]!.AsArray().Select(p => p!.Coordinate(along)).ToList();
            board["length"] = JsonValue.Create(alongs.Max() - alongs.Min());
        }

        return moved;
    }

    /// <summary>The first board end that has backing: a butt.</summary>
    public static (JsonObject Board, JsonObject End)? FirstButt(this JsonNode answer) => answer.Boards()
        .SelectMany(b => b.List("ends").Where(e => e["backing"] is JsonArray { Count: > 0 } && IsInside(answer, e)).Select(e => ((JsonObject, JsonObject)?)(b, e)))
        .FirstOrDefault();

    /// <summary>An end between the first and the last row stands at no outer wall.</summary>
    private static bool IsInside(JsonNode answer, JsonObject end)
    {
        var rows = answer.Rows();
        return end.Number("at") > rows[0].Number("at") && end.Number("at") < rows[^1].Number("at");
    }
}
