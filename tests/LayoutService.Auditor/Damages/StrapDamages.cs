using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to rows and their pieces.</summary>
internal static class StrapDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("delete the row with the widest spaces", "rows.spacing", a => Widest(a) is { } row && Delete(a, row)),
        new("delete the first row", "rows.tight", a => a.Rows().Count > 1 && Delete(a, a.Rows()[0])),
        new("delete the last row", "rows.tight", a => a.Rows().Count > 1 && Delete(a, a.Rows()[^1])),
        new("shift the first row 40 mm into the room", "rows.tight", a => a.Rows().Count > 0 && a.Shift(a.Rows()[0], a.Units(40))),
        new("shift the row with the widest spaces by 200 mm", "rows.spacing", a => Widest(a) is { } row && a.Shift(row, a.Units(200))),
        new("shift a row by a third of a millimetre", "rows.step", a => Free(a) is { } row && a.Shift(row, a.Units(0.3m))),
        new("push two rows together so that a butt falls near the gap", "rows.clear-gap", Crowd),
        new("lay a second strap over a row", "rows.overlap", Double),
        new("stretch a piece 100 mm past its end", "rows.inside", a => End(a, 100, "wall")),
        new("stop a piece 80 mm before the wall", "pieces.end", a => End(a, -80, "wall")),
        new("take half a face off a mark", "rows.marks", Mark),
        new("leave a row without a reason", "rows.reason", a => a.Rows().Count > 0 && Set(a.Rows()[0], "reasons", new JsonArray())),
        new("bring a piece off its row's line", "pieces.line", OffLine),
        new("say a piece is 25 mm longer than drawn", "pieces.length", a => FirstPiece(a) is { } p && Add(p, "length", a.Units(25))),
        new("break a row 100 mm beside its joist", "pieces.joint", a => Joint(a, a.Units(100))),
        new("break a row beside its wall", "pieces.shortest", JointAtWall),
        new("leave a piece on one joist", "pieces.bearing", Stub),
        new("call a joint on a joist a lap", "pieces.joint", a => FirstJoint(a) is var (low, high) && Set(low, "endJoint", "lap") && Set(high, "startJoint", "lap")),
        new("take the ledgers and nailers away", "pieces.overhang", a => a.List("strapping", "nailers").Count > 0
            && Set(a["strapping"]!.AsObject(), "nailers", new JsonArray())),
        new("lay a nailer where another lies", "nailers.twice", a => a.List("strapping", "nailers") is { Count: > 1 } n && Set(n[1], "from", n[0]["from"]!.DeepClone()) && Set(n[1], "to", n[0]["to"]!.DeepClone())),
        new("lay a nailer through an opening", "nailers.opening", ThroughOpening),
        new("forget a crossing", "takeoff.crossings", ForgetCrossing),
    ];

    public static bool Set(JsonObject node, string name, JsonNode value)
    {
        node[name] = value;
        return true;
    }

    public static bool Add(JsonObject node, string name, decimal by)
    {
        node.Raise(name, by);
        return true;
    }

    public static bool Remove(JsonArray list)
    {
        list.RemoveAt(0);
        return true;
    }

    /// <summary>Takes away one that lies on a joist.</summary>
    private static bool ForgetCrossing(JsonNode answer)
    {
        var others = answer.List("strapping", "nailers").Select(n => n.Id()).ToHashSet();
        var crossing = answer.List("strapping", "crossings").FirstOrDefault(c => c["supportId"] is { } id && !others.Contains(id.GetValue<string>()));
        return crossing is not null && answer["strapping"]!["crossings"]!.AsArray().Remove(crossing);
    }

    /// <summary>From where a row stops at an opening to where it goes on.</summary>
    private static bool ThroughOpening(JsonNode answer)
    {
        foreach (var pieces in answer.Rows().Select(r => r.List("pieces")))
        {
            for (var i = 0; i + 1 < pieces.Count; i++)
            {
                if (pieces[i]["endJoint"]?.GetValue<string>() == "opening" && pieces[i + 1]["startJoint"]?.GetValue<string>() == "opening"
                    && answer.List("strapping", "nailers").FirstOrDefault() is { } nailer)
                {
                    return Set(nailer, "from", pieces[i]["to"]!.DeepClone()) && Set(nailer, "to", pieces[i + 1]["from"]!.DeepClone());
                }
            }
        }

        return false;
    }

    private static bool Delete(JsonNode answer, JsonObject row) => answer["strapping"]!["rows"]!.AsArray().Remove(row);

    /// <summary>The inner row whose neighbours stand furthest apart.</summary>
    private static JsonObject? Widest(JsonNode answer)
    {
        var rows = answer.Rows();
        return Enumerable.Range(1, Math.Max(0, rows.Count - 2)).Where(i => i + 1 < rows.Count)
            .OrderByDescending(i => rows[i + 1].Number("at") - rows[i - 1].Number("at")).Select(i => rows[i]).FirstOrDefault();
    }

    /// <summary>An inner row that backs no butt.</summary>
    private static JsonObject? Free(JsonNode answer)
    {
        var backing = answer.Boards().SelectMany(b => b.List("ends")).SelectMany(e => e["backing"]?.AsArray() ?? [])
            .Select(i => i!.GetValue<string>()).ToHashSet();
        var rows = answer.Rows();
        return rows.Skip(1).SkipLast(1).FirstOrDefault(r => !backing.Contains(r.Id()) && !r.List("pieces").Any(p => backing.Contains(p.Id())));
    }

    private static bool Crowd(JsonNode answer)
    {
        if (answer.FirstButt() is not var (_, end) || answer.HalfFace() is not { } half)
        {
            return false;
        }

        var rows = answer.Rows();
        var at = rows.FindIndex(r => Math.Abs(r.Number("at") - end.Number("at")) < half);
        // a short row may not reach the butt
        var next = at < 0 ? -1 : rows.FindIndex(at + 1, r => r["short"] is null);
        return next >= 0 && answer.Shift(rows[at], answer.Units(-10))
            && answer.Shift(rows[next], rows[at].Number("at") + (2 * half) + answer.Units(5) - rows[next].Number("at"));
    }

    private static bool Double(JsonNode answer)
    {
        if (answer.Rows().Count < 3 || answer.Along() < 0)
        {
            return false;
        }

        var copy = answer.Rows()[1].DeepClone().AsObject();
        copy["id"] = copy.Id() + "-again";
        foreach (var piece in copy.List("pieces"))
        {
            piece["id"] = piece.Id() + "-again";
        }

        answer["strapping"]!["rows"]!.AsArray().Add(copy);
        return answer.Shift(copy, answer.Units(20));
    }

    private static JsonObject? FirstPiece(JsonNode answer) => answer.Rows().SelectMany(r => r.List("pieces")).FirstOrDefault();

    /// <summary>Moves the end of a piece that meets such a thing, outwards by so many mm.</summary>
    private static bool End(JsonNode answer, decimal millimetres, string joint)
    {
        var along = answer.Along();
        var piece = answer.Rows().SelectMany(r => r.List("pieces")).FirstOrDefault(p => p["endJoint"]?.GetValue<string>() == joint && p["bevel"] is null);
        if (along < 0 || piece is null)
        {
            return false;
        }

        var axis = 1 - along;
        var sign = Math.Sign(piece["to"]!.Coordinate(axis) - piece["from"]!.Coordinate(axis));
        piece["to"]!.Move(axis, answer.Units(millimetres) * sign);
        piece.Raise("length", answer.Units(millimetres));
        return true;
    }

    private static bool Mark(JsonNode answer)
    {
        var mark = answer.Rows().SelectMany(r => r.List("marks")).FirstOrDefault();
        if (mark is null)
        {
            return false;
        }

        if (mark["nearEdge"] is not null)
        {
            mark.Raise("nearEdge", answer.Units(32));
        }

        mark["nearEdgeText"] = "9999 mm";
        return true;
    }

    private static bool OffLine(JsonNode answer)
    {
        var along = answer.Along();
        if (along < 0)
        {
            return false;
        }

        var piece = FirstPiece(answer)!;
        piece["from"]!.Move(along, answer.Units(7));
        piece["to"]!.Move(along, answer.Units(7));
        return true;
    }

    private static (JsonObject Low, JsonObject High)? FirstJoint(JsonNode answer)
    {
        foreach (var row in answer.Rows())
        {
            var pieces = row.List("pieces");
            for (var i = 1; i < pieces.Count; i++)
            {
                if (pieces[i - 1]["endJoint"]?.GetValue<string>() == "joist" && pieces[i]["startJoint"]?.GetValue<string>() == "joist")
                {
                    return (pieces[i - 1], pieces[i]);
                }
            }
        }

        return null;
    }

    private static bool Joint(JsonNode answer, decimal by)
    {
        if (FirstJoint(answer) is not var (low, high) || answer.Along() is var along && along < 0)
        {
            return false;
        }

        var axis = 1 - along;
        var sign = Math.Sign(low["to"]!.Coordinate(axis) - low["from"]!.Coordinate(axis));
        low["to"]!.Move(axis, by * sign);
        high["from"]!.Move(axis, by * sign);
        low.Raise("length", by);
        high.Raise("length", -by);
        return true;
    }

    private static bool JointAtWall(JsonNode answer) => FirstJoint(answer) is var (low, _)
        && Joint(answer, answer.Units(150) - low.Number("length"));

    private static bool Stub(JsonNode answer)
    {
        var along = answer.Along();
        if (along < 0)
        {
            return false;
        }

        var (piece, axis) = (FirstPiece(answer)!, 1 - along);
        var by = answer.Units(250) - piece.Number("length");
        var sign = Math.Sign(piece["to"]!.Coordinate(axis) - piece["from"]!.Coordinate(axis));
        piece["to"]!.Move(axis, by * sign);
        piece.Raise("length", by);
        return true;
    }
}
