using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.CutPlans;

/// <summary>What is cut, and the defaults that went into it.</summary>
internal sealed record MappedOrder(CutOrder Order, IReadOnlyList<AssumedAnswer> Assumed, string? Reference);

/// <summary>Turns a valid request into an order.</summary>
internal static class CutOrderMapping
{
    public static MappedOrder Of(CutPlanRequest request)
    {
        var assumed = new Assumptions(request.Units == UnitsWord.Imperial);
        var effort = assumed.Word("#/effort", "The effort", request.Effort, EffortWord.Quick);
        var order = new CutOrder
        {
            Units = assumed.Imperial ? UnitSystem.Imperial : UnitSystem.Metric,
            Effort = effort == EffortWord.Quick ? Effort.Quick : Effort.Thorough,
            Currency = request.Currency ?? "",
            Sticks = request.Sticks is null ? null : SticksOf(request, request.Sticks, assumed),
            Sheets = request.Sheets is null ? null : SheetsOf(request.Sheets, assumed),
        };
        return new(order, assumed.Made, request.Reference);
    }

    private static StickOrder SticksOf(CutPlanRequest request, StickCutsRequest sticks, Assumptions assumed) => new()
    {
        Size = sticks.Size ?? "",
        Kerf = assumed.Length("#/kerf", "The saw's kerf", request.Kerf, 0.125m, 3),
        EndTrim = assumed.Length("#/endTrim", "The trim of each length", request.EndTrim, 0, 0),
        Wanted = [.. sticks.Wanted!.Select((w, i) => new WantedStick(CutIds.Of(w, i), w.Length!.Value.In(assumed.Imperial), w.Count ?? 1))],
        Stock = [.. sticks.Stock!.Select((s, i) => new StickStock(
            CutIds.Of(s, i), s.Length!.Value.In(assumed.Imperial), s.Sku, s.PackSize ?? 1, s.PackPrice, s.Quantity))],
    };

    private static SheetOrder SheetsOf(SheetCutsRequest sheets, Assumptions assumed) => new()
    {
        Kerf = assumed.Length("#/sheets/kerf", "The kerf of cuts through sheets", sheets.Kerf, 0, 0),
        EndTrim = assumed.Length("#/sheets/endTrim", "The trim of the ends of sheets", sheets.EndTrim, 0, 0),
        EdgeTrim = assumed.Length("#/sheets/edgeTrim", "The trim of the edges of sheets", sheets.EdgeTrim, 0, 0),
        Wanted = [.. sheets.Wanted!.Select((w, i) => new WantedPanel(
            CutIds.Of(w, i), w.Width!.Value.In(assumed.Imperial), w.Length!.Value.In(assumed.Imperial), w.Count ?? 1, EdgesOf(w.FactoryEdges), w.MayTurn ?? false))],
        Stock = [.. sheets.Stock!.Select((s, i) => new SheetStock(
            CutIds.Of(s, i), s.Width!.Value.In(assumed.Imperial), s.Length!.Value.In(assumed.Imperial), s.Sku, s.PackSize ?? 1, s.PackPrice, s.Quantity))],
    };

    private static int EdgesOf(FactoryEdgesWord? word) => word switch
    {
        FactoryEdgesWord.Both => 2,
        FactoryEdgesWord.One => 1,
        _ => 0,
    };
}
