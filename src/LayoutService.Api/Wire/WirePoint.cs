using System.Text.Json;
using System.Text.Json.Serialization;

namespace LayoutService.Api.Wire;

/// <summary>A place as it may arrive: an array of exactly two lengths.</summary>
[JsonConverter(typeof(WirePointConverter))]
public readonly record struct WirePoint(WireLength X, WireLength Y)
{
    public bool InRange => X.InRange && Y.InRange;
}

internal sealed class WirePointConverter : JsonConverter<WirePoint>
{
    public override WirePoint Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var numbers = JsonSerializer.Deserialize<WireLength[]>(ref reader, options);
        return numbers is [var x, var y] ? new WirePoint(x, y) : throw new JsonException();
    }

    /// <summary>Only needed to describe the type; requests are never written.</summary>
    public override void Write(Utf8JsonWriter writer, WirePoint value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        JsonSerializer.Serialize(writer, value.X, options);
        JsonSerializer.Serialize(writer, value.Y, options);
        writer.WriteEndArray();
    }
}
