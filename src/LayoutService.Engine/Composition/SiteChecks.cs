using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Composition;

/// <summary>What getting in and lifting did to the plan: the crew's limit as a check, stock that was left out as cautions.</summary>
internal static class SiteChecks
{
    private static readonly Citation Geometry = new()
    {
        Document = "Geometry of a stiff piece through an opening and round a square turn",
        Basis = Basis.Derived,
        Confidence = Confidence.Medium,
        Note = "Worked out from the clear sizes given; try the first piece before the rest are cut.",
    };

    private static readonly Caution GivenUp = new(
        Sentence.Of(
            "thorough_search_given_up",
            "The thorough search takes more work than one call may here; this is the plan of quick effort. Plan parts of the room in calls of their own for a thorough one."),
        new Citation { Document = "This service's limit of work on one call", Basis = Basis.Derived, Confidence = Confidence.High, Note = "Counted in steps, not in time: the same room ends at the same place each time." },
        []);

    public static IEnumerable<Check> Checks(Survey survey, PlanSummary summary, IReadOnlyList<string> heaviest)
    {
        if (StockOnSite.MostLifted(survey) is { } most)
        {
            var imperial = survey.Units == UnitSystem.Imperial;
            yield return new Check
            {
                Rule = "lift-mass-most",
                Source = most.Source,
                Status = summary.HeaviestLiftKilograms <= most.Value ? CheckStatus.Pass : CheckStatus.Fail,
                Comparison = CheckComparison.AtMost,
                Value = Said(summary.HeaviestLiftKilograms, imperial),
                Limit = Said(most.Value, imperial),
                Unit = imperial ? "lb" : "kg",
                Where = heaviest,
                Remedy = summary.HeaviestLiftKilograms <= most.Value ? null : Sentence.Of("more_hands", "Bring a lift or more hands."),
            };
        }
    }

    public static IEnumerable<Caution> Cautions(Survey survey) =>
    [
        .. survey.LeftOut.Select(left => new Caution(left.Why, left.Why.Code == "stock_too_heavy" ? StockOnSite.MostLifted(survey)!.Source : Geometry, [left.Id])),
        .. survey.SearchGivenUp ? [GivenUp] : Array.Empty<Caution>(),
    ];

    private static decimal Said(decimal kilograms, bool imperial) => decimal.Round(imperial ? kilograms / 0.45359237m : kilograms, 3);
}
