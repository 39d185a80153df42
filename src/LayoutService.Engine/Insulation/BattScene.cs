using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Insulation;

/// <summary>All that laying batts needs to know, in the working frame. Heights run down from the underside of the joists.</summary>
public sealed record BattScene
{
    /// <summary>The part of the ceiling that is to be filled, joists included.</summary>
    public required Region Region { get; init; }

    /// <summary>Clear bays, rising across the joists.</summary>
    public required IReadOnlyList<BattBay> Bays { get; init; }

    public required IReadOnlyList<BattObstacle> Obstacles { get; init; }

    public required IReadOnlyList<Batt> Batts { get; init; }

    public required BattRules Rules { get; init; }
}

/// <summary>The clear space between two neighbouring joist faces, or a wall and a joist face.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Across">From face to face.</param>
/// <param name="Depth">How deep it can be filled: the shallower of the joists at its sides, between their flanges if they have any.</param>
/// <param name="Along">Where the same joists run; null for all along.</param>
public sealed record BattBay(string Id, Span Across, long Depth, Span? Along = null);

public enum ObstacleKind
{
    /// <summary>A duct, pipe, beam, cable or the like.</summary>
    Service,

    /// <summary>A service that gets hot.</summary>
    Hot,

    /// <summary>A bay that carries air itself: it stays empty from wall to wall.</summary>
    PannedReturn,

    /// <summary>A service that someone must reach: nothing below or above it.</summary>
    Reach,

    /// <summary>A light or another fixture, with what it keeps from batts.</summary>
    Fixture,

    /// <summary>Wood between the joists.</summary>
    Blocking,
}

/// <summary>
/// Something in a bay that a batt keeps clear of. The ring is seen from above; one corner alone is the middle of a disc
/// whose radius is the clearance. Nothing lies nearer to the ring than <paramref name="Clearance"/>, nor between
/// <paramref name="Top"/> and <paramref name="Bottom"/>, which hold the clearance already.
/// </summary>
public sealed record BattObstacle(string Id, ObstacleKind Kind, IReadOnlyList<Uv> Ring, long Clearance, long Top, long Bottom)
{
    /// <summary>How far it reaches along the joists inside a strip across them, clearance included; null when it misses the strip.</summary>
    public Span? AlongIn(Span strip)
    {
        var wide = new Span(strip.Lo - Clearance, strip.Hi + Clearance);
        double lo = double.MaxValue, hi = double.MinValue;
        for (var i = 0; i < Ring.Count; i++)
        {
            var (a, b) = (Ring[i], Ring[(i + 1) % Ring.Count]);
            if (wide.Holds(a.V))
            {
                lo = Math.Min(lo, a.U);
                hi = Math.Max(hi, a.U);
            }

            foreach (var level in (ReadOnlySpan<long>)[wide.Lo, wide.Hi])
            {
                if (a.V < level != b.V < level)
                {
                    var at = a.U + ((double)(b.U - a.U) * (level - a.V) / (b.V - a.V));
                    lo = Math.Min(lo, at);
                    hi = Math.Max(hi, at);
                }
            }
        }

        return lo > hi ? null : new Span((long)Math.Floor(lo) - Clearance, (long)Math.Ceiling(hi) + Clearance);
    }

    /// <summary>How far it reaches across the joists, clearance included.</summary>
    public Span Across { get; } = new(Ring.Min(c => c.V) - Clearance, Ring.Max(c => c.V) + Clearance);
}
