using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Likeness;

/// <summary>
/// Changes of a request that must not change its plan, or must only move it: mirrored, shifted, turned, listed from
/// another corner or the other way round, closed or open, its lengths written otherwise.
/// </summary>
public static class Metamorphic
{
    /// <summary>The request with the whole room moved. Exact for joists along x or y; to 0.000001 mm at other angles.</summary>
    public static string Moved(string request, Motion motion)
    {
        var moved = Rewriting.Copy(request);
        var unit = Rewriting.Unit(moved);
        var corners = Rewriting.Rings(moved).First().Ring.Select(p => Rewriting.Point(p!, unit)).ToList();
        List<JsonObject> fields = [.. moved["joistFields"]!.AsArray().Select(f => f!.AsObject())];
        fields.ForEach(field => Joists(field, motion, corners, unit));
        foreach (var (owner, ring) in Rewriting.Rings(moved).ToList())
        {
            owner["outline"] = new JsonArray([.. ring.Select(p => Point(p!, motion, unit))]);
        }

        HiddenMoves.Move(moved, p => Point(p, motion, unit));
        foreach (var height in (moved["room"]!["heights"]?.AsArray() ?? []).Where(h => h!["at"] is not null))
        {
            height!["at"] = Point(height["at"]!, motion, unit);
        }

        foreach (var field in fields)
        {
            foreach (var reading in field["undersides"]?.AsArray() ?? [])
            {
                reading!["at"] = Point(reading["at"]!, motion, unit);
            }

            if (field["region"] is JsonArray region)
            {
                field["region"] = new JsonArray([.. region.Select(p => Point(p!, motion, unit))]);
            }
        }

        FixtureMoves.Move(moved, motion, p => Point(p, motion, unit));
        BulkheadMoves.Move(moved, p => Point(p, motion, unit));
        return moved.ToJsonString();
    }

    /// <summary>The same rings listed from another corner.</summary>
    public static string Renumbered(string request, int by) => WithRings(request, ring =>
        [.. ring.Skip(by % ring.Count), .. ring.Take(by % ring.Count)], (edge, count) => (edge + count - (by % count)) % count);

    /// <summary>The same rings listed the other way round.</summary>
    public static string Reversed(string request) => WithRings(request, ring => ring.AsEnumerable().Reverse().ToList(), (edge, count) => ((2 * count) - 2 - edge) % count);

    /// <summary>The same rings with the first corner repeated at the end.</summary>
    public static string Closed(string request) => WithRings(request, ring => [.. ring, ring[0]]);

    /// <summary>The same rings without a repeated corner.</summary>
    public static string Opened(string request) => WithRings(request, ring => ring);

    /// <summary>
    /// The same lengths of outline, openings and joists written as texts in millimetres, exact to 1/8000 mm whatever the
    /// request's units. Negative coordinates stay numbers.
    /// </summary>
    public static string AsMillimetreTexts(string request)
    {
        var written = Rewriting.Copy(request);
        var unit = Rewriting.Unit(written);
        foreach (var (owner, ring) in Rewriting.Rings(written).ToList())
        {
            owner["outline"] = new JsonArray([.. ring.Select(p => (JsonNode)new JsonArray(Text(p![0]!, unit), Text(p[1]!, unit)))]);
        }

        Texts(written["joistFields"]![0]!.AsObject(), unit, "face", "depth", "spacing", "first", "positions");
        return written.ToJsonString();
    }

    /// <summary>
    /// The same room with the other units: every length becomes a text with its own unit, so that only the step of
    /// chosen positions and the defaults change. Row and sheet counts mostly stay; prices per length do not carry over.
    /// The room is first shifted to positive coordinates; batts and services are left out.
    /// </summary>
    public static string InOtherUnits(string request)
    {
        var node = Rewriting.Copy(request);
        var unit = Rewriting.Unit(node);
        var corners = Rewriting.Rings(node).First().Ring.Select(p => Rewriting.Point(p!, unit)).ToList();
        var changed = Rewriting.Copy(AsMillimetreTexts(Moved(request, Motion.Shift(-corners.Min(c => c.X), -corners.Min(c => c.Y)))));
        changed["units"] = unit == 1 ? "imperial" : "metric";
        changed.AsObject().Remove("services");
        changed.AsObject().Remove("insulation");
        foreach (var height in changed["room"]!["heights"]?.AsArray() ?? [])
        {
            height!["floorToJoist"] = Text(height["floorToJoist"]!, unit);
        }

        Texts(changed["room"]!.AsObject(), unit, "floorBuildUp");
        foreach (var part in new[] { changed["strapping"], changed["sheets"] }.OfType<JsonObject>())
        {
            Texts(part, unit, "maxSpacing", "minPiece", "kerf", "endTrim", "endClearance", "longestHandled", "thickness", "cutAllowance", "minStagger");
            Texts(part["size"] as JsonObject, unit, "thickness", "face");
            foreach (var stock in part["stock"]?.AsArray() ?? [])
            {
                Texts(stock!.AsObject(), unit, "length", "width");
            }
        }

        return changed.ToJsonString();
    }

    private static void Texts(JsonObject? parent, decimal unit, params string[] names)
    {
        foreach (var name in names.Where(n => parent?[n] is not null))
        {
            parent![name] = parent[name] is JsonArray list ? new JsonArray([.. list.Select(i => Text(i!, unit))]) : Text(parent[name]!, unit);
        }
    }

    private static JsonNode Text(JsonNode length, decimal unit)
    {
        var millimetres = Rewriting.Millimetres(length, unit);
        return millimetres < 0 ? Rewriting.Number(millimetres, unit)
            : JsonValue.Create(FormattableString.Invariant($"{decimal.Round(millimetres, 6):0.######} mm"));
    }

    private static string WithRings(string request, Func<List<JsonNode>, List<JsonNode>> change, Func<int, int, int>? edge = null)
    {
        var written = Rewriting.Copy(request);
        var unit = Rewriting.Unit(written);
        var outline = Opened(Rewriting.Rings(written).First().Ring, unit).Count;
        BulkheadMoves.Renumber(written, e => edge?.Invoke(e, outline) ?? e);
        foreach (var (owner, ring) in Rewriting.Rings(written).ToList())
        {
            owner["outline"] = new JsonArray([.. change(Opened(ring, unit)).Select(p => p.DeepClone())]);
        }

        return written.ToJsonString();
    }

    private static List<JsonNode> Opened(JsonArray ring, decimal unit)
    {
        var open = ring.Select(p => p!.DeepClone()).ToList();
        if (open.Count > 3 && Rewriting.Point(open[0], unit) == Rewriting.Point(open[^1], unit))
        {
            open.RemoveAt(open.Count - 1);
        }

        return open;
    }

    private static JsonNode Point(JsonNode point, Motion motion, decimal unit)
    {
        var (x, y) = Rewriting.Point(point, unit);
        var (movedX, movedY) = motion.Move(x, y);
        return new JsonArray(Rewriting.Number(movedX, unit), Rewriting.Number(movedY, unit));
    }

    private static void Joists(JsonObject field, Motion motion, List<(decimal X, decimal Y)> outline, decimal unit)
    {
        var degrees = field["run"]?.GetValue<string>() switch
        {
            "x" => 0,
            "y" => 90,
            _ => decimal.Parse(field["runDegrees"]!.ToJsonString(), System.Globalization.CultureInfo.InvariantCulture),
        };
        var moved = motion.Degrees(degrees);
        if (field.ContainsKey("run"))
        {
            field["run"] = moved == 0 ? "x" : "y";
        }
        else
        {
            field["runDegrees"] = moved;
        }

        if (!motion.FlipsAcross(degrees))
        {
            return;
        }

        var across = Across(outline, degrees);
        var (low, high) = (across.Min(), across.Max());
        var centres = field["positions"]?.AsArray().Select(p => Rewriting.Millimetres(p!, unit)).ToList() ?? Regular(field, unit, high - low);
        field.Remove("spacing");
        field.Remove("first");
        field["positions"] = new JsonArray([.. centres.Select(c => Rewriting.Number(high - low - c, unit))]);
    }

    private static List<decimal> Regular(JsonObject field, decimal unit, decimal extent)
    {
        var (first, spacing) = (Rewriting.Millimetres(field["first"]!, unit), Rewriting.Millimetres(field["spacing"]!, unit));
        return Enumerable.Range(0, (int)((extent - first) / spacing) + 1).Select(i => first + (i * spacing)).ToList();
    }

    private static List<decimal> Across(List<(decimal X, decimal Y)> outline, decimal degrees)
    {
        var radians = (double)degrees * Math.PI / 180;
        return outline.Select(p => degrees switch
        {
            0 => p.Y,
            90 => p.X,
            _ => decimal.Round((p.X * (decimal)Math.Sin(radians)) - (p.Y * (decimal)Math.Cos(radians)), 6),
        }).ToList();
    }
}
