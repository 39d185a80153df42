using System.Globalization;
using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Rooms;

/// <summary>Writes whole steps as a request does: numbers in its units, or texts in trade notation.</summary>
internal sealed class LengthWriting(Dice dice, bool imperial, int percentTexts)
{
    public JsonNode Length(long steps)
    {
        if (steps <= 0 || !dice.Chance(percentTexts))
        {
            return JsonValue.Create(imperial ? steps / 16m : steps);
        }

        return JsonValue.Create(imperial ? ImperialText(steps) : MetricText(steps));
    }

    public JsonNode Point(Corner corner) => new JsonArray(Length(corner.X), Length(corner.Y));

    private string ImperialText(long sixteenths)
    {
        var (feet, inches) = (sixteenths / 192, Inches(sixteenths % 192, ' '));
        return dice.Whole(0, 5) switch
        {
            0 => $"{feet}' {inches}\"",
            1 => $"{feet}ft {Inches(sixteenths % 192, '-')}in",
            2 => $"{Inches(sixteenths, ' ')} in",
            3 => $"{Inches(sixteenths, '-')}\"",
            4 => (sixteenths * 1.5875m).ToString("0.####", CultureInfo.InvariantCulture) + " mm",
            _ => $"{feet}′ {inches}″",
        };
    }

    private string MetricText(long millimetres) => dice.Whole(0, 3) switch
    {
        0 => $"{millimetres} mm",
        1 => (millimetres / 1000m).ToString("0.###", CultureInfo.InvariantCulture) + " m",
        2 => (millimetres / 10m).ToString("0.#", CultureInfo.InvariantCulture) + " cm",
        _ => $"{millimetres}mm",
    };

    private static string Inches(long sixteenths, char join)
    {
        var (whole, part, under) = (sixteenths / 16, sixteenths % 16, 16L);
        if (part == 0)
        {
            return whole.ToString(CultureInfo.InvariantCulture);
        }

        while (part % 2 == 0)
        {
            (part, under) = (part / 2, under / 2);
        }

        return whole == 0 ? $"{part}/{under}" : $"{whole}{join}{part}/{under}";
    }
}
