using System.Text.Json;
using System.Text.Unicode;
using LayoutService.Api.Hosting;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Bulk;

/// <summary>
/// The common part: a first line <c>{"common": {…}}</c>, under which every room is laid (RFC 7396). A part that cannot be
/// used refuses the whole call, since every room would lack it.
/// </summary>
internal sealed class CommonPart
{
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = SyntaxCheck.MaxDepth };
    private static readonly JsonElement Nothing = JsonElement.Parse("{}"u8, Strict);
    private readonly JsonElement? under;

    private CommonPart(JsonElement? under) => this.under = under;

    /// <summary>No common part: every room is taken as it stands.</summary>
    public static CommonPart None { get; } = new(null);

    /// <summary>
    /// Reads the first line. Null when it is a room, or cannot be read and so is answered as one.
    /// </summary>
    public static CommonPart? Read(InputLine first, out ProblemResult? problem)
    {
        problem = null;
        if (!TryParse(first.Json, out var root) || root.ValueKind != JsonValueKind.Object || !Names(root).Contains("common"))
        {
            return null;
        }

        var members = root.EnumerateObject().ToList();
        if (Names(root).FirstOrDefault(n => n != "common") is { } other)
        {
            problem = Refuse(JsonPlace.Root.Member(other).ToString(), "unknown_member", "A line with a common part holds nothing else.");
        }
        else if (members.Count > 1)
        {
            problem = Refuse("#/common", "duplicate_member", "The common part stands twice.");
        }
        else if (members[0].Value.ValueKind != JsonValueKind.Object)
        {
            problem = Refuse("#/common", "wrong_type", "The common part must be an object.");
        }
        else if (!TryMerge(members[0].Value, Nothing, out _))
        {
            problem = Refuse("#/common", "text_not_unicode", "A text in the common part holds half a surrogate pair, which is no character.");
        }

        return problem is null ? new(members[0].Value) : None;
    }

    /// <summary>The room with the common part under it. A line that is not JSON stays as it is, for its faults to be told.</summary>
    public ReadOnlyMemory<byte> Under(ReadOnlyMemory<byte> room) =>
        under is { } common && TryParse(room, out var patch) && TryMerge(common, patch, out var merged) ? merged : room;

    private static IEnumerable<string> Names(JsonElement root)
    {
        foreach (var member in root.EnumerateObject())
        {
            yield return TextOf(member);
        }
    }

    private static string TextOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return "\uFFFD";
        }
    }

    /// <summary>False when a text has half of a surrogate pair, which cannot be written again.</summary>
    private static bool TryMerge(JsonElement common, JsonElement patch, out ReadOnlyMemory<byte> merged)
    {
        try
        {
            merged = MergePatch.Of(common, patch);
            return true;
        }
        catch (InvalidOperationException)
        {
            merged = default;
            return false;
        }
    }

    private static bool TryParse(ReadOnlyMemory<byte> json, out JsonElement root)
    {
        root = default;
        if (!Utf8.IsValid(json.Span))
        {
            return false;
        }

        try
        {
            root = JsonElement.Parse(json.Span, Strict);
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static ProblemResult Refuse(string pointer, string code, string detail) =>
        new(ProblemKind.Unreadable, detail, [Fault.At(pointer, code, detail)]);
}
