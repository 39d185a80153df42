using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// A hole in the board in the working frame: its centre, half its extent along and across the joists, and how far straps
/// and seams keep from its edge. A round hole has the same half extent both ways.
/// </summary>
public sealed record Hole(string FixtureId, Uv At, long HalfU, long HalfV, bool Round, long Clear)
{
    public Span Along => new(At.U - HalfU, At.U + HalfU);

    public Span Across => new(At.V - HalfV, At.V + HalfV);

    /// <summary>The hole with its clearance.</summary>
    public Span AlongKept => new(At.U - HalfU - Clear, At.U + HalfU + Clear);

    /// <summary>The hole with its clearance.</summary>
    public Span AcrossKept => new(At.V - HalfV - Clear, At.V + HalfV + Clear);

    /// <summary>The same hole with along and across changed over.</summary>
    public Hole Turned() => this with { At = new Uv(At.V, At.U), HalfU = HalfV, HalfV = HalfU };

    public bool Meets(Hole other) =>
        Round && other.Round
            ? Rings.DistanceBetween(At, other.At) < HalfU + other.HalfU
            : Along.Overlaps(other.Along) && Across.Overlaps(other.Across);
}

/// <summary>
/// The holes that rows and seams keep off. A firm hole stays where it is: a row that must meet it is trimmed round it, and
/// no butt stands in it. A soft one may still be moved a little: it is avoided where that costs nothing.
/// </summary>
public sealed class KeepOuts(IReadOnlyList<Hole> firm, IReadOnlyList<Hole> soft)
{
    public static readonly KeepOuts None = new([], []);

    public IReadOnlyList<Hole> Firm => firm;

    public IReadOnlyList<Hole> Soft => soft;

    /// <summary>The same holes with along and across changed over.</summary>
    public KeepOuts Turned() => Any ? new([.. firm.Select(h => h.Turned())], [.. soft.Select(h => h.Turned())]) : None;

    public bool Any => firm.Count + soft.Count > 0;

    /// <summary>True when a butt joint at this place along the joists, over this strip across them, keeps off every firm hole.</summary>
    public bool ButtMayStand(long along, Span strip)
    {
        for (var i = 0; i < firm.Count; i++)
        {
            var (kept, across) = (firm[i].AlongKept, firm[i].AcrossKept);
            if (kept.Lo < along && along < kept.Hi && across.Overlaps(strip))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>How many firm and how many soft holes a seam along the joists at this place across them would meet.</summary>
    public (int Firm, int Soft) MetByCourseLine(long across) => (Met(firm, across), Met(soft, across));

    private static int Met(IReadOnlyList<Hole> holes, long across)
    {
        var met = 0;
        for (var i = 0; i < holes.Count; i++)
        {
            var kept = holes[i].AcrossKept;
            met += kept.Lo < across && across < kept.Hi ? 1 : 0;
        }

        return met;
    }
}
