namespace LayoutService.Auditor.Likeness;

/// <summary>
/// A motion of the plane that keeps axes on axes: x' = Xx·x + Xy·y + Ox, y' = Yx·x + Yy·y + Oy, offsets in mm; the
/// four factors are -1, 0 or 1.
/// </summary>
public sealed record Motion(string Name, int Xx, int Xy, int Yx, int Yy, decimal Ox = 0, decimal Oy = 0)
{
    public static Motion Still => new("still", 1, 0, 0, 1);
    public static Motion MirrorX => new("mirror in x", -1, 0, 0, 1);
    public static Motion MirrorY => new("mirror in y", 1, 0, 0, -1);

    /// <summary>A quarter turn anticlockwise: joists along x come to run along y.</summary>
    public static Motion QuarterTurn => new("quarter turn", 0, -1, 1, 0);

    /// <summary>A shift, in mm.</summary>
    public static Motion Shift(decimal x, decimal y) => new("shift", 1, 0, 0, 1, x, y);

    public (decimal X, decimal Y) Move(decimal x, decimal y) => ((Xx * x) + (Xy * y) + Ox, (Yx * x) + (Yy * y) + Oy);

    public (double X, double Y) Move(double x, double y) => ((Xx * x) + (Xy * y) + (double)Ox, (Yx * x) + (Yy * y) + (double)Oy);

    /// <summary>This motion, and then another.</summary>
    public Motion Then(Motion next)
    {
        var (ox, oy) = next.Move(Ox, Oy);
        return new(
            $"{Name}, {next.Name}",
            (next.Xx * Xx) + (next.Xy * Yx),
            (next.Xx * Xy) + (next.Xy * Yy),
            (next.Yx * Xx) + (next.Yy * Yx),
            (next.Yx * Xy) + (next.Yy * Yy),
            ox,
            oy);
    }

    /// <summary>The direction in which joists at this angle run after the motion, in [0, 180).</summary>
    public decimal Degrees(decimal degrees)
    {
        var mirrored = (Xx * Yy) - (Xy * Yx) < 0;
        var turned = Xx == 0 ? 90 : 0;
        return ((mirrored ? 180 - degrees : degrees) + turned + 360) % 180;
    }

    /// <summary>True when across counts from the other side after the motion.</summary>
    public bool FlipsAcross(decimal degrees)
    {
        var (ax, ay) = Across(degrees);
        var (bx, by) = Across(Degrees(degrees));
        return (((Xx * ax) + (Xy * ay)) * bx) + (((Yx * ax) + (Yy * ay)) * by) < 0;
    }

    private static (double X, double Y) Across(decimal degrees)
    {
        var radians = (double)degrees * Math.PI / 180;
        return degrees == 0 ? (0, 1) : (Math.Sin(radians), -Math.Cos(radians));
    }
}
