namespace LayoutService.Drawing;

/// <summary>A place on the paper, in pixels: x right, y down.</summary>
public readonly record struct Spot(double X, double Y);

/// <summary>An upright rectangle on the paper, in pixels.</summary>
public readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public Spot Middle => new((Left + Right) / 2, (Top + Bottom) / 2);

    public static Box Round(Spot middle, double width, double height) =>
        new(middle.X - (width / 2), middle.Y - (height / 2), middle.X + (width / 2), middle.Y + (height / 2));

    /// <summary>True when the two share more than an edge.</summary>
    public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Box inner) => Left <= inner.Left && inner.Right <= Right && Top <= inner.Top && inner.Bottom <= Bottom;

    public Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}
