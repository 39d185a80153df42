using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace LayoutService.Api.Wire;

/// <summary>What may stand at one place of a request.</summary>
internal enum ShapeKind
{
    Object,
    List,
    Text,
    Number,
    Whole,
    Flag,
    Word,
    Date,
    Length,
    Point,
    Part,
}

/// <summary>
/// The shape of a request, drawn from the same type metadata that the deserialiser and the contract use, so that the
/// three cannot differ.
/// </summary>
internal sealed class Shape
{
    public required ShapeKind Kind { get; init; }

    /// <summary>Members of an object by their names in JSON.</summary>
    public FrozenDictionary<string, Shape> Members { get; private set; } = FrozenDictionary<string, Shape>.Empty;

    /// <summary>What a list holds.</summary>
    public Shape? Item { get; private set; }

    /// <summary>The words that an enumeration knows, in the order of the contract.</summary>
    public IReadOnlyList<string> Words { get; private init; } = [];

    /// <summary>Draws the shape of <paramref name="type"/>; fails at start-up when a type has no shape.</summary>
    public static Shape Of(Type type, JsonSerializerOptions options) => Of(type, options, []);

    private static Shape Of(Type type, JsonSerializerOptions options, Dictionary<Type, Shape> known)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        if (known.TryGetValue(type, out var drawn))
        {
            return drawn;
        }

        if (Leaf(type, options) is { } leaf)
        {
            return known[type] = leaf;
        }

        var info = options.GetTypeInfo(type);
        switch (info.Kind)
        {
            case JsonTypeInfoKind.Object:
                var shape = known[type] = new Shape { Kind = ShapeKind.Object };
                shape.Members = info.Properties.ToFrozenDictionary(
                    p => p.Name, p => Of(p.PropertyType, options, known), StringComparer.Ordinal);
                return shape;
            case JsonTypeInfoKind.Enumerable:
                return known[type] = new Shape { Kind = ShapeKind.List, Item = Of(info.ElementType!, options, known) };
            default:
                throw new InvalidOperationException($"No shape is known for {type}.");
        }
    }

    private static Shape? Leaf(Type type, JsonSerializerOptions options)
    {
        if (type.IsEnum)
        {
            var words = Enum.GetValues(type).Cast<object>()
                .Select(word => JsonSerializer.SerializeToElement(word, type, options).GetString()!);
            return new Shape { Kind = ShapeKind.Word, Words = [.. words] };
        }

        ShapeKind? kind = type switch
        {
            _ when type == typeof(string) => ShapeKind.Text,
            _ when type == typeof(decimal) => ShapeKind.Number,
            _ when type == typeof(int) => ShapeKind.Whole,
            _ when type == typeof(bool) => ShapeKind.Flag,
            _ when type == typeof(DateOnly) => ShapeKind.Date,
            _ when type == typeof(WireLength) => ShapeKind.Length,
            _ when type == typeof(WirePoint) => ShapeKind.Point,
            _ when type == typeof(WirePart) => ShapeKind.Part,
            _ => null,
        };
        return kind is { } known ? new Shape { Kind = known } : null;
    }
}
