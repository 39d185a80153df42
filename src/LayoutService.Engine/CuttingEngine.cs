using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine;

/// <summary>
/// The cutting engine alone: wanted pieces and stock in, a cut plan with its bound out, for lengths, sheets, or both.
/// Pure and deterministic; how long it searches is counted in steps.
/// </summary>
public static class CuttingEngine
{
    /// <summary>The cut plan, or why there is none, under a meter of its work.</summary>
    public static CutOutcome Cut(CutOrder order, WorkMeter meter) =>
        WorkMeter.Run(meter, () => Cut(order), () => new CutOutcome.NotPossible([Findings.TooMuchWork()]));

    public static CutOutcome Cut(CutOrder order)
    {
        var (sticks, noSticks) = order.Sticks is { } lengths ? new StickOrderCut(order, lengths).Of() : (null, []);
        var (sheets, noSheets) = order.Sheets is { } boards ? new SheetOrderCut(order, boards).Of() : (null, []);
        if (noSticks.Count + noSheets.Count > 0)
        {
            return new CutOutcome.NotPossible([.. noSticks, .. noSheets]);
        }

        return new CutOutcome.Made(new CutPlan(
            sticks?.Sticks ?? [],
            sheets?.Sheets ?? [],
            order.Sticks?.Kerf ?? default,
            order.Sticks?.EndTrim ?? default,
            [.. new[] { sticks?.Result, sheets?.Result }.OfType<CutResult>()]));
    }
}

/// <summary>Either a cut plan, or the reasons why there is none.</summary>
public abstract record CutOutcome
{
    private CutOutcome()
    {
    }

    public sealed record Made(CutPlan Plan) : CutOutcome;

    public sealed record NotPossible(IReadOnlyList<Finding> Findings) : CutOutcome;
}
