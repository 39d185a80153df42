namespace LayoutService.Engine.Levelling;

/// <summary>
/// What packing goes by, in units: the step between neighbours above which straps are packed (rule <c>packing-from</c>), the
/// packing above which a joist is sistered (<c>packing-most</c>), and the step that packing is made in (1/16 in or 1 mm; common
/// practice, no source).
/// </summary>
public sealed record LevelRules(long From, long Most, long Grain)
{
    /// <summary>Level of the plane where more than these crossings set it: all are then packed to it. Null where they set it alone.</summary>
    public long? Plane { get; init; }

    /// <summary>
    /// How far below a joist a 2x4 sister can reach: 38 mm, which leaves 51 mm of its 89 beside the joist. Derived; common
    /// practice, no source.
    /// </summary>
    public const long SisterReach = 38 * Measures.Length.PerMillimetre;
}
