using System.Globalization;
using LayoutService.Api.CutPlans.Requests;

namespace LayoutService.Api.CutPlans;

/// <summary>Ids of the things of a request: the caller's, or the number in the list.</summary>
internal static class CutIds
{
    public static string Of(WantedStickRequest piece, int index) => piece.Id ?? Numbered("piece", index);

    public static string Of(StickOfferRequest stock, int index) => stock.Id ?? Numbered("stick", index);

    public static string Of(WantedSheetRequest piece, int index) => piece.Id ?? Numbered("panel", index);

    public static string Of(SheetOfferRequest stock, int index) => stock.Id ?? Numbered("sheet", index);

    private static string Numbered(string name, int index) => string.Create(CultureInfo.InvariantCulture, $"{name}-{index + 1}");
}
