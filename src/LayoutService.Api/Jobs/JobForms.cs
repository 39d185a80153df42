using LayoutService.Api.Documents;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Writing;

namespace LayoutService.Api.Jobs;

/// <summary>A finished job with the blocks of its rooms' plans that were asked for.</summary>
internal sealed record AskedJob(FinishedJob Job, Blocks? Include)
{
    public Answers.JobAnswer Answer =>
        JobWriting.Of(Job.Plan, Job.Rooms, Job.Accepted, Job.Request.Reference, Job.Imperial, Job.RequestDigest, Include);

    public OrderSheet Sheet => new()
    {
        Reference = Job.Request.Reference,
        LengthUnit = Job.Imperial ? "in" : "mm",
        MassUnit = Job.Imperial ? "lb" : "kg",
        Takeoff = TakeoffWriting.Of(Job.Plan.Takeoff, new(Job.Imperial)),
        CutPlan = CutPlanWriting.Of(Job.Plan.CutPlan, new(Job.Imperial)),
        Document = Job.Accepted[0].Request.Document,
    };
}

/// <summary>The forms of the answer to <c>POST /v1/jobs</c>.</summary>
internal static class JobForms
{
    public static readonly AnswerForms<AskedJob> Table = new(
        new("application/json", [], (job, _) => JsonAnswer.Of(job.Answer)),
        OrderForms.Csv<AskedJob>(OrderForms.OfJobs, job => job.Sheet),
        OrderForms.Ubl<AskedJob>("#/common/document", job => job.Sheet),
        OrderForms.Xlsx<AskedJob>(OrderForms.OfJobs, job => job.Sheet));
}
