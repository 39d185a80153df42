using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>What reads a rule's value.</summary>
public enum RuleUse
{
    /// <summary>A plan is held against it, or a check or caution is worked out with it.</summary>
    Check,

    /// <summary>It is planned or counted by where the request does not say.</summary>
    Default,

    /// <summary>The plan is laid out by it, at the value shown and no other.</summary>
    Plan,

    /// <summary>Served for reference; nothing in a plan reads it.</summary>
    Reference,
}

/// <summary>
/// For each rule: what reads it, and whether a caller may set it. A value that nothing would read is refused at the door, never
/// ignored; a value that the search for rows and sheets is built on says why it is fixed.
/// </summary>
public static class RuleUses
{
    private static readonly Dictionary<string, PlannedRule> Planned = new(StringComparer.Ordinal)
    {
        ["strap-thickness-default"] = new(6, 100, "strapping.size"),
        ["strap-face-default"] = new(12, 150, "strapping.size"),
        ["strap-spacing-default"] = new(50, 1200, "strapping.maxSpacing"),
        ["end-clearance"] = new(0, 25, "strapping.endClearance"),
        ["min-piece"] = new(25, 6000, "strapping.minPiece"),
        ["kerf"] = new(0, 12, "strapping.kerf"),
        ["end-trim"] = new(0, 150, "strapping.endTrim"),
        ["board-short"] = new(0, 25, "sheets.cutAllowance"),
        ["butt-stagger-rows"] = new(0, 10, "sheets.minStagger"),
        ["strap-screw-grip"] = new(0.25m, 3, "takeoff, checks"),
        ["nailer-fastener-spacing"] = new(50, 2000, "takeoff"),
        ["fasteners-per-block"] = new(1, 20, "takeoff"),
        ["scab-screws"] = new(1, 20, "takeoff"),
        ["scab-adhesive-bead"] = new(1, 30, "takeoff"),
        ["culls-boards"] = new(0, 90, "takeoff"),
        ["culls-dimension"] = new(0, 90, "takeoff"),
        ["waste-fasteners"] = new(0, 100, "takeoff"),
        ["waste-tape"] = new(0, 100, "takeoff"),
        ["waste-compound"] = new(0, 100, "takeoff"),
        ["waste-adhesive"] = new(0, 100, "takeoff"),
        ["compound-coverage"] = new(0.001m, 5, "takeoff"),
        ["board-screw-mass"] = new(0.0001m, 0.1m, "takeoff"),
        ["wood-screw-mass"] = new(0.0001m, 0.1m, "takeoff"),
        ["tape-mass"] = new(0.0001m, 1, "takeoff"),
        ["batt-squeeze-most"] = new(0, 50, "insulation"),
        ["batt-friction"] = new(0, 50, "insulation"),
        ["batt-strip-least"] = new(10, 600, "insulation"),
        ["batt-fold-depth"] = new(50, 400, "insulation"),
        ["batt-pass-gap"] = new(10, 200, "insulation"),
        ["i-joist-flange"] = new(10, 100, "insulation"),
        ["softwood-resistance"] = new(0.1m, 5, "insulation"),
        ["bay-air-resistance"] = new(0.01m, 1, "insulation"),
        ["batt-resistance-default"] = new(0.5m, 10, "insulation"),
        ["survey-tolerance"] = new(0, 100, "checks"),
        ["packing-from"] = new(0.03125m, 1, "strapping.shims"),
        ["packing-most"] = new(3, 25, "strapping.shims"),
    };

    private const string Search = "The search for rows and sheets is built on this distance and proved with it; it cannot be set.";
    private const string Bearing = "How pieces bear and are joined is laid out, drawn and counted by this figure; it cannot be set.";
    private const string ByMember = "The request says this for each case by a member of its own.";
    private const string ByStage = "It is laid out by this figure; it cannot be set.";

    private static readonly Dictionary<string, string> Fixed = new(StringComparer.Ordinal)
    {
        ["row-clear-gap"] = Search, ["wall-row-reach"] = Search, ["rip-preferred"] = Search, ["rip-least"] = Search, ["board-piece-least"] = Search,
        ["board-beside-opening"] = Search, ["butt-edge-wood"] = Search, ["butt-from-corner"] = Search, ["seam-from-gap"] = Search, ["support-widest"] = Search,
        ["row-joint-from-butt"] = Bearing, ["joint-bearing"] = Bearing, ["supports-least"] = Bearing, ["support-spread"] = Bearing,
        ["overhang-most"] = Bearing, ["doubled-joist-gap"] = Bearing, ["scab-length"] = Bearing, ["fasteners-per-joint"] = Bearing, ["culls-least"] = Bearing,
        ["board-screw-spacing-default"] = Bearing, ["board-screw-half-inch"] = Bearing, ["board-screw-five-eighths"] = Bearing,
        ["board-screw-three-eighths"] = Bearing,
        ["hole-to-strap"] = ByMember, ["hole-to-seam"] = ByMember, ["light-from-wall"] = ByStage, ["bulkhead-clearance"] = ByMember,
        ["service-covered"] = ByStage, ["grid-illuminance"] = ByMember, ["grid-spacing-to-height"] = ByMember,
        ["bulkhead-rung-spacing"] = ByStage, ["bulkhead-block-spacing"] = ByStage,
    };

    /// <summary>True when this ruleset has the rule and a caller's own value would be read.</summary>
    public static bool MaySet(string ruleset, string rule) =>
        RuleCatalogue.Current.Has(ruleset, rule) && (RulesRead.Reads(rule) || Planned.ContainsKey(rule));

    public static RuleUse Of(string rule) =>
        RulesRead.Reads(rule) ? RuleUse.Check
        : Planned.ContainsKey(rule) ? RuleUse.Default
        : Fixed.ContainsKey(rule) ? RuleUse.Plan
        : RuleUse.Reference;

    /// <summary>Bounds of a rule that is planned by, in its own unit, and where it is used; null for any other.</summary>
    public static PlannedRule? Bounds(string rule) => Planned.GetValueOrDefault(rule);

    /// <summary>Why a caller may not set this rule; null when it may be set.</summary>
    public static string? WhyFixed(string rule) => Of(rule) switch
    {
        RuleUse.Plan => Fixed[rule],
        RuleUse.Reference => "No part of a plan reads this rule; setting it would change nothing.",
        _ => null,
    };

    /// <summary>Every id that is named here, for the tests that hold the lists against the tables.</summary>
    public static IEnumerable<string> Named => Planned.Keys.Concat(Fixed.Keys);
}

/// <summary>A rule that is planned or counted by: the least and most that a caller may set, in the rule's own unit, and where it is used.</summary>
public sealed record PlannedRule(decimal Least, decimal Most, string UsedIn);
