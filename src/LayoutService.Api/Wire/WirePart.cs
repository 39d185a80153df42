using System.Text.Json;
using System.Text.Json.Serialization;

namespace LayoutService.Api.Wire;

/// <summary>
/// A part of a request for a plan that is completed by another part before it is read: any object, kept as it was sent. What
/// it holds is checked when the whole is known.
/// </summary>
[JsonConverter(typeof(WirePartConverter))]
public readonly record struct WirePart(JsonElement Json);

internal sealed class WirePartConverter : JsonConverter<WirePart>
{
    public override WirePart Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        new(JsonElement.ParseValue(ref reader));

    public override void Write(Utf8JsonWriter writer, WirePart value, JsonSerializerOptions options) => value.Json.WriteTo(writer);
}
