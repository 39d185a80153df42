using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

internal static class JoistMapping
{
    public static IReadOnlyList<JoistField> Of(IReadOnlyList<JoistFieldRequest> fields, Assumptions assumed) =>
        [.. fields.Select((field, i) => Of(field, i, assumed))];

    /// <summary>Id of a field: the caller's, or its number in the list.</summary>
    public static string IdOf(JoistFieldRequest field, int index) =>
        field.Id ?? string.Create(CultureInfo.InvariantCulture, $"field-{index + 1}");

    /// <summary>Direction of the joists, degrees anticlockwise from +x.</summary>
    public static decimal DegreesOf(JoistFieldRequest field) => field.Run switch
    {
        RunWord.X => 0,
        RunWord.Y => 90,
        _ => field.RunDegrees ?? 0,
    };

    /// <summary>The depth sent, else that of the nominal size; null when neither was.</summary>
    public static Length? DepthOf(JoistFieldRequest field, Assumptions assumed) =>
        field.Depth?.In(assumed.Imperial)
        ?? (field.Size is { } size ? assumed.Default(JoistWords.Depth(size, true), JoistWords.Depth(size, false)) : null);

    private static JoistField Of(JoistFieldRequest field, int index, Assumptions assumed)
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"#/joistFields/{index}");
        var kind = assumed.Word($"{at}/kind", "The kind of joist", field.Kind, JoistWord.Sawn);
        return new JoistField
        {
            Id = IdOf(field, index),
            Region = field.Region is { Count: > 0 } region ? RoomMapping.OpenRing(region, assumed.Imperial) : null,
            RunDegrees = DegreesOf(field),
            Kind = kind switch
            {
                JoistWord.Sawn => JoistKind.Sawn,
                JoistWord.IJoist => JoistKind.IJoist,
                JoistWord.OpenWebTruss => JoistKind.OpenWebTruss,
                _ => JoistKind.Steel,
            },
            Depth = DepthOf(field, assumed),
            Species = field.Species is { } species ? JoistWords.Table(species) : null,
            Grade = field.Grade is { } grade ? JoistWords.Table(grade) : null,
            ClearSpan = field.ClearSpan?.In(assumed.Imperial),
            Bridging = field.Bridging,
            Face = assumed.Length($"{at}/face", "The nailing face of the joists", field.Face, 1.5m, 38),
            Positions = field.Positions is { } positions ? [.. positions.Select(p => p.In(assumed.Imperial))] : null,
            Spacing = field.Spacing?.In(assumed.Imperial),
            First = field.First?.In(assumed.Imperial),
            Undersides = [.. (field.Undersides ?? []).Select(u => new UndersideReading(RoomMapping.PointOf(u.At!.Value, assumed.Imperial), u.Level!.Value.In(assumed.Imperial)))],
        };
    }
}
