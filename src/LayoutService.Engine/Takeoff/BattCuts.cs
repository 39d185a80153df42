using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// How many batts the fills are cut from. Problem: rectangles from equal rectangles, cut from edge to edge. Method: first
/// piece first, longest first, each from the smallest offcut that holds it (best fit), else from a new batt; ends and side
/// strips go back to the offcuts, so that the rest of one bay serves the next. No bound is claimed: batts are cheap beside
/// their packs. Cost: pieces × offcuts kept, of which there are at most 64.
/// </summary>
internal sealed class BattCuts
{
    /// <summary>A stretch this much longer than whole batts is filled by pushing them apart: the survey's tolerance.</summary>
    private const long Give = 6 * Length.PerMillimetre;

    /// <summary>Smallest offcut that is kept, either way. Common practice, no source.</summary>
    private const long LeastOffcut = 50 * Length.PerMillimetre;

    private const int MostOffcuts = 64;
    private readonly long _width;
    private readonly long _length;
    private readonly List<(long Width, long Length)> _offcuts = [];
    private int _opened;

    private BattCuts(Batt batt) => (_width, _length) = (batt.Width.Units, batt.Length.Units);

    /// <summary>Batts for these fills of one batt; a split batt gives two layers.</summary>
    public static int Count(Batt batt, IReadOnlyList<BattFill> fills)
    {
        var whole = new BattCuts(batt).Open(fills.Where(f => !f.Split));
        var halves = new BattCuts(batt).Open(fills.Where(f => f.Split));
        return whole + ((halves + 1) / 2);
    }

    private int Open(IEnumerable<BattFill> fills)
    {
        var pieces = fills.SelectMany(Pieces).OrderByDescending(p => p.Length).ThenByDescending(p => p.Width);
        foreach (var (width, length) in pieces)
        {
            Cut(width, length);
        }

        return _opened;
    }

    private IEnumerable<(long Width, long Length)> Pieces(BattFill fill)
    {
        var left = fill.Length.Units;
        while (left > _length)
        {
            yield return (fill.Width.Units, _length);
            left -= _length;
            if (left <= Give)
            {
                yield break;
            }
        }

        yield return (fill.Width.Units, left);
    }

    private void Cut(long width, long length)
    {
        var best = -1;
        for (var i = 0; i < _offcuts.Count; i++)
        {
            if (_offcuts[i].Width >= width && _offcuts[i].Length >= length && (best < 0 || Size(_offcuts[i]) < Size(_offcuts[best])))
            {
                best = i;
            }
        }

        var from = best < 0 ? (_width, _length) : _offcuts[best];
        if (best < 0)
        {
            _opened++;
        }
        else
        {
            _offcuts.RemoveAt(best);
        }

        Keep(from.Item1, from.Item2 - length);
        Keep(from.Item1 - width, length);
    }

    private void Keep(long width, long length)
    {
        if (width < LeastOffcut || length < LeastOffcut)
        {
            return;
        }

        _offcuts.Add((width, length));
        if (_offcuts.Count > MostOffcuts)
        {
            _offcuts.Remove(_offcuts.MinBy(Size));
        }
    }

    private static Int128 Size((long Width, long Length) offcut) => (Int128)offcut.Width * offcut.Length;
}
