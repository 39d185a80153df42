namespace LayoutService.Auditor.Reading;

/// <summary>A point in the frame of the joists, in mm: U along them, V across, both from the outline's lowest.</summary>
public readonly record struct Uv(double U, double V);

/// <summary>A stretch of a line, in mm, From below To.</summary>
public readonly record struct Stretch(double From, double To)
{
    public double Length => To - From;
    public bool Overlaps(Stretch other, double by) => Math.Min(To, other.To) - Math.Max(From, other.From) > by;
}

/// <summary>
/// The frame that the contract defines: along = the joists' direction; across = square to it, towards +x, or +y when
/// it has no x part; both count from the outline's lowest coordinate in that direction.
/// </summary>
public sealed class Frame
{
    private readonly double alongX, alongY, acrossX, acrossY, lowU, lowV;

    /// <param name="degrees">The joists' direction.</param>
    /// <param name="outline">The room.</param>
    /// <param name="turned">True to change along and across over.</param>
    public Frame(double degrees, IReadOnlyList<(double X, double Y)> outline, bool turned = false)
    {
        Degrees = degrees;
        (alongX, alongY) = degrees switch
        {
            0 => (1, 0),
            90 => (0, 1),
            _ => (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180)),
        };
        (acrossX, acrossY) = degrees == 0 ? (0, 1) : (alongY, -alongX);
        if (turned)
        {
            (alongX, alongY, acrossX, acrossY) = (acrossX, acrossY, alongX, alongY);
        }

        lowU = outline.Min(p => (p.X * alongX) + (p.Y * alongY));
        lowV = outline.Min(p => (p.X * acrossX) + (p.Y * acrossY));
    }

    /// <summary>Angle of the joists' direction from +x, in [0, 180).</summary>
    public double Degrees { get; }

    /// <summary>Unit vector that along counts in.</summary>
    public (double X, double Y) Along => (alongX, alongY);

    public Uv At(double x, double y) => new((x * alongX) + (y * alongY) - lowU, (x * acrossX) + (y * acrossY) - lowV);

    public (double X, double Y) Back(Uv p) =>
        (((p.U + lowU) * alongX) + ((p.V + lowV) * acrossX), ((p.U + lowU) * alongY) + ((p.V + lowV) * acrossY));
}
