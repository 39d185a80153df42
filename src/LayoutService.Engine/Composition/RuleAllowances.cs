using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>What the takeoff adds and weighs by, with the values that the caller set by rule id in place of the house's.</summary>
internal static class RuleAllowances
{
    public static Allowances Of(Survey survey)
    {
        if (survey.RuleOverrides.Count == 0)
        {
            return Allowances.For(survey.Prices);
        }

        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        decimal Share(string rule) => book.Limit(rule).Value is var figure ? figure.Value * figure.Unit.Factor : 0m;
        return new Allowances
        {
            FastenerWaste = Share("waste-fasteners"),
            TapeWaste = Share("waste-tape"),
            CompoundWaste = Share("waste-compound"),
            AdhesiveWaste = Share("waste-adhesive"),
            OneByCulls = survey.Prices?.OneByCulls ?? Share("culls-boards"),
            TwoByCulls = survey.Prices?.TwoByCulls ?? Share("culls-dimension"),
            CompoundPoundsPerSquareFoot = book.Limit("compound-coverage").Value.In("lb/ft2"),
            ScrewsPerScab = 2 * (int)book.Limit("scab-screws").Value.Value,
            AdhesiveBead = book.Limit("scab-adhesive-bead").Value.Length,
            NailerFastenerSpacing = book.Limit("nailer-fastener-spacing").Value.Length,
            FastenersPerBlock = (int)book.Limit("fasteners-per-block").Value.Value,
            StrapScrewGrip = book.Limit("strap-screw-grip").Value.Length,
        };
    }

    public static MassTable Masses(Survey survey)
    {
        if (survey.RuleOverrides.Count == 0)
        {
            return MassTable.Published;
        }

        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        return MassTable.Published with
        {
            BoardScrewGramsPerInch = book.Limit("board-screw-mass").Value.In("kg") * 1000m,
            WoodScrewGramsPerInch = book.Limit("wood-screw-mass").Value.In("kg") * 1000m,
            TapeGramsPerMetre = book.Limit("tape-mass").Value.In("kg/m") * 1000m,
        };
    }
}
