namespace LayoutService.Auditor.Reading;

/// <summary>
/// One edge of the ceiling's border, of the outline (Ring 0) or of an opening (Ring 1 and up), directed so that the
/// ceiling lies to its left.
/// </summary>
public sealed record Wall(int Ring, Uv A, Uv B)
{
    public const double Straight = 0.05;

    /// <summary>Square to the joists (the strap runs along it).</summary>
    public bool IsSquare => Math.Abs(B.U - A.U) <= Straight;

    /// <summary>Along the joists (straps end on it squarely).</summary>
    public bool IsAlong => Math.Abs(B.V - A.V) <= Straight;

    /// <summary>True when the ceiling lies on its side of greater U.</summary>
    public bool IsLow => B.V < A.V;

    public Stretch Us => new(Math.Min(A.U, B.U), Math.Max(A.U, B.U));
    public Stretch Vs => new(Math.Min(A.V, B.V), Math.Max(A.V, B.V));

    /// <summary>How far the wall moves across while it moves one along: 0 for a wall along the joists.</summary>
    public double Slant => IsSquare ? double.PositiveInfinity : Math.Abs((B.V - A.V) / (B.U - A.U));

    public double UAt(double v) => A.U + ((B.U - A.U) * (v - A.V) / (B.V - A.V));
    public double VAt(double u) => A.V + ((B.V - A.V) * (u - A.U) / (B.U - A.U));

    /// <summary>Distance from a point to this edge, mm.</summary>
    public double Distance(Uv p)
    {
        double du = B.U - A.U, dv = B.V - A.V, square = (du * du) + (dv * dv);
        var t = Math.Clamp((((p.U - A.U) * du) + ((p.V - A.V) * dv)) / square, 0, 1);
        return Math.Sqrt(Math.Pow(p.U - A.U - (t * du), 2) + Math.Pow(p.V - A.V - (t * dv), 2));
    }
}

/// <summary>A line's way in and out of the ceiling: where, and through which walls.</summary>
public readonly record struct Passage(double From, Wall FromWall, double To, Wall ToWall)
{
    public double Length => To - From;
}
