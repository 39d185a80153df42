using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Drawing;

/// <summary>
/// The floor plan on the paper, seen from above like the caller's own: x right, y up. One scale for both directions, so large
/// that neighbouring rows can be lettered, and so small that a usual room fits a screen.
/// </summary>
public sealed class PlanView
{
    private const double UsualSide = 900;
    private const double LeastPerMillimetre = 0.035;
    private const double MostPerMillimetre = 0.25;
    private readonly long _left;
    private readonly long _top;
    private readonly double _perUnit;
    private readonly Spot _origin;

    private PlanView(long left, long top, double perUnit, Spot origin, double width, double height)
    {
        (_left, _top, _perUnit, _origin) = (left, top, perUnit, origin);
        Room = new(origin.X, origin.Y, origin.X + width, origin.Y + height);
    }

    /// <summary>The rectangle round the outline.</summary>
    public Box Room { get; }

    public double PixelsPerMillimetre => _perUnit * Length.PerMillimetre;

    /// <summary>A view of an outline whose upper left corner is at <paramref name="origin"/>.</summary>
    public static PlanView Of(IReadOnlyList<Point> outline, Spot origin)
    {
        var (left, right) = (outline.Min(p => p.X.Units), outline.Max(p => p.X.Units));
        var (low, high) = (outline.Min(p => p.Y.Units), outline.Max(p => p.Y.Units));
        var side = Math.Max(right - left, high - low) / (double)Length.PerMillimetre;
        var perUnit = Math.Clamp(UsualSide / side, LeastPerMillimetre, MostPerMillimetre) / Length.PerMillimetre;
        return new(left, high, perUnit, origin, (right - left) * perUnit, (high - low) * perUnit);
    }

    /// <summary>The same scale at another place of the paper.</summary>
    public PlanView At(Spot origin) => new(_left, _top, _perUnit, origin, Room.Width, Room.Height);

    public Spot this[Point point] => new(_origin.X + ((point.X.Units - _left) * _perUnit), _origin.Y + ((_top - point.Y.Units) * _perUnit));

    public double Size(Length length) => length.Units * _perUnit;

    public Box BoxOf(IReadOnlyList<Point> ring)
    {
        var spots = ring.Select(p => this[p]).ToList();
        return new(spots.Min(s => s.X), spots.Min(s => s.Y), spots.Max(s => s.X), spots.Max(s => s.Y));
    }
}
