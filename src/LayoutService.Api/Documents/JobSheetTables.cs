using System.Globalization;
using LayoutService.Api.Plans.Answers;
using LayoutService.Drawing.Paper;

namespace LayoutService.Api.Documents;

/// <summary>The tables of the job sheet, in the words and figures of the answer; nothing is counted or rounded again.</summary>
internal static class JobSheetTables
{
    /// <summary>What is read before the sheets are cut.</summary>
    public static IReadOnlyList<PaperTable> BeforeSheets(PlanAnswer answer) =>
    [
        new(
            "Row marks: near edges, from the ringed corner",
            ["Row", "Near edge", "Strap on", "Centre", "From last", "Why"],
            [0.9, 2.9, 1.2, 2.9, 2.2, 3.4],
            [.. answer.Strapping!.Rows.Select(row => new[]
            {
                row.Id, row.Marks.FirstOrDefault()?.NearEdgeText ?? "", row.Marks.Count == 0 ? "" : $"{row.Marks[0].Side} side", row.AtText,
                row.SpacingBeforeText ?? "", string.Join(' ', row.Reasons.Select(Why)),
            })]),
        new(
            "Lengths to cut",
            ["Length", "Size", "Bought", "Pieces in order", "Left over"],
            [1, 1.6, 2.2, 6, 2.2],
            [.. answer.CutPlan!.Stock.Select(stick => new[]
            {
                stick.Id, stick.Size ?? "", stick.LengthText, string.Join("   |   ", stick.Cuts.Select(cut => $"{cut.PieceId}: {cut.LengthText}")), stick.OffcutText,
            })]),
    ];

    /// <summary>What is read after that.</summary>
    public static IReadOnlyList<PaperTable> AfterSheets(PlanAnswer answer) =>
    [
        .. (answer.Bulkheads ?? []).Select(bulkhead => new PaperTable(
            $"Bulkhead {bulkhead.Id}: {bulkhead.DropText} below the ceiling",
            ["Role", "Size", "Cut length", "Members"],
            [1.4, 1, 2, 6],
            [.. bulkhead.Members.GroupBy(member => (member.Role, member.Size, member.CutLengthText)).Select(alike => new[]
            {
                alike.Key.Role, alike.Key.Size, alike.Key.CutLengthText, string.Join(", ", alike.Select(member => member.Id)),
            })])),
        new(
            "Batts",
            ["Fill", "Bay", "Batt", "Thickness", "Width to cut", "Length to fill"],
            [1, 1, 2, 2, 2.4, 2.4],
            [.. (answer.Insulation?.Fills ?? []).Select(fill => new[]
            {
                fill.Id, fill.Bay, fill.Split ? $"{fill.Batt}, split" : fill.Batt, fill.ThicknessText, fill.WidthText, fill.LengthText,
            })]),
        new(
            "Order of work",
            ["Step", "What"],
            [1.4, 12],
            [.. answer.Steps!.Select(step => new[] { step.Id, step.Hold == true ? $"HOLD: {step.Text}" : step.Text })]) { Ticked = true },
        new(
            "To order",
            ["What", "Needed", "To buy", "Unit", "Packs"],
            [5, 1.6, 1.6, 1.6, 3],
            [.. answer.Takeoff!.Lines.Select(line => new[]
            {
                line.Description, Figure(line.Counted), Figure(line.Quantity), line.Unit,
                string.Join(", ", line.Packs.Select(pack => $"{Figure(pack.Count)} of {Figure(pack.PackSize)}")),
            })]),
        new(
            "Cautions",
            ["What to look out for", "Where", "Source"],
            [7, 2, 4],
            [.. answer.Cautions!.Select(caution => new[] { caution.Text, string.Join(", ", caution.Where), Source(caution.Source) })]),
        new(
            "Checks",
            ["Rule", "Outcome", "Plan has", "Rule asks", "Source"],
            [3.4, 1.8, 1.8, 2.6, 4.4],
            [.. answer.Checks!.Select(check => new[]
            {
                check.Rule, check.Status, Measured(check.Value, check.Unit),
                check.Limit is null ? "" : $"{check.Comparison} {Measured(check.Limit, check.Unit)}", Source(check.Source),
            })]),
    ];

    private static string Why(ReasonAnswer reason) =>
        reason.Of.Count == 0 ? reason.Text ?? reason.Kind : $"{reason.Text ?? reason.Kind} ({string.Join(", ", reason.Of)})";

    private static string Measured(decimal? value, string? unit) => value is { } known ? $"{Figure(known)} {unit}" : "";

    private static string Source(SourceAnswer source) =>
        $"{string.Join(", ", new[] { source.Document, source.Edition, source.Clause }.Where(part => !string.IsNullOrEmpty(part)))} ({source.Basis})";

    private static string Figure(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}
