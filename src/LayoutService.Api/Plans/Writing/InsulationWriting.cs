using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the batts.</summary>
internal static class InsulationWriting
{
    public static InsulationAnswer Of(InsulationPlan plan, AnswerInk ink) => new()
    {
        Purpose = Words.Text(plan.Purpose),
        Barriers = plan.Barriers is { } barriers ? AnswerInk.Say(barriers) : null,
        Fills = [.. plan.Fills.Select(f => Fill(f, ink))],
        AreaR = Resistance(plan.AreaRsi, ink),
        FramingFraction = Figures.Plain(plan.FramingFraction, 6),
        Area = Figures.Area(plan.AreaSquareMetres, ink.Imperial),
        Uncovered = [.. plan.Uncovered.Select(u => new UncoveredAnswer(
            u.Bay, ink.Ring(u.Outline), Figures.Area(u.AreaSquareMetres, ink.Imperial), AnswerInk.Why(u.Reasons)))],
    };

    private static FillAnswer Fill(BattFill fill, AnswerInk ink) => new()
    {
        Id = fill.Id,
        Bay = fill.Bay,
        Outline = ink.Ring(fill.Outline),
        Area = Figures.Area(fill.AreaSquareMetres, ink.Imperial),
        DepthAvailable = ink.Number(fill.DepthAvailable),
        DepthAvailableText = ink.Cut(fill.DepthAvailable),
        Top = ink.Number(fill.Top),
        Bottom = ink.Number(fill.Bottom),
        Thickness = ink.Number(fill.Thickness),
        ThicknessText = ink.Mark(fill.Thickness),
        Batt = fill.BattId,
        Split = fill.Split,
        Width = ink.Number(fill.Width),
        WidthText = ink.Cut(fill.Width),
        Length = ink.Number(fill.Length),
        LengthText = ink.Cut(fill.Length),
        R = Resistance(fill.Rsi, ink),
        Mass = ink.Mass(fill.Kilograms),
        MassPerArea = Figures.Plain(Figure.Of(fill.KilogramsPerSquareMetre, FigureUnit.Parse("kg/m2")).In(ink.Imperial ? "lb/ft2" : "kg/m2"), 6),
        Reasons = AnswerInk.Why(fill.Reasons),
    };

    private static decimal Resistance(decimal rsi, AnswerInk ink) =>
        Figures.Plain(Figure.Of(rsi, FigureUnit.Parse("RSI")).In(ink.Imperial ? "R" : "RSI"), 3);
}
