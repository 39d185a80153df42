using LayoutService.Api.Comparisons.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Writing;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Comparisons;

/// <summary>Writes the table of a comparison, and who is best by each figure.</summary>
internal static class ComparisonWriting
{
    private static readonly (string Name, bool More, Func<VariantFiguresAnswer, decimal?> Of)[] Compared =
    [
        ("cost", false, f => f.Cost), ("rows", false, f => f.Rows), ("strapPieces", false, f => f.StrapPieces), ("boardPieces", false, f => f.BoardPieces),
        ("strapJoints", false, f => f.StrapJoints), ("lengthsToBuy", false, f => f.LengthsToBuy), ("sheetsToBuy", false, f => f.SheetsToBuy),
        ("buttJointLength", false, f => f.ButtJointLength), ("jointLength", false, f => f.JointLength), ("lumberWaste", false, f => f.LumberWaste),
        ("sheetWaste", false, f => f.SheetWaste), ("mass", false, f => f.Mass), ("heaviestLift", false, f => f.HeaviestLift),
        ("headroom", true, f => f.Headroom), ("checksFailed", false, f => f.ChecksFailed),
    ];

    public static VariantFiguresAnswer Figures(CeilingPlan plan, AnswerInk ink)
    {
        var summary = plan.Summary;
        var joints = plan.Sheets.ButtJointLength + plan.Sheets.TaperedJointLength + plan.Sheets.CutEdgeJointLength;
        var totals = TakeoffWriting.Totals(plan.Takeoff.Totals, ink);
        return new()
        {
            Cost = totals.Amount,
            Currency = totals.Amount is null ? null : totals.Currency,
            Unpriced = totals.Unpriced.Count,
            Rows = summary.Rows,
            StrapPieces = summary.StrapPieces,
            BoardPieces = plan.Sheets.Pieces.Count,
            StrapJoints = plan.Strapping.Rows.Sum(row => row.Pieces.Count(piece => piece.EndJoint is Engine.Strapping.JointKind.Joist or Engine.Strapping.JointKind.Scab)),
            LengthsToBuy = summary.LengthsToBuy,
            SheetsToBuy = summary.SheetsToBuy,
            ButtJointLength = ink.Number(summary.ButtJointLength),
            JointLength = ink.Number(joints),
            JointLengthText = ink.Mark(joints),
            LumberWaste = Waste(plan.CutPlan.Sticks.Sum(s => (decimal)s.Length.Units), plan.CutPlan.Sticks.Sum(s => s.Cuts.Sum(c => (decimal)c.Length.Units))),
            SheetWaste = Waste(
                plan.CutPlan.Sheets.Sum(s => (decimal)s.Length.Units * s.Width.Units),
                plan.CutPlan.Sheets.Sum(s => s.Cuts.Sum(c => (decimal)c.Length.Units * c.Width.Units))),
            Mass = ink.Mass(summary.MassKilograms),
            HeaviestLift = ink.Mass(summary.HeaviestLiftKilograms),
            Headroom = ink.Number(summary.LowestUnderside),
            HeadroomText = ink.Mark(summary.LowestUnderside),
            ChecksFailed = summary.ChecksFailed,
        };
    }

    public static IReadOnlyList<BestAnswer> Best(IReadOnlyList<VariantAnswer> variants)
    {
        var found = new List<BestAnswer>();
        foreach (var (name, more, of) in Compared)
        {
            var values = variants.Where(v => v.Figures is not null).Select(v => (v.Name, Value: of(v.Figures!))).Where(v => v.Value is not null).ToList();
            if (values.Count > 0)
            {
                var best = more ? values.Max(v => v.Value!.Value) : values.Min(v => v.Value!.Value);
                found.Add(new(name, more ? "more" : "less", best, [.. values.Where(v => v.Value == best).Select(v => v.Name)]));
            }
        }

        return found;
    }

    private static decimal Waste(decimal bought, decimal used) => bought == 0 ? 0 : Plans.Mapping.Figures.Plain((bought - used) / bought, 6);
}
