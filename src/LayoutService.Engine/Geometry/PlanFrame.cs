using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Geometry;

/// <summary>
/// Turns the caller's coordinates into the working frame and back. u runs along the joists and v across them, both from
/// the outline's lowest coordinate; each may then be mirrored, so that a room and its mirror image are planned alike.
/// Exact for joists along x or y; otherwise to the nearest 1/8000 mm.
/// </summary>
public sealed class PlanFrame
{
    private readonly decimal _degrees;
    private readonly double _cos;
    private readonly double _sin;
    private readonly long _lowU;
    private readonly long _lowV;
    private readonly bool _turned;

    private PlanFrame(decimal degrees, long lowU, long lowV, long sizeU, long sizeV, bool mirrorU, bool mirrorV, bool turned = false)
    {
        _degrees = degrees;
        var radians = (double)degrees * Math.PI / 180.0;
        _cos = Math.Cos(radians);
        _sin = Math.Sin(radians);
        (_lowU, _lowV) = (lowU, lowV);
        (SizeU, SizeV, MirrorU, MirrorV) = (sizeU, sizeV, mirrorU, mirrorV);
        _turned = turned;
    }

    /// <summary>Extent of the outline along the joists.</summary>
    public long SizeU { get; }

    /// <summary>Extent of the outline across the joists.</summary>
    public long SizeV { get; }

    public bool MirrorU { get; }

    public bool MirrorV { get; }

    /// <summary>The frame of a room without mirroring.</summary>
    public static PlanFrame Of(IReadOnlyList<Point> outline, decimal runDegrees)
    {
        var bare = new PlanFrame(runDegrees, 0, 0, 0, 0, false, false);
        long lowU = long.MaxValue, lowV = long.MaxValue, highU = long.MinValue, highV = long.MinValue;
        foreach (var corner in outline)
        {
            var (u, v) = bare.Turn(corner);
            lowU = Math.Min(lowU, u);
            lowV = Math.Min(lowV, v);
            highU = Math.Max(highU, u);
            highV = Math.Max(highV, v);
        }

        return new PlanFrame(runDegrees, lowU, lowV, highU - lowU, highV - lowV, false, false);
    }

    public PlanFrame Mirrored(bool mirrorU, bool mirrorV) => new(_degrees, _lowU, _lowV, SizeU, SizeV, mirrorU, mirrorV, _turned);

    /// <summary>The same pose with its axes changed over: u across the joists and v along them, as board that is screwed to the joists lies.</summary>
    public PlanFrame Turned() => new(_degrees, _lowV, _lowU, SizeV, SizeU, MirrorV, MirrorU, !_turned);

    /// <summary>True where u and v, before they are mirrored, turn as x and y do.</summary>
    public bool TurnsAsDrawn => (_degrees == 0) != _turned;

    public Uv In(Point place)
    {
        var (u, v) = Turn(place);
        return new Uv(AlongIn(u - _lowU), AcrossIn(v - _lowV));
    }

    public Point Out(Uv place)
    {
        var u = AlongIn(place.U) + _lowU;
        var v = AcrossIn(place.V) + _lowV;
        if (_turned)
        {
            (u, v) = (v, u);
        }

        return _degrees switch
        {
            0 => new Point(new Length(u), new Length(v)),
            90 => new Point(new Length(v), new Length(u)),
            _ => new Point(new Length(Round((u * _cos) + (v * _sin))), new Length(Round((u * _sin) - (v * _cos)))),
        };
    }

    /// <summary>A scalar along the joists, from the outline's lowest coordinate, into the frame; its own inverse.</summary>
    public long AlongIn(long along) => MirrorU ? SizeU - along : along;

    /// <summary>A scalar across the joists, from the outline's lowest coordinate, into the frame; its own inverse.</summary>
    public long AcrossIn(long across) => MirrorV ? SizeV - across : across;

    private (long U, long V) Turn(Point place)
    {
        var (u, v) = Straight(place);
        return _turned ? (v, u) : (u, v);
    }

    private (long U, long V) Straight(Point place) => _degrees switch
    {
        0 => (place.X.Units, place.Y.Units),
        90 => (place.Y.Units, place.X.Units),
        _ => (
            Round((place.X.Units * _cos) + (place.Y.Units * _sin)),
            Round((place.X.Units * _sin) - (place.Y.Units * _cos))),
    };

    private static long Round(double value) => (long)Math.Round(value, MidpointRounding.ToEven);
}
