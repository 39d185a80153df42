using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the cut plan.</summary>
internal static class CutPlanWriting
{
    public static CutPlanAnswer Of(CutPlan plan, AnswerInk ink) => new()
    {
        Stock = [.. plan.Sticks.Select(s => new StickAnswer
        {
            Id = s.Id,
            Size = s.Size.Length == 0 ? null : s.Size,
            Length = ink.Number(s.Length),
            LengthText = ink.Mark(s.Length),
            StockId = s.StockId,
            Cuts = [.. s.Cuts.Select(c => new CutAnswer(c.PieceId, ink.Number(c.Length), ink.Cut(c.Length)))],
            Offcut = ink.Number(s.Offcut),
            OffcutText = ink.Cut(s.Offcut),
        })],
        SheetStock = [.. plan.Sheets.Select(s => Sheet(s, ink))],
        Kerf = ink.Number(plan.Kerf),
        EndTrim = ink.Number(plan.EndTrim),
        Results = [.. plan.Results.Select(r => new CutResultAnswer(
            r.Use, r.Objective, Figures.Plain(r.Cost, 6), Figures.Plain(r.LowerBound, 6), Figures.Plain(r.Gap, 6), r.ProvedOptimal, r.Unit))],
    };

    private static CutSheetAnswer Sheet(CutSheet sheet, AnswerInk ink) => new()
    {
        Id = sheet.Id,
        Width = ink.Number(sheet.Width),
        Length = ink.Number(sheet.Length),
        StockId = sheet.StockId,
        Cuts = [.. sheet.Cuts.Select(c => new SheetCutAnswer
        {
            PieceId = c.PieceId,
            X = ink.Number(c.X),
            Y = ink.Number(c.Y),
            Width = ink.Number(c.Width),
            Length = ink.Number(c.Length),
            WidthText = ink.Cut(c.Width),
            LengthText = ink.Cut(c.Length),
            Turned = c.Turned,
        })],
        Offcuts = [.. sheet.Offcuts.Select(o => new OffcutAnswer(ink.Number(o.X), ink.Number(o.Y), ink.Number(o.Width), ink.Number(o.Length)))],
    };
}
