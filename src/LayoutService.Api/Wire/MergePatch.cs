using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace LayoutService.Api.Wire;

/// <summary>
/// RFC 7396 (JSON Merge Patch): the members of a patch laid over those of a target, objects member by member, anything else
/// whole; a null takes a member away. Cost: one pass over both, and one look through the patch for each member of the target.
/// A member that stands twice in the patch stands twice in the result, so that it can be refused there.
/// </summary>
internal static class MergePatch
{
    private static readonly JsonWriterOptions AsSent = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    /// <summary>The UTF-8 JSON of <paramref name="target"/> with <paramref name="patch"/> laid over it.</summary>
    public static ReadOnlyMemory<byte> Of(JsonElement target, JsonElement patch)
    {
        var bytes = new ArrayBufferWriter<byte>(1024);
        using (var writer = new Utf8JsonWriter(bytes, AsSent))
        {
            Write(writer, target, patch);
        }

        return bytes.WrittenMemory;
    }

    /// <summary>A target that is no object counts as an empty one.</summary>
    private static void Write(Utf8JsonWriter writer, JsonElement target, JsonElement patch)
    {
        if (patch.ValueKind != JsonValueKind.Object)
        {
            patch.WriteTo(writer);
            return;
        }

        writer.WriteStartObject();
        var under = target.ValueKind == JsonValueKind.Object;
        if (under)
        {
            foreach (var member in target.EnumerateObject())
            {
                WriteUnder(writer, member, patch);
            }
        }

        foreach (var member in patch.EnumerateObject())
        {
            if (!under || !target.TryGetProperty(member.Name, out _))
            {
                WriteOver(writer, default, member);
            }
        }

        writer.WriteEndObject();
    }

    private static void WriteUnder(Utf8JsonWriter writer, JsonProperty member, JsonElement patch)
    {
        var touched = false;
        foreach (var over in patch.EnumerateObject())
        {
            if (over.NameEquals(member.Name))
            {
                touched = true;
                WriteOver(writer, member.Value, over);
            }
        }

        if (!touched)
        {
            member.WriteTo(writer);
        }
    }

    private static void WriteOver(Utf8JsonWriter writer, JsonElement under, JsonProperty over)
    {
        if (over.Value.ValueKind != JsonValueKind.Null)
        {
            writer.WritePropertyName(over.Name);
            Write(writer, under, over.Value);
        }
    }
}
