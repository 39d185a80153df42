using System.Globalization;

namespace LayoutService.Api.Wire;

/// <summary>A place in a JSON document, from the root down; printed as an RFC 6901 pointer in URI-fragment form.</summary>
public sealed class JsonPlace
{
    private readonly JsonPlace? parent;
    private readonly string? name;
    private readonly int index;

    private JsonPlace(JsonPlace? parent, string? name, int index)
    {
        this.parent = parent;
        this.name = name;
        this.index = index;
    }

    /// <summary>The whole document: <c>#</c>.</summary>
    public static JsonPlace Root { get; } = new(null, null, 0);

    public JsonPlace Member(string member) => new(this, member, 0);

    public JsonPlace Item(int item) => new(this, null, item);

    public override string ToString() => parent is null ? "#" : $"{parent}/{Token()}";

    private string Token() => name is null ? index.ToString(CultureInfo.InvariantCulture) : Escape(name);

    /// <summary>A member name as one token of a pointer in a URI fragment.</summary>
    public static string Escape(string member)
    {
        var escaped = member.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
        return Uri.EscapeDataString(escaped);
    }
}
