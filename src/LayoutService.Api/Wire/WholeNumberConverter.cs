using System.Text.Json;
using System.Text.Json.Serialization;

namespace LayoutService.Api.Wire;

/// <summary>
/// A whole number however JSON writes it (<c>4</c>, <c>4.0</c>, <c>4e0</c> are the same number). Beyond ±1e9 it is held
/// there, and so stays outside of every limit.
/// </summary>
internal sealed class WholeNumberConverter : JsonConverter<int>
{
    public const int Furthest = 1_000_000_000;

    public override int Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (!reader.TryGetDecimal(out var number) || number != decimal.Truncate(number))
        {
            throw new JsonException();
        }

        return (int)Math.Clamp(number, -Furthest, Furthest);
    }

    public override void Write(Utf8JsonWriter writer, int value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}
