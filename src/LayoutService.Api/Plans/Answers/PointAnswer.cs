using System.Text.Json;
using System.Text.Json.Serialization;

namespace LayoutService.Api.Plans.Answers;

/// <summary>A place in the caller's own coordinates: an array of x and y.</summary>
[JsonConverter(typeof(PointAnswerConverter))]
public readonly record struct PointAnswer(decimal X, decimal Y);

internal sealed class PointAnswerConverter : JsonConverter<PointAnswer>
{
    public override PointAnswer Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Answers are written, never read.");

    public override void Write(Utf8JsonWriter writer, PointAnswer value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteNumberValue(value.X);
        writer.WriteNumberValue(value.Y);
        writer.WriteEndArray();
    }
}
