using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// The rules whose value changes what the checks or cautions say: a caller's own value for any other rule would be ignored,
/// so it is to be refused at the door.
/// </summary>
public static class RulesRead
{
    private static readonly HashSet<string> Ids = new(StringComparer.Ordinal)
    {
        "strap-thickness", "strap-face", "strap-support-spacing", "strap-nail-length", "strap-fastener-penetration",
        "fasteners-per-crossing", "strap-joint-face", "row-spacing", "board-screw-spacing", "board-screw-edge",
        "board-screw-penetration", "screw-tip", "rated-ceiling-penetration", "board-under-insulation", "insulation-on-board",
        "headroom", "headroom-over-area", "headroom-obstruction", "plane", "cable-setback", "floor-membrane",
        "floor-membrane-joist-depth", "draftstop-area", "fireblock-horizontal", "lift-people", "lift-mass-most",
        "light-clearance", "light-insulation-clearance", "fixture-conflicts",
    };

    /// <summary>True when this ruleset has the rule and a plan's checks or cautions read its value.</summary>
    public static bool MaySet(string ruleset, string rule) => Ids.Contains(rule) && RuleCatalogue.Current.Has(ruleset, rule);
}
