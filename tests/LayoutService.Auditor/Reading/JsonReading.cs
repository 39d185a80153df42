using System.Globalization;
using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>Reading JSON members that may be absent, null, or numbers given as texts.</summary>
internal static class JsonReading
{
    public static JsonElement? Member(this JsonElement element, string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var value)
        && value.ValueKind != JsonValueKind.Null ? value : null;

    public static JsonElement? Member(this JsonElement? element, string name) => element?.Member(name);

    public static IEnumerable<JsonElement> Items(this JsonElement? element) =>
        element is { ValueKind: JsonValueKind.Array } array ? array.EnumerateArray() : [];

    public static string? Text(this JsonElement? element) => element switch
    {
        { ValueKind: JsonValueKind.String } text => text.GetString(),
        { ValueKind: JsonValueKind.Number } number => number.GetRawText(),
        _ => null,
    };

    public static decimal? Decimal(this JsonElement? element) =>
        decimal.TryParse(element.Text(), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;

    public static double? Double(this JsonElement? element) =>
        element is { } value && element.Decimal() is { } number ? (double)number : null;

    /// <summary>A length in mm, or null when absent.</summary>
    public static double? Length(this JsonElement? element, double unit) =>
        element is { } value ? LengthText.Millimetres(value, unit) : null;

    public static (double X, double Y) Point(this JsonElement point, double unit) =>
        (LengthText.Millimetres(point[0], unit), LengthText.Millimetres(point[1], unit));

    /// <summary>Things by id; where an id is used twice the first has it.</summary>
    public static Dictionary<string, T> ById<T>(this IEnumerable<T> things, Func<T, string> id)
    {
        var byId = new Dictionary<string, T>();
        foreach (var thing in things)
        {
            byId.TryAdd(id(thing), thing);
        }

        return byId;
    }

    /// <summary>A ring without its closing point, in mm, in the caller's own coordinates.</summary>
    public static List<(double X, double Y)> Ring(this JsonElement ring, double unit)
    {
        var points = ring.EnumerateArray().Select(p => p.Point(unit)).ToList();
        var (first, last) = (points[0], points[^1]);
        if (points.Count > 3 && Math.Abs(first.X - last.X) < 1e-4 && Math.Abs(first.Y - last.Y) < 1e-4)
        {
            points.RemoveAt(points.Count - 1);
        }

        return points;
    }
}
