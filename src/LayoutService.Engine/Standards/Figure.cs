using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Standards;

/// <summary>
/// A number with its unit, as printed: <c>19 mm</c>, <c>5/8 in</c>, <c>1-1/8 in</c>, <c>0.55 lb/ft2</c>. The unit stands in
/// the cell itself, so that no figure can be read in a wrong one; conversion happens here and nowhere by hand.
/// </summary>
[JsonConverter(typeof(FigureConverter))]
public sealed record Figure(decimal Value, FigureUnit Unit, string Printed)
{
    /// <summary>Reads a cell. Throws <see cref="FormatException"/> when it is not a number, one space and a known unit.</summary>
    public static Figure Parse(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        if (space <= 0)
        {
            throw new FormatException($"'{text}' is not a number and a unit.");
        }

        return new Figure(Number(text[..space], text), FigureUnit.Parse(text[(space + 1)..]), text);
    }

    public static Figure Of(decimal value, FigureUnit unit) =>
        new(value, unit, string.Create(CultureInfo.InvariantCulture, $"{value:0.######} {unit.Symbol}"));

    /// <summary>The exact length. Throws when the figure is no length.</summary>
    public Length Length => new((long)decimal.Round(Value * Unit.LengthUnits));

    /// <summary>The same quantity in another unit of the same dimension, unrounded. Throws when the dimension differs.</summary>
    public decimal In(string symbol)
    {
        var other = FigureUnit.Parse(symbol);
        return other.Dimension == Unit.Dimension
            ? other == Unit ? Value : Value * Unit.Factor / other.Factor
            : throw new InvalidOperationException($"{Printed} cannot be said in {symbol}.");
    }

    public override string ToString() => Printed;

    private static decimal Number(string text, string whole)
    {
        var dash = text.IndexOf('-', StringComparison.Ordinal);
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            return Plain(text, whole);
        }

        var units = dash > 0 ? Plain(text[..dash], whole) : 0m;
        var over = Plain(text[(dash > 0 ? dash + 1 : 0)..slash], whole);
        var under = Plain(text[(slash + 1)..], whole);
        return under == 0 ? throw new FormatException($"'{whole}' divides by zero.") : units + (over / under);
    }

    private static decimal Plain(string text, string whole) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? value
            : throw new FormatException($"'{whole}' does not begin with a number.");
}

/// <summary>Reads a figure from its cell; anything else stops the load.</summary>
public sealed class FigureConverter : JsonConverter<Figure>
{
    public override Figure Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        try
        {
            return Figure.Parse(reader.TokenType == JsonTokenType.String ? reader.GetString()! : string.Empty);
        }
        catch (FormatException fault)
        {
            throw new JsonException(fault.Message, fault);
        }
    }

    public override void Write(Utf8JsonWriter writer, Figure value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.Printed);
}
