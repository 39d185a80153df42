using FluentValidation;
using LayoutService.Api.Documents;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans;

/// <summary>One room in, the whole plan or one part of it out.</summary>
public static class PlanEndpoints
{
    /// <summary>The same request has the same answer as long as the engine's version stays: an hour lets a new one be seen soon.</summary>
    private const int SecondsKept = 3600;

    public static void AddPlans(this IServiceCollection services)
    {
        services.AddSingleton<IValidator<PlanRequest>, PlanRequestValidator>();
        services.AddSingleton<RequestRules>();
        services.AddSingleton<PlanDesk>();
        services.AddSingleton<WarmUp>();
    }

    public static void MapPlans(this IEndpointRouteBuilder routes)
    {
        var plans = routes.MapGroup("/v1").WithTags("Plans").AddEndpointFilter(new Acceptable("application/json"));
        plans.MapPost("/plans", Plan)
            .WithName("createPlan")
            .WithSummary("Plan a ceiling")
            .WithDescription("One room in, the whole plan out: straps, sheets, cut plan, takeoff, checks, steps. The call is pure: the same request has the same answer, and may be repeated.")
            .Produces<PlanAnswer>()
            .WithMetadata(new OfferedForms(PlanForms.Table.MediaTypes))
            .PlansProblems();
        // the same as a safe call that may be kept; the generator's model has no word for it (docs/calling.md has)
        plans.MapMethods("/plans", [HttpMethods.Query], Plan)
            .WithMetadata(new OfferedForms(PlanForms.Table.MediaTypes))
            .AddEndpointFilter(new Tagged(SecondsKept))
            .ExcludeFromDescription();
        plans.MapPost("/plans/check", Check)
            .WithName("checkPlan")
            .WithSummary("Check a request for a plan")
            .WithDescription("Reads and plans the request, and answers with exactly the errors that the real call would give, or with none.")
            .Produces<CheckedAnswer>()
            .PlansProblems();
        plans.MapPost("/strapping", Strapping)
            .WithName("createStrapping")
            .WithSummary("Plan the straps alone")
            .WithDescription("The same request as for a plan; the answer is the block `strapping` of that plan.")
            .Produces<StrappingAnswer>()
            .PlansProblems();
        plans.MapPost("/sheets", Sheets)
            .WithName("createSheets")
            .WithSummary("Plan the sheets alone")
            .WithDescription("The same request as for a plan; the answer is the block `sheets` of that plan.")
            .Produces<SheetsAnswer>()
            .PlansProblems();
        plans.MapPost("/fixtures", Fixtures)
            .WithName("createFixtures")
            .WithSummary("Place the fixtures alone")
            .WithDescription("The same request as for a plan; the answer is the block `fixtures` of that plan: a list.")
            .Produces<IReadOnlyList<FixtureAnswer>>()
            .PlansProblems();
        plans.MapPost("/bulkheads", Bulkheads)
            .WithName("createBulkheads")
            .WithSummary("Plan the bulkheads alone")
            .WithDescription("The same request as for a plan; the answer is the blocks `bulkheads` and `accessPanels` of that plan.")
            .Produces<BulkheadsAnswer>()
            .PlansProblems();
        plans.MapPost("/insulation", Insulation)
            .WithName("createInsulation")
            .WithSummary("Plan the batts alone")
            .WithDescription("The same request as for a plan; the answer is the block `insulation` of that plan. Where the request asks for no batts, it has no fills.")
            .Produces<InsulationAnswer>()
            .PlansProblems();
    }

    private static async Task<IResult> Plan(JsonBody<PlanRequest> body, HttpRequest request, PlanDesk desk, CancellationToken stop)
    {
        if (!PlanQuery.TryRead(request, PlanForms.Table, out var blocks, out var form, out var view, out var wrong) || !LayerQuery.TryRead(request, out var layers, out wrong))
        {
            return wrong;
        }

        var (asked, refused) = desk.Accept(body);
        if (asked is null)
        {
            return refused!;
        }

        request.HttpContext.Response.Headers.Vary = "Accept";
        var (plan, none) = await desk.PlanAsync(asked, stop);
        return plan is null
            ? none!
            : form.Write(new(plan, asked, body.Reading!.Value!, PlanDesk.RequestDigestOf(body), blocks ?? Blocks.All) { Layers = layers }, view);
    }

    private static Task<IResult> Check(JsonBody<PlanRequest> body, PlanDesk desk, CancellationToken stop) =>
        Answer(body, desk, default, answer => JsonAnswer.Of(new CheckedAnswer(answer.Reference, answer.RequestDigest, answer.Digest)), stop);

    private static Task<IResult> Strapping(JsonBody<PlanRequest> body, PlanDesk desk, CancellationToken stop) =>
        Answer(body, desk, new(Block.Strapping), answer => JsonAnswer.Of(answer.Strapping), stop);

    private static Task<IResult> Bulkheads(JsonBody<PlanRequest> body, PlanDesk desk, CancellationToken stop) =>
        Answer(body, desk, new(Block.Bulkheads), answer => JsonAnswer.Of(new BulkheadsAnswer { Bulkheads = answer.Bulkheads!, AccessPanels = answer.AccessPanels! }), stop);

    private static Task<IResult> Sheets(JsonBody<PlanRequest> body, PlanDesk desk, CancellationToken stop) =>
        Answer(body, desk, new(Block.Sheets), answer => JsonAnswer.Of(answer.Sheets), stop);

    private static Task<IResult> Fixtures(JsonBody<PlanRequest> body, PlanDesk desk, CancellationToken stop) =>
        Answer(body, desk, new(Block.Fixtures), answer => JsonAnswer.Of(answer.Fixtures), stop);

    private static Task<IResult> Insulation(JsonBody<PlanRequest> body, PlanDesk desk, CancellationToken stop) =>
        Answer(body, desk, new(Block.Insulation), answer => JsonAnswer.Of(answer.Insulation ?? InsulationAnswer.None), stop);

    private static async Task<IResult> Answer(
        JsonBody<PlanRequest> body, PlanDesk desk, Blocks blocks, Func<PlanAnswer, IResult> write, CancellationToken stop)
    {
        var (asked, refused) = desk.Accept(body);
        if (asked is null)
        {
            return refused!;
        }

        var (plan, none) = await desk.PlanAsync(asked, stop);
        return plan is null ? none! : write(PlanWriting.Of(plan, asked, PlanDesk.RequestDigestOf(body), blocks));
    }

    /// <summary>The blocks that the query asks for; false, and the problem, when it cannot be read.</summary>
    internal static bool TryBlocks(IQueryCollection query, out Blocks blocks, out ProblemResult wrong)
    {
        wrong = null!;
        blocks = default;
        foreach (var (name, values) in query)
        {
            if (name != "include")
            {
                wrong = new(ProblemKind.BadQuery, "The only name after the question mark is include.");
                return false;
            }

            if (Blocks.Read(string.Join(',', values.ToArray()), out _) is not { } asked)
            {
                var words = string.Join(", ", Blocks.Words.Select(w => w.Word));
                wrong = new(ProblemKind.BadQuery, $"A word of include is not known; the words are {words}.");
                return false;
            }

            blocks = asked;
        }

        blocks = query.Count == 0 ? Blocks.All : blocks;
        return true;
    }
}
