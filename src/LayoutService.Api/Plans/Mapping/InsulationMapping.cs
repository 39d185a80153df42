using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Mapping;

internal static class InsulationMapping
{
    private const decimal RsiPerR = 0.176110m;

    /// <summary>The wish for batts; null where none are wanted.</summary>
    public static InsulationWish? Of(PlanRequest request, Assumptions assumed)
    {
        if (request.Insulation is not { } wish || PurposeOf(wish, assumed) is not { } purpose)
        {
            return null;
        }

        var bays = assumed.Word("#/insulation/bays", "Which bays are filled", wish.Bays, BaysWord.All);
        return new InsulationWish
        {
            Purpose = purpose,
            Batts = wish.Batts is { Count: > 0 } batts
                ? [.. batts.Select((batt, i) => Of(batt, i, assumed))]
                : CatalogueBatts.Of(purpose, assumed),
            Region = bays == BaysWord.Region ? RoomMapping.OpenRing(wish.Region!, assumed.Imperial) : null,
            JoistDepths = [.. request.JoistFields!.Select((field, i) => assumed.Length(
                string.Create(CultureInfo.InvariantCulture, $"#/joistFields/{i}/depth"), "The depth of the joists", field.Depth, 9.25m, 235))],
        };
    }

    /// <summary>Id of a batt: the caller's, or its number in the list.</summary>
    public static string IdOf(BattRequest batt, int index) =>
        batt.Id ?? string.Create(CultureInfo.InvariantCulture, $"batt-{index + 1}");

    private static InsulationPurpose? PurposeOf(InsulationRequest wish, Assumptions assumed)
    {
        if (wish is { Purpose: null, Batts: null or { Count: 0 }, Bays: null, Region: null })
        {
            return null;
        }

        return assumed.Word("#/insulation/purpose", "What the batts are for", wish.Purpose, InsulationWord.Sound) switch
        {
            InsulationWord.Sound => InsulationPurpose.Sound,
            InsulationWord.Thermal => InsulationPurpose.Thermal,
            _ => null,
        };
    }

    private static Batt Of(BattRequest batt, int index, Assumptions assumed)
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"#/insulation/batts/{index}");
        var thickness = batt.Thickness!.Value.In(assumed.Imperial);
        if (batt.Splittable is null)
        {
            assumed.Note($"{at}/splittable", "false", "Whether the batt can be split was not given; it is taken that it cannot.");
        }

        return new Batt(
            IdOf(batt, index),
            thickness,
            batt.Width!.Value.In(assumed.Imperial),
            batt.Length!.Value.In(assumed.Imperial),
            batt.R is { } given ? given * (assumed.Imperial ? RsiPerR : 1m) : Resistance(thickness, at, assumed),
            batt.Splittable ?? false,
            batt.PackSize ?? 1,
            batt.PackPrice);
    }

    // in proportion to the thickness, by the rule batt-resistance-default
    private static decimal Resistance(Length thickness, string at, Assumptions assumed)
    {
        var figure = PublishedTables.Current.Rules.SelectMany(t => t.Rows).First(r => r.Rule == "batt-resistance-default").Value;
        var rsi = decimal.Round(figure.In("RSI") * thickness.Millimetres / 100m, 3);
        var said = assumed.Imperial
            ? string.Create(CultureInfo.InvariantCulture, $"R-{decimal.Round(rsi / RsiPerR, 1)}")
            : string.Create(CultureInfo.InvariantCulture, $"RSI {rsi}");
        assumed.Note($"{at}/r", said, $"The resistance of the batt was not given; {said} is taken for its thickness.");
        return rsi;
    }
}
