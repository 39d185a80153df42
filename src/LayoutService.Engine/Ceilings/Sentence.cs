namespace LayoutService.Engine.Ceilings;

/// <summary>
/// One thing said to a person: a stable code, the sentence in English, and the values in it by name, so that a caller
/// can say it in another language.
/// </summary>
public sealed record Sentence(string Code, string Text, IReadOnlyList<KeyValuePair<string, string>> Params)
{
    public static Sentence Of(string code, string text, params (string Name, string Value)[] values)
    {
        var list = new KeyValuePair<string, string>[values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            list[i] = new(values[i].Name, values[i].Value);
        }

        return new Sentence(code, text, list);
    }
}

/// <summary>Why something is where it is: what kind of reason, and the ids of the things that ask for it.</summary>
public sealed record Reason(string Kind, IReadOnlyList<string> Of, string? Code = null, string? Text = null);

/// <summary>Why no sensible plan exists, where, and what a person could change.</summary>
public sealed record Finding(Sentence Sentence, IReadOnlyList<string> Where, IReadOnlyList<Sentence> Remedies);
