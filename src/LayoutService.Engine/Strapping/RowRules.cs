using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>The distances that rows must keep, in units.</summary>
public sealed record RowRules(long Face, long MaxSpacing)
{
    /// <summary>Least clear gap between straps side by side, and how far a wall row's face may stand off the framing: 13 mm. Common practice, no source.</summary>
    public const long ClearGap = 13 * Length.PerMillimetre;

    public long Half => Face / 2;

    /// <summary>Least distance on centre between neighbouring rows.</summary>
    public long MinGap => Face + ClearGap;

    /// <summary>How far a butt end may stand off a row's centre: half a face less 19 mm of wood per end (derived; trade defaults).</summary>
    public long ButtTolerance => Math.Max(0, Half - (19 * Length.PerMillimetre));

    public static RowRules Of(StrappingWish wish) => new(wish.Face.Units, wish.MaxSpacing.Units);
}
