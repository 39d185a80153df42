namespace LayoutService.Engine.Checks;

/// <summary>The rules whose value changes what the checks or cautions say.</summary>
public static class RulesRead
{
    private static readonly HashSet<string> Ids = new(StringComparer.Ordinal)
    {
        "strap-thickness", "strap-face", "strap-support-spacing", "strap-nail-length", "strap-fastener-penetration",
        "fasteners-per-crossing", "strap-joint-face", "row-spacing", "board-screw-spacing", "board-screw-edge",
        "board-screw-penetration", "screw-tip", "rated-ceiling-penetration", "board-under-insulation", "insulation-on-board",
        "headroom", "headroom-over-area", "headroom-obstruction", "headroom-stair", "plane", "cable-setback", "floor-membrane",
        "floor-membrane-joist-depth", "draftstop-area", "draftstop-length", "fireblock-horizontal", "fireblock-vertical", "lift-people", "lift-mass-most",
        "light-clearance", "light-insulation-clearance", "fixture-conflicts",
        "strap-deflection", "creep", "strap-modulus", "strap-bending", "strap-bending-value", "bending-load-duration",
        "bending-resistance-factor", "dead-load-factor", "strap-withdrawal", "board-screw-withdrawal", "withdrawal-screw", "withdrawal-nail",
        "withdrawal-load-duration", "strap-screw-diameter", "strap-nail-diameter", "board-screw-diameter", "joist-gravity", "strap-gravity",
        "floor-span", "furred-ceiling-board", "furred-ceiling-one-by-three", "furred-ceiling-one-by-four", "restraint-strap-thickness",
        "restraint-strap-face", "restraint-strap-distance", "i-joist-bracing", "covered-access", "joist-hole", "joist-hole-edge", "joist-notch-depth",
    };

    public static bool Reads(string rule) => Ids.Contains(rule);
}
