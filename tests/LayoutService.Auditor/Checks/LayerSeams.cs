using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>Seams of one layer of board lie 250 mm or more off those of the layer below beside them, or the plan says that they do not; there are as many layers as asked.</summary>
internal static class LayerSeams
{
    private const double Least = 250;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Json.Member("sheets") is not null && plan.Boards.Count > 0 && !plan.Boards.Select(b => b.Layer).Distinct().Order().SequenceEqual(Enumerable.Range(1, plan.Room.Sheets.Layers)))
        {
            report.Fault("layers.count", "sheets", $"{plan.Room.Sheets.Layers} layers asked");
        }

        foreach (var upper in plan.Seams.Where(s => s.Board.Layer > 1))
        {
            foreach (var lower in plan.Seams.Where(s => s.Board.Layer == upper.Board.Layer - 1 && s.Run == upper.Run))
            {
                if (Math.Abs(upper.At - lower.At) < Least - 0.1 && upper.Stretch.Overlaps(lower.Stretch, 1))
                {
                    report.FaultUnlessDeclared("layer-seam-offset", "layers.offset", upper.Board.Id, $"a seam {Math.Abs(upper.At - lower.At):F1} mm from one of {lower.Board.Id} below it");
                }
            }
        }
    }
}
