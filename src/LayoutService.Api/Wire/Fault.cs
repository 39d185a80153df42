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

    /// <summary>The longest text of an answer.</summary>
    public const int MostText = 4000;

    /// <summary>How much of a value that a caller sent is said back.</summary>
    private const int MostOfValue = 200;

    /// <summary>The place; a longer one is told by what it lies in.</summary>
    public string Pointer { get; init; } = Pointer.Length <= MostText ? Pointer : Pointer[..Math.Max(1, Pointer[..MostText].LastIndexOf('/'))];

    /// <summary>What is wrong, as a sentence.</summary>
    public string Detail { get; init; } = Told(Detail, MostText);

    /// <summary>The values in the sentence, by name.</summary>
    public IReadOnlyDictionary<string, string>? Params { get; init; } = Params?.ToDictionary(p => p.Key, p => Told(p.Value, MostOfValue));

    public static Fault At(string pointer, string code, string detail, params (string Name, string Value)[] values)
    {
        foreach (var (_, value) in values.Where(v => v.Value.Length > MostOfValue))
        {
            detail = detail.Replace(value, Told(value, MostOfValue), StringComparison.Ordinal);
        }

        return new(pointer, code, detail, values.Length == 0 ? null : values.ToDictionary(v => v.Name, v => v.Value));
    }

    // not longer than that, without control characters, and no character cut in two
    private static string Told(string text, int most)
    {
        if (text.Length > most)
        {
            text = $"{text[..(char.IsHighSurrogate(text[most - 2]) ? most - 2 : most - 1)]}…";
        }

        return text.Any(char.IsControl) ? string.Concat(text.Select(sign => char.IsControl(sign) ? '\uFFFD' : sign)) : text;
    }
}
