using System.Runtime.InteropServices;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// One way to break a run into pieces: the bearing lines its butts stand on, rising, and the prices guessed for it (by
/// share of a sheet's length, and by equal pieces from a sheet; see <see cref="StockPrices"/>).
/// </summary>
public sealed record ButtPattern(int[] Lines, long ByShare, long ByCount)
{
    public long Guess(int model) => model == 0 ? ByShare : ByCount;
}

/// <summary>
/// Enumerates the ways to break a run: every first butt that a stock length reaches, then as far as each stock length
/// goes, from either wall. That holds every pattern with one butt, and for longer runs those that waste least. An opening
/// wholly inside the run gets a butt through it. Cost: lines × lengths × pieces × log lines.
/// </summary>
public sealed class ButtPatterns(IReadOnlyList<BearingLine> lines, StockPrices prices, JointWeights weights, long width)
{
    /// <summary>No piece of board is shorter than this where there is a choice: 400 mm. Common practice, no source.</summary>
    public const long LeastPiece = 400 * Length.PerMillimetre;

    // beside an opening that stands near a wall there is no choice
    private const long LeastBesideOpening = 50 * Length.PerMillimetre;

    private readonly long[] _lengths = prices.Lengths(width);
    private readonly List<int> _eligible = new(lines.Count);
    private readonly List<int> _atOpenings = new(lines.Count);
    private readonly List<int> _butts = new(8);
    private readonly RunExtents _parts = new();
    private readonly ButtLists _lists = new();
    private readonly List<(int List, long ByShare, long ByCount)> _found = new(64);

    /// <summary>Patterns of a run; <paramref name="backed"/> tells of each line whether wood lies behind a butt on it there.</summary>
    public List<ButtPattern> Of(CourseRun run, bool[] backed, int most)
    {
        var (low, high) = (run.Along.Lo, run.Along.Hi);
        _eligible.Clear();
        _atOpenings.Clear();
        for (var i = 0; i < lines.Count; i++)
        {
            var nearest = Math.Min(lines[i].At - low, high - lines[i].At);
            if (backed[i] && nearest >= LeastPiece)
            {
                _eligible.Add(i);
            }

            if (backed[i] && nearest >= LeastBesideOpening)
            {
                _atOpenings.Add(i);
            }
        }

        _lists.Clear();
        _found.Clear();
        _butts.Clear();
        if (run.Along.Size <= _lengths[0])
        {
            Add(run);
        }

        WorkMeter.Spend((long)_eligible.Count * _lengths.Length * 8);
        foreach (var first in _eligible)
        {
            foreach (var length in _lengths)
            {
                if (lines[first].At - low <= _lengths[0] && WalkUp(first, high, length))
                {
                    Add(run);
                }

                if (high - lines[first].At <= _lengths[0] && WalkDown(first, low, length))
                {
                    Add(run);
                }
            }
        }

        foreach (var opening in run.Enclosed)
        {
            AddThrough(run, opening);
        }

        return Best(most);
    }

    // both ways from a butt through an opening
    private void AddThrough(CourseRun run, Span opening)
    {
        foreach (var line in _atOpenings)
        {
            foreach (var length in _lengths)
            {
                if (!Inside(line, opening) || !WalkDown(line, run.Along.Lo, length))
                {
                    continue;
                }

                var below = _butts.ToArray();
                if (WalkUp(line, run.Along.Hi, length))
                {
                    _butts.InsertRange(0, below.AsSpan(0, below.Length - 1).ToArray());
                    Add(run);
                }
            }
        }
    }

    // half of the places go to the best by each guess
    private List<ButtPattern> Best(int most)
    {
        if (_found.Count > most)
        {
            _found.Sort((a, b) => Compare((a.ByShare, a.ByCount), (b.ByShare, b.ByCount), a.List, b.List));
            _found.Sort(most / 2, _found.Count - (most / 2), Comparer<(int List, long ByShare, long ByCount)>.Create(
                (a, b) => Compare((a.ByCount, a.ByShare), (b.ByCount, b.ByShare), a.List, b.List)));
        }

        var kept = new List<ButtPattern>(Math.Min(most, _found.Count));
        for (var i = 0; i < _found.Count && i < most; i++)
        {
            kept.Add(new ButtPattern(_lists[_found[i].List].ToArray(), _found[i].ByShare, _found[i].ByCount));
        }

        return kept;
    }

    // by guesses, then by fewer butts, then by the butts themselves
    private int Compare((long, long) a, (long, long) b, int listA, int listB)
    {
        var order = a.CompareTo(b);
        if (order == 0)
        {
            order = _lists[listA].Length.CompareTo(_lists[listB].Length);
        }

        return order == 0 ? _lists[listA].SequenceCompareTo(_lists[listB]) : order;
    }

    private void Add(CourseRun run)
    {
        if (!ThroughOpenings(run) || _lists.Add(CollectionsMarshal.AsSpan(_butts)) is var list && list < 0)
        {
            return;
        }

        long share = 0, count = 0;
        var joint = prices.ButtCost(run.Across.Size) + 1;
        var at = run.Along.Lo;
        foreach (var butt in _butts)
        {
            if (lines[butt].At - at > _lengths[0])
            {
                return;
            }

            share += joint + (lines[butt].Extra ? weights.Strap : 0);
            count += joint + (lines[butt].Extra ? weights.Strap : 0);
            Price(run, at, lines[butt].At, ref share, ref count);
            at = lines[butt].At;
        }

        if (run.Along.Hi - at > _lengths[0])
        {
            return;
        }

        Price(run, at, run.Along.Hi, ref share, ref count);
        _found.Add((list, share, count));
    }

    private void Price(CourseRun run, long at, long end, ref long share, ref long count)
    {
        if (run.Plain)
        {
            Price(new PartExtent(new Span(at, end), run.Across), ref share, ref count);
            return;
        }

        foreach (var part in _parts.Of(run, at, end))
        {
            Price(part, ref share, ref count);
        }
    }

    private void Price(PartExtent part, ref long share, ref long count)
    {
        var used = prices.Share(part.Across.Size, width);
        share += (long)(prices.Guess(part.Along.Size, width, 0) * used);
        count += (long)(prices.Guess(part.Along.Size, width, 1) * used);
    }

    // from a first butt on, each next butt as far as the length reaches, leaving no scrap at the wall
    private bool WalkUp(int first, long end, long length)
    {
        _butts.Clear();
        _butts.Add(first);
        var at = lines[first].At;
        while (end - at > length)
        {
            var farthest = Upto(at + length) - 1;
            if (farthest < 0 || lines[_eligible[farthest]].At - at < LeastPiece)
            {
                return false;
            }

            _butts.Add(_eligible[farthest]);
            at = lines[_eligible[farthest]].At;
        }

        return true;
    }

    private bool WalkDown(int first, long end, long length)
    {
        _butts.Clear();
        _butts.Add(first);
        var at = lines[first].At;
        while (at - end > length)
        {
            var farthest = Upto(at - length - 1);
            if (farthest == _eligible.Count || at - lines[_eligible[farthest]].At < LeastPiece)
            {
                return false;
            }

            _butts.Insert(0, _eligible[farthest]);
            at = lines[_eligible[farthest]].At;
        }

        return true;
    }

    // how many eligible lines stand at or below a place; they rise
    private int Upto(long place)
    {
        var (low, high) = (0, _eligible.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = lines[_eligible[middle]].At <= place ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private bool ThroughOpenings(CourseRun run)
    {
        foreach (var opening in run.Enclosed)
        {
            var chosen = -1;
            foreach (var line in _atOpenings)
            {
                if (Inside(line, opening) && (chosen < 0 || Math.Abs(lines[line].At - opening.Middle) < Math.Abs(lines[chosen].At - opening.Middle)))
                {
                    chosen = line;
                }
            }

            if (chosen < 0)
            {
                return false;
            }

            if (!AnyInside(opening))
            {
                var (enclosed, middle) = (run.Enclosed, lines[chosen].At);
                _butts.RemoveAll(b => Math.Abs(lines[b].At - middle) < LeastPiece && !enclosed.Any(o => Inside(b, o)));
                _butts.Add(chosen);
                _butts.Sort();
            }
        }

        return true;
    }

    private bool AnyInside(Span opening)
    {
        foreach (var butt in _butts)
        {
            if (Inside(butt, opening))
            {
                return true;
            }
        }

        return false;
    }

    private bool Inside(int line, Span opening) => opening.Lo < lines[line].At && lines[line].At < opening.Hi;
}
