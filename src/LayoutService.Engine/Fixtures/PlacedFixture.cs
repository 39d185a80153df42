using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Fixtures;

/// <summary>A fixture where it will be, in the working frame.</summary>
/// <param name="Wish">What was asked for.</param>
/// <param name="Asked">Where it was asked for.</param>
/// <param name="Hole">Its hole where it will be.</param>
/// <param name="Fled">What it was in conflict with where it was asked for.</param>
/// <param name="Clashes">What it is in conflict with where it will be; empty when nothing.</param>
public sealed record PlacedFixture(FixtureWish Wish, Uv Asked, Hole Hole, IReadOnlyList<Clash> Fled, IReadOnlyList<Clash> Clashes)
{
    public bool Moved => Hole.At != Asked;

    /// <summary>The bulkhead whose underside it is let into; −1 in the ceiling.</summary>
    public int Host { get; init; } = -1;
}
