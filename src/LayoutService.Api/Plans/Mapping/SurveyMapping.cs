using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>What is planned: the survey, and the defaults that went into it.</summary>
internal sealed record MappedPlan(Survey Survey, IReadOnlyList<AssumedAnswer> Assumed, string? Reference);

/// <summary>Turns a valid request into a survey. The only place where the two meet.</summary>
internal static class SurveyMapping
{
    public static MappedPlan Of(PlanRequest request)
    {
        var assumed = new Assumptions(request.Units == UnitsWord.Imperial, OwnRules.Of(request.Rules));
        var ruleset = assumed.Word(
            "#/ruleset", "The ruleset", request.Ruleset, UsualRuleset(assumed.Imperial));
        var effort = assumed.Word("#/effort", "The effort", request.Effort, EffortWord.Quick);
        NoteLanguage(request.Language, assumed);
        var survey = new Survey
        {
            Units = assumed.Imperial ? UnitSystem.Imperial : UnitSystem.Metric,
            Ruleset = Words.Text(ruleset),
            Effort = effort == EffortWord.Quick ? Effort.Quick : Effort.Thorough,
            Room = RoomMapping.Of(request.Room!, assumed, request.JoistFields!.Any(f => f.Undersides is { Count: > 0 })),
            JoistFields = JoistMapping.Of(request.JoistFields!, assumed),
            Strapping = StrappingMapping.Under(request.Room!, StrappingMapping.Of(request.Strapping ?? new(), assumed), assumed),
            Sheets = SheetsMapping.Of(request.Sheets ?? new(), assumed, Stagger(request)),
            Services = ServiceMapping.Of(request, assumed),
            Fixtures = FixtureMapping.Of(request.Fixtures, assumed),
            LightGrid = FixtureMapping.Of(request.LightGrid, assumed),
            Mounts = FixtureMapping.Of(request.Mounts, assumed),
            Bulkheads = BulkheadMapping.Of(request, assumed),
            Partitions = PartitionMapping.Of(request.Partitions, assumed),
            Insulation = InsulationMapping.Of(request, assumed),
            Prices = PricesMapping.Of(request.Prices),
            WayIn = AccessMapping.Of(request.Access, assumed.Imperial),
            Crew = AccessMapping.Of(request.Crew, assumed),
            RuleOverrides = (request.Rules ?? []).ToDictionary(r => r.Id!, r => r.Value!.Value),
        };
        return new(survey, assumed.Made, request.Reference);
    }

    // the lookup of RFC 4647, section 3.4: what there is nothing for gets the default, which is English
    private static void NoteLanguage(string? asked, Assumptions assumed)
    {
        if (asked is not null && !asked.Split('-')[0].Equals("en", StringComparison.OrdinalIgnoreCase))
        {
            assumed.Note("#/language", "en", $"There are no texts in {asked}; they are in English. Codes and figures are the same in every language.");
        }
    }

    // Rows between butts, where the caller set that rule.
    private static decimal? Stagger(PlanRequest request) => request.Rules?.FirstOrDefault(rule => rule.Id == "butt-stagger-rows")?.Value;

    /// <summary>The ruleset of a request that names none.</summary>
    public static RulesetWord UsualRuleset(bool imperial) => imperial ? RulesetWord.UsIrc2021 : RulesetWord.CaNbc2020;
}
