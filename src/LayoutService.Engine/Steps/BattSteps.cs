using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Steps;

/// <summary>Batts after the rows and the rough-in, then the straps that waited for them.</summary>
internal static class BattSteps
{
    public static void Write(StepList list, StrappingPlan strapping, InsulationPlan? insulation, TradeText trade)
    {
        if (insulation is null || insulation.Fills.Count == 0)
        {
            return;
        }

        list.Hold(
            Sentence.Of(
                "inspect-rough-in",
                "Stop before the batts hide it: wiring, plumbing, ducts and fireblocking above the ceiling are finished and, where a permit asks for "
                + "it, inspected. Mark every light that is not rated for insulation contact, and everything that gets hot."),
            insulation.Fills.Select(fill => fill.Bay).Distinct().Select(bay => new Touch(TouchKinds.Bay, bay)));
        foreach (var bay in insulation.Fills.GroupBy(fill => fill.Bay))
        {
            Fit(list, bay.Key, [.. bay], trade);
        }

        foreach (var row in strapping.Rows.Where(row => row.Pieces.Any(piece => piece.FastenAfter.Count > 0)))
        {
            Fasten(list, row);
        }
    }

    /// <summary>What a row's first fastening leaves undone; empty for most rows.</summary>
    public static string Loose(StrapRow row)
    {
        var supports = Supports(row);
        return supports.Count == 0 ? string.Empty : $" Leave {StepList.Names(supports)} for after the batts; a piece held nowhere else is pinned there with one screw.";
    }

    private static void Fit(StepList list, string bay, List<BattFill> fills, TradeText trade)
    {
        var said = string.Join(", ", fills.Select(fill => Said(fill, trade)));
        var over = fills.Any(fill => fill.Reasons.Any(reason => reason.Code == "over_service"))
            ? " What lies over a service is pushed against the floor and held there."
            : string.Empty;
        list.Add(
            Sentence.Of(
                "fit-batts",
                $"Bay {bay}: fit {said}. Push each up {(trade.Direct ? string.Empty : "between the straps ")}until it lies flat; do not press it under metal, and keep clear of what gets hot.{over}",
                ("bay", bay),
                ("fills", said)),
            fills.Select(fill => new Touch(TouchKinds.Fill, fill.Id)).Prepend(new Touch(TouchKinds.Bay, bay)));
    }

    private static string Said(BattFill fill, TradeText trade)
    {
        var split = fill.Split ? "split, " : string.Empty;
        return $"{fill.Id} ({split}{fill.BattId} cut {trade.Cut(fill.Width)} wide, for {trade.Cut(fill.Length)} of bay)";
    }

    private static void Fasten(StepList list, StrapRow row)
    {
        var pieces = row.Pieces.Where(piece => piece.FastenAfter.Count > 0).ToList();
        var supports = Supports(row);
        list.Add(
            Sentence.Of(
                "fasten-after",
                $"Row {row.Id}: the batts above it lie in place; now fasten it at {StepList.Names(supports)}, two fasteners each, four where two ends meet.",
                ("row", row.Id),
                ("supports", StepList.Names(supports))),
            pieces.Select(piece => new Touch(TouchKinds.Piece, piece.Id)).Prepend(new Touch(TouchKinds.Row, row.Id)));
    }

    private static List<string> Supports(StrapRow row) =>
        [.. row.Pieces.SelectMany(piece => piece.FastenAfter).Select(after => after.SupportId).Distinct()];
}
