using System.Globalization;
using System.Text.Json;
using FluentValidation;
using LayoutService.Api.Comparisons.Answers;
using LayoutService.Api.Comparisons.Requests;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Rooms;
using LayoutService.Api.Wire;
using LayoutService.Engine;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Comparisons;

/// <summary>What follows the reading of a comparison: rules of base and variants, their plans, the table.</summary>
internal sealed class ComparisonDesk(IValidator<ComparisonRequest> bounds, RoomParts parts, EngineGate gate)
{
    /// <summary>Name of the base in the table.</summary>
    public const string BaseName = "base";

    private static readonly JsonElement NoChange = JsonElement.Parse("{}"u8);

    public async ValueTask<(ComparisonAnswer? Answer, ProblemResult? Problem)> CompareAsync(
        JsonBody<ComparisonRequest> body, Blocks? include, CancellationToken stop)
    {
        if (body.Problem is not null)
        {
            return (null, body.Problem);
        }

        var request = body.Reading!.Value!;
        var faults = FaultsOf(request, body.Reading.Root);
        if (faults.Count > 0)
        {
            return (null, ProblemResult.Invalid(faults));
        }

        var changes = request.Variants!.Select((v, i) => new PlacedPart(v.Change!.Value.Json, string.Create(CultureInfo.InvariantCulture, $"#/variants/{i}/change")));
        var (accepted, refused) = parts.Accept(new(request.Base!.Value.Json, "#/base"), [new(NoChange, "#/base"), .. changes]);
        if (accepted is null)
        {
            return (null, refused);
        }

        List<Fault> against = [.. UnitFaults(accepted), .. PurseRules.FaultsOf(accepted)];
        return against.Count > 0 ? (null, ProblemResult.Invalid(against)) : await PlanAsync(request, accepted, RequestDigest.Of(body.Reading.Root), include, stop);
    }

    private async ValueTask<(ComparisonAnswer? Answer, ProblemResult? Problem)> PlanAsync(
        ComparisonRequest request, IReadOnlyList<AcceptedRoom> accepted, string digest, Blocks? include, CancellationToken stop)
    {
        using var place = await gate.EnterAsync(stop);
        if (place is null)
        {
            return (null, ProblemResult.Busy());
        }

        var ink = new AnswerInk(accepted[0].Request.Units == UnitsWord.Imperial);
        var lines = new List<VariantAnswer>();
        for (var i = 0; i < accepted.Count; i++)
        {
            var room = accepted[i];
            var line = new VariantAnswer
            {
                Name = i == 0 ? BaseName : request.Variants![i - 1].Name!,
                Digest = SurveyDigest.Of(room.Asked.Survey),
            };
            lines.Add(LayoutEngine.Plan(room.Asked.Survey, place.Meter()) switch
            {
                PlanOutcome.Made made => line with
                {
                    Figures = ComparisonWriting.Figures(made.Plan, ink),
                    Plan = include is { } blocks ? PlanWriting.Of(made.Plan, room.Asked, room.RequestDigest, blocks) : null,
                },
                PlanOutcome.NotPossible none => line with { Findings = [.. NoPlans.Of(none.Findings, room.Own.Pointer)] },
                _ => throw new InvalidOperationException("The engine answered neither with a plan nor with findings."),
            });
        }

        return lines.All(line => line.Figures is null)
            ? (null, new(ProblemKind.NoPlan, "Neither the base nor any variant has a sensible plan; the findings say why.", findings: [.. lines.SelectMany(line => line.Findings!)]))
            : (new()
            {
                Reference = request.Reference,
                Units = ink.Imperial ? UnitsWord.Imperial : UnitsWord.Metric,
                EngineVersion = LayoutEngine.EngineVersion,
                RulesVersion = PublishedTables.Current.RulesVersion,
                RequestDigest = digest,
                Variants = lines,
                Best = ComparisonWriting.Best(lines),
            }, null);
    }

    private IReadOnlyList<Fault> FaultsOf(ComparisonRequest request, JsonElement root)
    {
        var faults = new FaultList();
        foreach (var failure in bounds.Validate(request).Errors)
        {
            faults.Add(failure);
        }

        var seen = new HashSet<string>(StringComparer.Ordinal) { BaseName };
        var variants = request.Variants ?? [];
        for (var i = 0; i < variants.Count; i++)
        {
            if (variants[i].Name is { } name && !seen.Add(name))
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"#/variants/{i}/name"), "name_repeated", "Another line of the table has this name.");
            }
        }

        return DocumentOrder.Of(faults.All, root);
    }

    private static IEnumerable<Fault> UnitFaults(IReadOnlyList<AcceptedRoom> accepted) => accepted
        .Where(room => room.Request.Units != accepted[0].Request.Units)
        .Select(room => Fault.At(room.Own.Pointer + "/units", "units_differ", "A variant is in the units of the base, so that figures can be compared; a length may be given as a text with its own unit."));
}
