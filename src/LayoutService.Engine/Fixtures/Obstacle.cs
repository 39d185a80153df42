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

/// <summary>Where the centre of one fixture may not be: an open box. Free on its border.</summary>
internal readonly record struct Obstacle(Span Along, Span Across, Clash Clash)
{
    public bool Holds(Uv at) => Along.Lo < at.U && at.U < Along.Hi && Across.Lo < at.V && at.V < Across.Hi;
}
