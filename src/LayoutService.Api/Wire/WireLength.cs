using System.Text.Json;
using System.Text.Json.Serialization;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Wire;

/// <summary>
/// A length as it may arrive: a number in the request's units, or a text in trade notation with its own unit. What it
/// comes to is known when the units are.
/// </summary>
[JsonConverter(typeof(WireLengthConverter))]
public readonly record struct WireLength
{
    private readonly decimal number;
    private readonly Length fixedLength;
    private readonly bool isText;

    private WireLength(decimal number, Length fixedLength, bool isText)
    {
        this.number = number;
        this.fixedLength = fixedLength;
        this.isText = isText;
    }

    /// <summary>Largest number that can be sent, either sign: 1000 m in millimetres, 25.4 km in inches.</summary>
    public const int MaxNumber = 1_000_000;

    /// <summary>Longest text that can be sent, either sign.</summary>
    public static readonly Length MaxLength = Length.FromInches(MaxNumber);

    /// <summary>A number in the request's units.</summary>
    public static WireLength OfNumber(decimal number) => new(number, default, false);

    /// <summary>A length that came with its own unit.</summary>
    public static WireLength OfText(Length length) => new(0, length, true);

    /// <summary>False when it is further from zero than any room is.</summary>
    public bool InRange => isText
        ? fixedLength <= MaxLength && -fixedLength <= MaxLength
        : Math.Abs(number) <= MaxNumber;

    /// <summary>The length, rounded once to 1/8000 mm. Out of range it is held at the end of the range.</summary>
    public Length In(bool imperial)
    {
        if (isText)
        {
            return Length.Max(-MaxLength, Length.Min(MaxLength, fixedLength));
        }

        var held = Math.Clamp(number, -MaxNumber, MaxNumber);
        return imperial ? Length.FromInches(held) : Length.FromMillimetres(held);
    }
}

internal sealed class WireLengthConverter : JsonConverter<WireLength>
{
    public override WireLength Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Number && reader.TryGetDecimal(out var number))
        {
            return WireLength.OfNumber(number);
        }

        if (reader.TokenType == JsonTokenType.String
            && TradeNotation.TryRead(reader.GetString()!, out var length, out _))
        {
            return WireLength.OfText(length);
        }

        throw new JsonException();
    }

    /// <summary>Only needed to describe the type; requests are never written.</summary>
    public override void Write(Utf8JsonWriter writer, WireLength value, JsonSerializerOptions options) =>
        writer.WriteNumberValue(value.In(imperial: false).Millimetres);
}
