using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to boards, their ends and their seams.</summary>
internal static class BoardDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("move a butt half a face off its row", "butts.backing", a => a.FirstButt() is var (_, end) && a.MoveButt(end.Number("at"), a.Units(32))),
        new("move a butt half an inch past what the strap allows", "butts.backing", a => a.FirstButt() is var (_, end) && a.MoveButt(end.Number("at"), a.Units(26))),
        new("lengthen one board over its neighbour", "sheets.overlap", a => a.FirstButt() is var (board, end) && Grow(a, board, end, 20)),
        new("shorten one board at its butt", "sheets.tiling", a => a.FirstButt() is var (board, end) && Grow(a, board, end, -20)),
        new("leave a board out", "sheets.tiling", a => a.Boards().Count > 0 && StrapDamages.Remove(a["sheets"]!["pieces"]!.AsArray())),
        new("push a board through the wall", "sheets.outside", Push),
        new("say a board is 10 mm wider", "sheets.size", a => a.Boards().Count > 0 && StrapDamages.Add(a.Boards()[0], "width", a.Units(10))),
        new("say a board has twice its area", "sheets.size", a => a.Boards().FirstOrDefault(b => b["area"] is not null) is { } b && StrapDamages.Add(b, "area", b.Number("area"))),
        new("cross a board's outline over itself", "sheets.ring", Cross),
        new("list another row behind a butt", "butts.listed", Elsewhere),
        new("list an end that is not there", "ids.known", a => a.FirstButt() is var (_, end) && StrapDamages.Set(end, "backing", new JsonArray("row-that-is-not"))),
        new("leave a butt off the list of ends", "butts.listed", a => a.FirstButt() is var (board, _) && StrapDamages.Set(board, "ends", new JsonArray())),
        new("bring two neighbouring butts onto one row", "butts.stagger", Align),
        new("say there are 500 mm more of butts", "sheets.joints", a => a["sheets"] is JsonObject s && StrapDamages.Add(s, "buttJointLength", a.Units(500))),
    ];

    /// <summary>Moves one board's edge at its end outwards by so many mm, and leaves the neighbour.</summary>
    private static bool Grow(JsonNode answer, JsonObject board, JsonObject end, decimal millimetres)
    {
        var along = answer.Along();
        if (along < 0)
        {
            return false;
        }

        var corners = board["outline"]!.AsArray();
        var low = answer.Boards().SelectMany(b => b["outline"]!.AsArray()).Min(p => p!.Coordinate(along));
        var at = end.Number("at") + low;
        var outwards = corners.Average(p => p!.Coordinate(along)) < at ? 1 : -1;
        return answer.MoveButt(end.Number("at"), outwards * answer.Units(millimetres), b => b == board);
    }

    private static bool Push(JsonNode answer)
    {
        if (answer.Boards().Count == 0)
        {
            return false;
        }

        foreach (var corner in answer.Boards()[0]["outline"]!.AsArray())
        {
            corner!.Move(0, answer.Units(40000));
        }

        return true;
    }

    private static bool Cross(JsonNode answer)
    {
        if (answer.Boards().Count == 0)
        {
            return false;
        }

        var corners = answer.Boards()[0]["outline"]!.AsArray();
        var (a, b) = (corners[1]!.DeepClone(), corners[2]!.DeepClone());
        (corners[1], corners[2]) = (b, a);
        return true;
    }

    private static bool Elsewhere(JsonNode answer)
    {
        if (answer.FirstButt() is not var (_, end))
        {
            return false;
        }

        var listed = end["backing"]!.AsArray().Select(i => i!.GetValue<string>()).ToHashSet();
        var other = answer.Rows().FirstOrDefault(r => !listed.Contains(r.Id()) && r.List("pieces").All(p => !listed.Contains(p.Id())));
        return other is not null && StrapDamages.Set(end, "backing", new JsonArray(other.Id()));
    }

    /// <summary>Moves the butt of a board onto that of a board in the next course, with its backing.</summary>
    private static bool Align(JsonNode answer)
    {
        var along = answer.Along();
        if (along < 0 || answer.FirstButt() is not var (board, end))
        {
            return false;
        }

        foreach (var other in answer.Boards().Where(b => b["course"]?.ToJsonString() != board["course"]?.ToJsonString() && Touches(board, b, 1 - along)))
        {
            var butt = other.List("ends").FirstOrDefault(e => e["backing"] is JsonArray { Count: > 0 } && Math.Abs(e.Number("at") - end.Number("at")) > answer.Units(100)
                && e.Number("at") > answer.Rows()[0].Number("at") + answer.Units(100) && e.Number("at") < answer.Rows()[^1].Number("at") - answer.Units(100));
            if (butt is not null)
            {
                var course = other["course"]?.ToJsonString();
                return answer.MoveButt(butt.Number("at"), end.Number("at") - butt.Number("at"), b => b["course"]?.ToJsonString() == course);
            }
        }

        return false;
    }

    private static bool Touches(JsonObject a, JsonObject b, int across)
    {
        (decimal Low, decimal High) Of(JsonObject board)
        {
            var at = board["outline"]!.AsArray().Select(p => p!.Coordinate(across)).ToList();
            return (at.Min(), at.Max());
        }

        var (first, second) = (Of(a), Of(b));
        return Math.Abs(first.High - second.Low) < 0.001m || Math.Abs(second.High - first.Low) < 0.001m;
    }
}
