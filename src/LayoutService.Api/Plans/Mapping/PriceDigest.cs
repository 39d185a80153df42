using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>Culls, taxes and labour in the digest; what is not given is not written.</summary>
internal static class PriceDigest
{
    public static void Add(PriceList? prices, Action<string, object?> add)
    {
        Given("oneByCulls", prices?.OneByCulls, add);
        Given("twoByCulls", prices?.TwoByCulls, add);
        foreach (var tax in prices?.Taxes ?? [])
        {
            add("tax", tax.Name);
            add("rate", Figures.Plain(tax.Rate, 12));
            add("onLabour", tax.OnLabour);
        }

        if (prices?.Labour is { } labour)
        {
            add("hourPrice", Figures.Plain(labour.HourPrice, 12));
            Given("perStrapPiece", labour.PerStrapPiece, add);
            Given("perBoardPiece", labour.PerBoardPiece, add);
            Given("perJointLength", labour.PerJointLength, add);
        }
    }

    private static void Given(string name, decimal? value, Action<string, object?> add)
    {
        if (value is { } known)
        {
            add(name, Figures.Plain(known, 12));
        }
    }
}
