using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Wire;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>
/// Takes what the caller sent, or a default that is then listed under <c>assumed</c>. Defaults are round figures in the
/// caller's own units: a yard that sells in feet is not asked for 2400 mm.
/// </summary>
internal sealed class Assumptions(bool imperial, IReadOnlyDictionary<string, Length>? own = null)
{
    private readonly List<AssumedAnswer> made = [];

    public IReadOnlyList<AssumedAnswer> Made => made;

    public bool Imperial => imperial;

    /// <summary>The same, for members that shape nothing in this request: what is assumed of them is not listed.</summary>
    public Assumptions Unheard() => new(imperial, own);

    /// <summary>The caller's own value of a rule that is planned by, or null.</summary>
    public Length? Own(string rule) => own is not null && own.TryGetValue(rule, out var value) ? value : null;

    /// <summary>A length sent, or else the caller's value of the rule that it defaults to, or else the default for the units.</summary>
    public Length Length(string pointer, string name, WireLength? sent, decimal inches, decimal millimetres, string? rule = null)
    {
        if (sent is { } length)
        {
            return length.In(imperial);
        }

        if (rule is not null && Own(rule) is { } set)
        {
            Note(pointer, Tape(set), $"{name} was not given; {Tape(set)} is taken, as rule {rule} of the request says.");
            return set;
        }

        var taken = Default(inches, millimetres);
        Note(pointer, Tape(taken), $"{name} was not given; {Tape(taken)} is taken.");
        return taken;
    }

    /// <summary>A word sent, or else the default.</summary>
    public TWord Word<TWord>(string pointer, string name, TWord? sent, TWord usual)
        where TWord : struct, Enum
    {
        if (sent is { } word)
        {
            return word;
        }

        var text = Words.Text(usual);
        Note(pointer, text, $"{name} was not given; {text} is taken.");
        return usual;
    }

    public Length Default(decimal inches, decimal millimetres) =>
        imperial ? Engine.Measures.Length.FromInches(inches) : Engine.Measures.Length.FromMillimetres(millimetres);

    public void Note(string pointer, string value, string text) => made.Add(new(pointer, value, text));

    /// <summary>As a tape shows it; 12.7 mm and the like keep their decimals.</summary>
    public string Tape(Length length)
    {
        if (imperial)
        {
            return TapeText.Imperial(length, TapeRounding.Nearest);
        }

        return $"{Figures.Text(length, imperial: false)} mm";
    }
}
