using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

internal static class BulkheadMapping
{
    private static readonly decimal[] StockFeet = [8, 10, 12];
    private static readonly decimal[] StockMillimetres = [2400, 3000, 3600];

    public static IReadOnlyList<BulkheadWish> Of(PlanRequest request, Assumptions assumed) =>
        [.. (request.Bulkheads ?? []).Select((b, i) => Of(b, i, assumed))];

    /// <summary>Id of a bulkhead: the caller's, or its number in the list.</summary>
    public static string IdOf(BulkheadRequest bulkhead, int index) =>
        bulkhead.Id ?? string.Create(CultureInfo.InvariantCulture, $"bulkhead-{index + 1}");

    /// <summary>A sound bulkhead.</summary>
    public static BulkheadWish Of(BulkheadRequest bulkhead, int index, Assumptions assumed)
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"#/bulkheads/{index}");
        if (bulkhead.Drop is null)
        {
            assumed.Note($"{at}/drop", "from what it hides", "The drop was not given; it clears the lowest of what is hidden.");
        }

        return new BulkheadWish
        {
            Id = IdOf(bulkhead, index),
            Edges = [.. (bulkhead.Edges ?? []).Distinct().Order()],
            Hides = bulkhead.Hides ?? [],
            Outline = bulkhead.Outline is { } ring ? RoomMapping.OpenRing(ring, assumed.Imperial) : null,
            Width = bulkhead.Width?.In(assumed.Imperial),
            Drop = bulkhead.Drop?.In(assumed.Imperial),
            Frame = FrameOf(bulkhead.Frame, $"{at}/frame", assumed),
            BoardedAbove = bulkhead.BoardedAbove ?? false,
        };
    }

    private static FrameWish FrameOf(FrameRequest? frame, string at, Assumptions assumed)
    {
        // 38 × 38 mm at 400 mm: NBC Table 9.23.10.1, interior studs that carry no load
        var size = assumed.Word($"{at}/size", "The wood of the bulkhead's frame", frame?.Size, StrapSizeWord.TwoByTwo);
        var (thickness, face) = StrapSizes.Of(size, assumed.Imperial);
        var name = Words.Text(size);
        return new FrameWish(name, assumed.Default(thickness, thickness), assumed.Default(face, face), StockOf(frame?.Stock, name, $"{at}/stock", assumed));
    }

    private static IReadOnlyList<StickStock> StockOf(IReadOnlyList<StickStockRequest>? stock, string name, string at, Assumptions assumed)
    {
        if (stock is not null)
        {
            return [.. stock.Select((s, i) => new StickStock(
                s.Id ?? string.Create(CultureInfo.InvariantCulture, $"frame-{i + 1}"), s.Length!.Value.In(assumed.Imperial), s.Sku, s.PackSize ?? 1, s.PackPrice, s.Quantity))];
        }

        var said = assumed.Imperial ? "8, 10, 12 ft" : "2400, 3000, 3600 mm";
        assumed.Note(at, said, $"The lengths that the bulkhead's frame is cut from were not given; {said} are taken.");
        return assumed.Imperial
            ? [.. StockFeet.Select(feet => new StickStock($"frame-{name}-{feet}ft", Length.FromInches(12 * feet)))]
            : [.. StockMillimetres.Select(mm => new StickStock($"frame-{name}-{mm}", Length.FromMillimetres(mm)))];
    }
}
