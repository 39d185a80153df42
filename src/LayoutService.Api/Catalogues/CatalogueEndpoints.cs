using LayoutService.Api.Hosting;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Catalogues;

/// <summary>The figures applied, and where they are published.</summary>
public static class CatalogueEndpoints
{
    /// <summary>A version of the service never changes them; an hour lets a new version be seen soon.</summary>
    private const int SecondsKept = 3600;

    public static void MapCatalogues(this IEndpointRouteBuilder routes)
    {
        var standards = routes.MapGroup("/v1").WithTags("Standards").AddEndpointFilter(new Tagged(SecondsKept)).AddEndpointFilter(new Acceptable("application/json"));
        standards.MapGet("/rules", () => JsonAnswer.Of(CatalogueWriting.Rules()))
            .WithName("listRules")
            .WithSummary("Rules applied")
            .WithDescription("Every rule that a plan may apply: value, unit, published source and clause or common practice, and how sure the figure is.")
            .Produces<RulesAnswer>()
            .ReadingProblems();
        standards.MapGet("/rules/{id}", Rule)
            .WithName("getRule")
            .WithSummary("One rule")
            .WithDescription("One rule by its id.")
            .Produces<RuleAnswer>()
            .Produces<Problem>(StatusCodes.Status404NotFound, ProblemResult.MediaType)
            .ReadingProblems();
        standards.MapGet("/rulesets", () => JsonAnswer.Of(CatalogueWriting.Rulesets()))
            .WithName("listRulesets")
            .WithSummary("Rulesets")
            .WithDescription("The building codes whose figures can be applied.")
            .Produces<RulesetsAnswer>()
            .ReadingProblems();
        standards.MapGet("/materials", () => JsonAnswer.Of(CatalogueWriting.Materials()))
            .WithName("listMaterials")
            .WithSummary("Materials known")
            .WithDescription("Known sizes, sheets, batts, fasteners and finishing materials, with the source of each figure.")
            .Produces<MaterialsAnswer>()
            .ReadingProblems();
    }

    private static IResult Rule(string id) => RuleCatalogue.Current.Find(id) is { } rule
        ? JsonAnswer.Of(CatalogueWriting.Of(rule))
        : new ProblemResult(ProblemKind.NotFound, "No rule has this id; GET /v1/rules lists them.");
}
