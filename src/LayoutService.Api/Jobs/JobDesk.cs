using System.Globalization;
using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Jobs.Requests;
using LayoutService.Api.Plans;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Rooms;
using LayoutService.Api.Wire;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Jobs;

/// <summary>What follows the reading of a job: rules of every room, their plans, the order. All rooms' faults are told at once.</summary>
internal sealed class JobDesk(IValidator<JobRequest> bounds, RoomParts parts, EngineGate gate)
{
    public async ValueTask<(FinishedJob? Job, ProblemResult? Problem)> OrderAsync(JsonBody<JobRequest> body, CancellationToken stop)
    {
        if (body.Problem is not null)
        {
            return (null, body.Problem);
        }

        var request = body.Reading!.Value!;
        var faults = new FaultList();
        foreach (var failure in bounds.Validate(request).Errors)
        {
            faults.Add(failure);
        }

        if (faults.All.Count > 0)
        {
            return (null, ProblemResult.Invalid(DocumentOrder.Of(faults.All, body.Reading.Root)));
        }

        var common = request.Common is { } shared ? new PlacedPart(shared.Json, "#/common") : null;
        var (accepted, refused) = parts.Accept(common, [.. request.Rooms!.Select((room, i) => new PlacedPart(room.Json, Pointer(i)))]);
        if (accepted is null)
        {
            return (null, refused);
        }

        var purse = PurseRules.FaultsOf(accepted);
        return purse.Count > 0 ? (null, ProblemResult.Invalid(purse)) : await PlanAsync(request, accepted, RequestDigest.Of(body.Reading.Root), stop);
    }

    private async ValueTask<(FinishedJob? Job, ProblemResult? Problem)> PlanAsync(
        JobRequest request, IReadOnlyList<AcceptedRoom> accepted, string digest, CancellationToken stop)
    {
        using var place = await gate.EnterAsync(stop);
        if (place is null)
        {
            return (null, ProblemResult.Busy());
        }

        var names = RoomNames.Of([.. accepted.Select(room => room.Asked.Reference)]);
        var rooms = new List<JobRoom>();
        var findings = new List<FindingAnswer>();
        foreach (var (survey, i) in JobEngine.WithOneSaw([.. accepted.Select(room => room.Asked.Survey)]).Select((survey, i) => (survey, i)))
        {
            switch (LayoutEngine.Plan(survey, place.Meter()))
            {
                case PlanOutcome.Made made:
                    rooms.Add(new(names[i], survey, made.Plan));
                    break;
                case PlanOutcome.NotPossible none:
                    findings.AddRange(NoPlans.Of(none.Findings, Pointer(i)));
                    break;
            }
        }

        if (findings.Count > 0)
        {
            return (null, NoPlan(findings));
        }

        return JobEngine.Pool(rooms, place.Meter()) switch
        {
            JobOutcome.Made made => (new(made.Plan, rooms, accepted, request, digest), null),
            JobOutcome.NotPossible none => (null, NoPlan([.. NoPlans.Of(none.Findings, null)])),
            _ => throw new InvalidOperationException("The engine answered neither with an order nor with findings."),
        };
    }

    private static string Pointer(int room) => string.Create(CultureInfo.InvariantCulture, $"#/rooms/{room}");

    private static ProblemResult NoPlan(IReadOnlyList<FindingAnswer> findings) => new(
        ProblemKind.NoPlan, findings.Count == 1 ? findings[0].Text : "No sensible order exists; the findings say for which rooms and why.", findings: findings);
}

/// <summary>A finished job as it is handed to a form of the answer.</summary>
internal sealed record FinishedJob(JobPlan Plan, IReadOnlyList<JobRoom> Rooms, IReadOnlyList<AcceptedRoom> Accepted, JobRequest Request, string RequestDigest)
{
    /// <summary>True when the job's own figures are in inches: by the common units, else the first room's.</summary>
    public bool Imperial =>
        Request.Common is { } common && common.Json.TryGetProperty("units", out var units) && units.ValueKind == System.Text.Json.JsonValueKind.String
            ? units.GetString() == "imperial"
            : Accepted[0].Request.Units == UnitsWord.Imperial;
}
