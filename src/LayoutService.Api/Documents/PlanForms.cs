using System.Text;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Writing;
using LayoutService.Drawing;
using LayoutService.Drawing.Paper;
using LayoutService.Engine;

namespace LayoutService.Api.Documents;

/// <summary>A finished plan as it is handed to a form: the plan itself and the answer of the contract, written when it is asked for.</summary>
internal sealed record FinishedPlan(CeilingPlan Plan, MappedPlan Asked, PlanRequest Request, string RequestDigest, Blocks Blocks)
{
    /// <summary>What the drawing shows.</summary>
    public Layers Layers { get; init; } = Layers.All;

    /// <summary>The answer with the blocks that the query asks for.</summary>
    public PlanAnswer Answer => PlanWriting.Of(Plan, Asked, RequestDigest, Blocks);

    /// <summary>What documents are written from.</summary>
    public OrderSheet Sheet => OrderSheet.Of(
        PlanWriting.Of(Plan, Asked, RequestDigest, new(Block.Takeoff | Block.CutPlan | Block.Strapping | Block.Sheets | Block.Bulkheads | Block.Checks)), Request.Document);
}

/// <summary>The forms of the answer to <c>POST /v1/plans</c>.</summary>
internal static class PlanForms
{
    private const string SvgType = "image/svg+xml";
    private const string PdfType = "application/pdf";

    public static readonly AnswerForms<FinishedPlan> Table = new(
        new("application/json", [], (plan, _) => JsonAnswer.Of(plan.Answer)),
        OrderForms.Csv<FinishedPlan>(OrderForms.OfRooms, plan => plan.Sheet),
        OrderForms.Ubl<FinishedPlan>("#/document", plan => plan.Sheet),
        OrderForms.Xlsx<FinishedPlan>(OrderForms.OfRooms, plan => plan.Sheet),
        new(SvgType, [], Drawn) { Names = [LayerQuery.Name] },
        new(PdfType, [], Printed));

    private static DocumentResult Printed(FinishedPlan plan, string? view)
    {
        var answer = PlanWriting.Of(plan.Plan, plan.Asked, plan.RequestDigest, Blocks.All);
        return new(
            JobSheet.Pdf(plan.Plan, plan.Asked.Survey, answer.Reference, JobSheetTables.BeforeSheets(answer), JobSheetTables.AfterSheets(answer)),
            PdfType,
            "job-sheet.pdf");
    }

    private static DocumentResult Drawn(FinishedPlan plan, string? view) => new(
        Encoding.UTF8.GetBytes(CeilingDrawing.Svg(plan.Plan, plan.Asked.Survey, plan.Layers)), SvgType, "ceiling.svg") { Policy = "default-src 'none'" };
}
