using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Rooms;

/// <summary>Rooms whose money is added up or compared are priced in one currency and taxed alike.</summary>
internal static class PurseRules
{
    public static IReadOnlyList<Fault> FaultsOf(IReadOnlyList<AcceptedRoom> rooms)
    {
        var faults = new List<Fault>();
        var first = rooms.FirstOrDefault(room => room.Request.Prices?.Currency is not null);
        foreach (var room in rooms)
        {
            var prices = room.Request.Prices;
            if (prices?.Currency is { } currency && currency != first!.Request.Prices!.Currency)
            {
                faults.Add(Fault.At(
                    room.Own.Pointer + "/prices/currency", "currency_differs",
                    $"Amounts in {currency} and {first.Request.Prices.Currency} cannot be added or compared; use one currency.",
                    ("value", currency), ("other", first.Request.Prices.Currency!)));
            }
            else if (prices?.Currency is not null && !Same(prices.Tax ?? [], first!.Request.Prices!.Tax ?? []))
            {
                faults.Add(Fault.At(room.Own.Pointer + "/prices/tax", "tax_differs", "Amounts that are taxed in different ways cannot be added or compared; use the same taxes."));
            }
        }

        return faults;
    }

    private static bool Same(IReadOnlyList<TaxRequest> a, IReadOnlyList<TaxRequest> b) => a.SequenceEqual(b);
}
