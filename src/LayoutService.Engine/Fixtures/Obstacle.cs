using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Fixtures;

/// <summary>What a fixture can be in conflict with.</summary>
public enum ClashKind
{
    Wall,
    Joist,
    Service,
    Fixture,
    Strap,
    Seam,

    /// <summary>Its driver box does not pass the hole, or finds no bay.</summary>
    RemoteBox,

    /// <summary>Wood of a bulkhead's frame.</summary>
    Frame,

    /// <summary>It reaches up further than the bulkhead is high inside.</summary>
    Depth,
}

/// <summary>One conflict; <see cref="Index"/> is the number of the support, service, fixture, row or seam, or −1.</summary>
public readonly record struct Clash(ClashKind Kind, int Index);

/// <summary>
/// Where the centre of one fixture may not be: an open box. Free on its border. Its corners are rounded by <c>Rounding</c> units
/// where a hole keeps off the end of something.
/// </summary>
internal readonly record struct Obstacle(Span Along, Span Across, Clash Clash, long Rounding = 0)
{
    public bool Holds(Uv at) => Along.Lo < at.U && at.U < Along.Hi && Across.Lo < at.V && at.V < Across.Hi && !PastCorner(at);

    /// <summary>True when something within so far of a place, along and across, lies in it or on its border.</summary>
    public bool Reaches(Uv at, long reach) =>
        Along.Lo <= at.U + reach && at.U - reach <= Along.Hi && Across.Lo <= at.V + reach && at.V - reach <= Across.Hi;

    private bool PastCorner(Uv at)
    {
        var u = Math.Max(Along.Lo + Rounding - at.U, at.U - (Along.Hi - Rounding));
        var v = Math.Max(Across.Lo + Rounding - at.V, at.V - (Across.Hi - Rounding));
        return u > 0 && v > 0 && ((Int128)u * u) + ((Int128)v * v) >= (Int128)Rounding * Rounding;
    }
}
