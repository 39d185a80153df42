using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>Holds a planned ceiling against the rules that are in force for the request.</summary>
public static class CeilingChecks
{
    /// <summary>
    /// Every check that applies, in the order of the work: straps, board, headroom, plane, cables, access, fire, the floor's own span, fixtures. A rule that the
    /// plan breaks is a failed check with a remedy, never an exception.
    /// </summary>
    public static IReadOnlyList<Check> Of(RuleBook book, CheckFacts facts)
    {
        var bench = new CheckBench(book, facts);
        return
        [
            .. StrapChecks.Of(bench), .. StrapStrengthChecks.Of(bench), .. WithdrawalChecks.Of(bench), .. BoardChecks.Of(bench), .. HeadroomChecks.Of(bench), .. ServiceChecks.Of(bench), .. PlaneChecks.Of(bench), .. AccessChecks.Of(bench),
            .. FireChecks.Of(bench), .. FloorChecks.Of(bench),
            .. FixtureChecks.Of(bench),
        ];
    }
}
