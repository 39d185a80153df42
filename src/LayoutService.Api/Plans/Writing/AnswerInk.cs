using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the small things of an answer in the request's units: lengths, tape texts, places, sentences.</summary>
internal sealed class AnswerInk(bool imperial)
{
    public bool Imperial => imperial;

    public decimal Number(Length length) => Figures.Of(length, imperial);

    public decimal? Number(Length? length) => length is { } known ? Number(known) : null;

    /// <summary>As marked on a tape, to the nearest sixteenth or millimetre.</summary>
    public string Mark(Length length) => Text(length, TapeRounding.Nearest);

    public string? Mark(Length? length) => length is { } known ? Mark(known) : null;

    /// <summary>As a length to cut, rounded down.</summary>
    public string Cut(Length length) => Text(length, TapeRounding.Down);

    public PointAnswer Place(Point point) => new(Number(point.X), Number(point.Y));

    public IReadOnlyList<PointAnswer> Ring(IReadOnlyList<Point> ring)
    {
        var places = new PointAnswer[ring.Count];
        for (var i = 0; i < places.Length; i++)
        {
            places[i] = Place(ring[i]);
        }

        return places;
    }

    public decimal Mass(decimal kilograms) => Figures.Mass(kilograms, imperial);

    public static SentenceAnswer Say(Sentence sentence) => new(sentence.Code, sentence.Text, Params(sentence));

    /// <summary>The values in a sentence, in the order in which it holds them.</summary>
    public static IReadOnlyDictionary<string, string> Params(Sentence sentence)
    {
        var values = new Dictionary<string, string>(sentence.Params.Count, StringComparer.Ordinal);
        foreach (var (name, value) in sentence.Params)
        {
            values[name] = value;
        }

        return values;
    }

    public static IReadOnlyList<ReasonAnswer> Why(IReadOnlyList<Reason> reasons) =>
        [.. reasons.Select(r => new ReasonAnswer(r.Kind, r.Of, r.Code, r.Text))];

    private string Text(Length length, TapeRounding rounding) =>
        imperial ? TapeText.Imperial(length, rounding) : TapeText.Metric(length, rounding);
}
