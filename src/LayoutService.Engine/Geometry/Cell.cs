namespace LayoutService.Engine.Geometry;

/// <summary>
/// One trapezoid of a region between two levels of v: left and right sides given by their u at both levels.
/// </summary>
public readonly record struct Cell(long V0, long V1, long L0, long L1, long R0, long R1)
{
    public long LowU => Math.Min(L0, L1);

    public long HighU => Math.Max(R0, R1);
}
