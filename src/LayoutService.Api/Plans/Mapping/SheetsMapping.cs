using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

internal static class SheetsMapping
{
    private const decimal MetresPerFoot = 0.3048m;
    private static readonly decimal[] StockFeet = [8, 10, 12];
    private static readonly decimal[] StockMillimetres = [2400, 3000, 3600];

    public static SheetWish Of(SheetsRequest wish, Assumptions assumed, decimal? staggerRows = null)
    {
        var metres = assumed.Imperial ? MetresPerFoot : 1m;
        if (wish.MinStagger is null)
        {
            var said = staggerRows is { } rows ? Figures.Plain(rows, 0).ToString(CultureInfo.InvariantCulture) : "two";
            assumed.Note("#/sheets/minStagger", said + " row spaces", $"The least stagger of butt joints was not given; {said} row spaces are taken.");
        }

        return new SheetWish
        {
            Type = Words.Text(assumed.Word("#/sheets/type", "The kind of board", wish.Type, BoardWord.Regular)),
            Thickness = assumed.Length("#/sheets/thickness", "The thickness of the board", wish.Thickness, 0.5m, 12.7m),
            Layers = wish.Layers ?? 1,
            Textured = assumed.Word("#/sheets/finish", "The finish of the ceiling", wish.Finish, BoardFinishWord.Painted) == BoardFinishWord.Textured,
            FireRating = wish.FireRating switch
            {
                FireRatingWord.FortyFiveMinutes => "45 min",
                FireRatingWord.OneHour => "1 h",
                FireRatingWord.OneAndAHalfHours => "1.5 h",
                _ => null,
            },
            Stock = StockOf(wish.Stock, assumed),
            CutAllowance = assumed.Length("#/sheets/cutAllowance", "The cut allowance at walls", wish.CutAllowance, 0.125m, 3, "board-short"),
            MinStagger = wish.MinStagger?.In(assumed.Imperial),
            StaggerRows = (int)(staggerRows ?? 2),
            ButtCostPerMetre = (wish.JointCost?.Butt ?? 0) / metres,
            TaperedCostPerMetre = (wish.JointCost?.Tapered ?? 0) / metres,
        };
    }

    private static IReadOnlyList<SheetStock> StockOf(IReadOnlyList<SheetStockRequest>? stock, Assumptions assumed)
    {
        if (stock is not null)
        {
            return [.. stock.Select((s, i) => new SheetStock(
                IdOf(s, i), s.Width!.Value.In(assumed.Imperial), s.Length!.Value.In(assumed.Imperial), s.Sku, s.PackSize ?? 1, s.PackPrice, s.Quantity))];
        }

        var said = assumed.Imperial ? "48 in by 8, 10, 12 ft" : "1200 by 2400, 3000, 3600 mm";
        assumed.Note("#/sheets/stock", said, $"The sheets that can be bought were not given; {said} are taken.");
        return assumed.Imperial
            ? [.. StockFeet.Select(feet => new SheetStock($"sheet-4x{feet}", Length.FromInches(48), Length.FromInches(12 * feet)))]
            : [.. StockMillimetres.Select(mm => new SheetStock($"sheet-1200x{mm}", Length.FromMillimetres(1200), Length.FromMillimetres(mm)))];
    }

    /// <summary>Id of a stock: the caller's, or its number in the list.</summary>
    public static string IdOf(SheetStockRequest stock, int index) =>
        stock.Id ?? string.Create(CultureInfo.InvariantCulture, $"sheet-{index + 1}");
}
