namespace LayoutService.Api.Wire;

/// <summary>One thing that is wrong with a request.</summary>
/// <param name="Pointer">The place: an RFC 6901 pointer in its URI-fragment form.</param>
/// <param name="Code">Stable code.</param>
/// <param name="Detail">What is wrong, as a sentence.</param>
/// <param name="Params">The values in the sentence, by name.</param>
public sealed record Fault(string Pointer, string Code, string Detail, IReadOnlyDictionary<string, string>? Params = null)
{
    /// <summary>Most faults told at once.</summary>
    public const int MaxTold = 100;

    public static Fault At(string pointer, string code, string detail, params (string Name, string Value)[] values) =>
        new(pointer, code, detail, values.Length == 0 ? null : values.ToDictionary(v => v.Name, v => v.Value));
}
