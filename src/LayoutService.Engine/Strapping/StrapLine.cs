using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>How one end of a stretch of strap finishes.</summary>
public enum StretchEnd
{
    Wall,
    Opening,
    Bulkhead,

    /// <summary>On a joist, in the open: a short strap past its last support.</summary>
    Joist,

    /// <summary>On a block between two joists, in the open: a short strap that another's keeps from its next joist.</summary>
    Block,

    /// <summary>On a joist beside a hole that the row is trimmed round.</summary>
    Fixture,
}

/// <summary>
/// One uninterrupted run of a row, wall to wall, in the working frame; the centre line reaches the wall. A bevelled end
/// carries its degrees off square and how far its long point stands past the centre line.
/// </summary>
public sealed record Stretch(
    Span Across, StretchEnd LowEnd, StretchEnd HighEnd, int LowSource, int HighSource, double LowBevel, double HighBevel, bool LowLongUp, bool HighLongUp)
{
    public long LongPoint(bool high, long half)
    {
        var degrees = high ? HighBevel : LowBevel;
        return degrees == 0 ? 0 : (long)Math.Ceiling(half * Math.Tan(degrees * Math.PI / 180));
    }
}

/// <summary>A row as it lies: its centre along the joists and its stretches.</summary>
public sealed record StrapLine(long At, bool Through, IReadOnlyList<Stretch> Stretches, WallRow? Serves)
{
    /// <summary>True when it lies beside another, nearer on centre than a gap. Run on past two supports, a short strap may.</summary>
    public bool LiesOn(StrapLine other, long gap) =>
        Math.Abs(other.At - At) < gap && other.Stretches.Any(s => Stretches.Any(own => own.Across.Overlaps(s.Across)));

    /// <summary>The stretches that the row leaves out where it is trimmed round holes.</summary>
    public IEnumerable<Span> TrimmedGaps()
    {
        for (var s = 0; s + 1 < Stretches.Count; s++)
        {
            if (Stretches[s].HighEnd == StretchEnd.Fixture && Stretches[s + 1].LowEnd == StretchEnd.Fixture)
            {
                yield return new Span(Stretches[s].Across.Hi, Stretches[s + 1].Across.Lo);
            }
        }
    }

    /// <summary>True when some of each lies over the same stretch across the joists.</summary>
    public bool IsBeside(StrapLine other)
    {
        for (var i = 0; i < Stretches.Count; i++)
        {
            for (var j = 0; j < other.Stretches.Count; j++)
            {
                if (Stretches[i].Across.Overlaps(other.Stretches[j].Across))
                {
                    return true;
                }
            }
        }

        return false;
    }

    public BearingLine Bearing { get; } = new(At, [.. Stretches.Select(s => s.Across)], Through, !Through && Serves is null);
}
