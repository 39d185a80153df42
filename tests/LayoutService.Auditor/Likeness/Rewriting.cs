using System.Globalization;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Likeness;

/// <summary>Reads and writes lengths in a request's JSON as exact decimals of a millimetre.</summary>
internal static class Rewriting
{
    public static decimal Unit(JsonNode request) => request["units"]!.GetValue<string>() == "imperial" ? 25.4m : 1m;

    public static decimal Millimetres(JsonNode length, decimal unit)
    {
        var text = length.ToJsonString();
        if (!text.StartsWith('"'))
        {
            return decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) * unit;
        }

        return LengthText.TryRead(length.GetValue<string>(), out var read)
            ? decimal.Round((decimal)read, 6) : throw new FormatException($"no length: {text}");
    }

    /// <summary>A number in the request's units; a length that is no decimal in them keeps twelve places.</summary>
    public static JsonNode Number(decimal millimetres, decimal unit) =>
        JsonNode.Parse(decimal.Round(millimetres / unit, 12).ToString("0.############", CultureInfo.InvariantCulture))!;

    /// <summary>Every ring of the request: the outline and the openings'.</summary>
    public static IEnumerable<(JsonNode Owner, JsonArray Ring)> Rings(JsonNode request)
    {
        var room = request["room"]!;
        yield return (room, room["outline"]!.AsArray());
        foreach (var opening in room["openings"]?.AsArray() ?? [])
        {
            yield return (opening!, opening!["outline"]!.AsArray());
        }
    }

    public static JsonNode Copy(string request) => JsonNode.Parse(request)!;

    public static (decimal X, decimal Y) Point(JsonNode point, decimal unit) =>
        (Millimetres(point[0]!, unit), Millimetres(point[1]!, unit));
}
