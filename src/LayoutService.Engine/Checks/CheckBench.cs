using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>Holds values against limits and says both in the caller's units.</summary>
internal sealed class CheckBench(RuleBook book, CheckFacts facts)
{
    public RuleBook Book => book;

    public CheckFacts Facts => facts;

    public bool Imperial => facts.Units == UnitSystem.Imperial;

    public string LengthUnit => Imperial ? "in" : "mm";

    public decimal Say(Length length) => decimal.Round(Imperial ? length.Inches : length.Millimetres, 6);

    /// <summary>A length as a person reads it: <c>15-3/4 in</c>, <c>0.866 in</c> where no mark of a tape is there, <c>400 mm</c>.</summary>
    public string Text(Length length) =>
        Imperial && TapeText.WholeSixteenths(length) is { } marks ? $"{marks} {LengthUnit}"
        : string.Create(CultureInfo.InvariantCulture, $"{(Imperial ? decimal.Round(length.Inches, 3) : decimal.Round(length.Millimetres, 1)):0.###} {LengthUnit}");

    /// <summary>A rule's own limit, or the caller's, as a length.</summary>
    public Cited<Length> Limit(string rule)
    {
        var (figure, source) = book.Limit(rule, Imperial);
        return new(figure.Length, source);
    }

    /// <summary>The caller's value of a looked-up rule where one was set, else what the look-up gave.</summary>
    public Cited<Length> Own(GridRule rule, Cited<Length> lookedUp) =>
        book.Override(rule.Id) is { } own ? new(Figure.Of(own.Value, FigureUnit.Parse(rule.UnitIn(book.Country))).Length, own.Source) : lookedUp;

    /// <summary>
    /// A module as a limit: what is printed, unless the caller works in inches or the value lies between the print and the
    /// module it stands for; then the module, and a note that says so.
    /// </summary>
    public (Length Limit, Sentence? Note) Module(Figure printed, Length value)
    {
        var module = NominalModule.Of(printed);
        return module == printed.Length || (!Imperial && value <= printed.Length)
            ? (printed.Length, null)
            : (module, Sentence.Of(
                "nominal_module",
                $"The code prints {printed}; it is read as the {Text(module)} that floors are framed at.",
                ("printed", printed.Printed), ("module", Text(module))));
    }

    /// <summary>
    /// A lumber size as a limit. Printed metric and inch sizes name one dressed size (64 mm and 2-1/2 in, 63.5 mm): the caller's
    /// own is the limit, and the smaller of the two when the value falls between them.
    /// </summary>
    public Length Dressed(Figure printed, Length value)
    {
        foreach (var row in book.Tables.LumberSizes.Rows)
        {
            (Figure Inch, Figure Metric)[] pairs = [(row.Thickness, row.MetricThickness), (row.Width, row.MetricWidth)];
            foreach (var (inch, metric) in pairs)
            {
                if (printed == inch || printed == metric)
                {
                    var own = (Imperial ? inch : metric).Length;
                    return value >= own ? own : Length.Min(inch.Length, metric.Length);
                }
            }
        }

        return printed.Length;
    }

    /// <summary>Value against limit; within <paramref name="tolerance"/> on the wrong side it is marginal.</summary>
    public Check Lengths(
        string rule, CheckComparison comparison, Length value, Cited<Length> limit, IReadOnlyList<string> where,
        Sentence? remedy = null, Length tolerance = default, Sentence? note = null)
    {
        var miss = comparison switch
        {
            CheckComparison.AtMost => value - limit.Value,
            CheckComparison.AtLeast => limit.Value - value,
            _ => new Length(Math.Abs((value - limit.Value).Units)),
        };
        var status = miss <= Length.Zero ? CheckStatus.Pass : miss <= tolerance ? CheckStatus.Marginal : CheckStatus.Fail;
        return new Check
        {
            Rule = rule,
            Source = limit.Source,
            Status = status,
            Comparison = comparison,
            Value = Say(value),
            Limit = Say(limit.Value),
            Unit = LengthUnit,
            Where = where,
            Note = note,
            Remedy = status == CheckStatus.Pass ? null : remedy,
        };
    }

    /// <summary>A check that cannot be made until the caller says more.</summary>
    public Check NotChecked(
        string rule, CheckComparison comparison, Citation source, Length? limit, IReadOnlyList<string> missing, Sentence? note = null) => new()
    {
        Rule = rule,
        Source = source,
        Status = CheckStatus.NotChecked,
        Comparison = comparison,
        Limit = limit is { } length ? Say(length) : null,
        Unit = LengthUnit,
        Missing = missing,
        Note = note,
    };
}
