using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>One way to break a run at given places, and what its joints and short straps weigh.</summary>
internal sealed record RunPattern(Butt[] Butts, long Extras);

/// <summary>
/// Lists the ways to break a run into whole sheets, one piece of a given length (an offcut, or a simple part of a sheet) and
/// one remainder, in every order, on rows alone or with short straps wherever no row stands. Cost: orders × pieces for each
/// length of stock and each given piece.
/// </summary>
internal sealed class RunPatterns(StockPrices prices, long sheetWidth, JointWeights weights, int mostBreaks)
{
    private readonly long[] _lengths = prices.Lengths(sheetWidth);
    private readonly List<long> _butts = new(8);
    private readonly List<long> _high = new(8);
    private readonly List<long> _items = new(8);
    private readonly HashSet<long> _seen = [];
    private readonly RunExtents _parts = new();
    private readonly RunSplits _splits = new(prices.Lengths(sheetWidth), mostBreaks);

    /// <summary>Patterns that need no offcut, the cheapest guesses first.</summary>
    public List<RunPattern> Of(CourseRun run, ButtStand stand, int most)
    {
        var found = new List<RunPattern>();
        _seen.Clear();
        if (run.Along.Size <= _lengths[0])
        {
            found.Add(new RunPattern([], 0));
        }

        foreach (var length in _lengths)
        {
            Add(run, stand, length, 0, found);
            Add(run, stand, length, length / 2, found);
            Add(run, stand, length, length / 3, found);
            Add(run, stand, length, 2 * length / 3, found);
        }

        if (!run.Plain)
        {
            _splits.Offer(run, stand, butts => Keep(run, stand, butts, found));
            if (run.Enclosed.Count > 0)
            {
                found.RemoveAll(p => !run.Enclosed.All(o => Array.Exists(p.Butts, b => o.Lo < b.At && b.At < o.Hi)));
            }
        }

        if (found.Count <= most)
        {
            return found;
        }

        var ranked = found.Select((p, i) => (p, i, share: Guess(run, p, 0), count: Guess(run, p, 1))).OrderBy(x => x.share).ThenBy(x => x.i).ToList();
        return [.. ranked.Take(most / 2).Concat(ranked.Skip(most / 2).OrderBy(x => x.count).ThenBy(x => x.i).Take(most - (most / 2))).Select(x => x.p)];
    }

    /// <summary>The patterns that lay one piece of this length.</summary>
    public List<RunPattern> With(CourseRun run, ButtStand stand, long piece)
    {
        var found = new List<RunPattern>();
        _seen.Clear();
        foreach (var length in _lengths)
        {
            Add(run, stand, length, piece, found);
        }

        return found;
    }

    private long Guess(CourseRun run, RunPattern pattern, int model)
    {
        var (guess, at) = (pattern.Extras, run.Along.Lo);
        for (var i = 0; i <= pattern.Butts.Length; i++)
        {
            var end = i < pattern.Butts.Length ? pattern.Butts[i].At : run.Along.Hi;
            if (run.Plain)
            {
                guess += prices.Guess(end - at, sheetWidth, model);
            }
            else
            {
                foreach (var part in _parts.Of(run, at, end))
                {
                    guess += (long)(prices.Guess(part.Along.Size, sheetWidth, model) * prices.Share(part.Across.Size, sheetWidth));
                }
            }

            at = end;
        }

        return guess;
    }

    private void Add(CourseRun run, ButtStand stand, long length, long given, List<RunPattern> found)
    {
        // of a given piece that would leave too little beside it so much is laid that the least piece is left
        if (given > 0 && given < run.Along.Size)
        {
            given = Math.Min(given, run.Along.Size - ButtPatterns.LeastPiece);
        }

        var rest = run.Along.Size - given;
        if ((given != 0 && given < ButtPatterns.LeastPiece) || rest < ButtPatterns.LeastPiece)
        {
            return;
        }

        var whole = (int)((rest + length - 1) / length) - 1;
        var last = rest - (whole * length);
        _items.Clear();
        for (var i = 0; i < whole; i++)
        {
            _items.Add(length);
        }

        if (last < ButtPatterns.LeastPiece)
        {
            if (whole == 0)
            {
                return;
            }

            _items[0] -= ButtPatterns.LeastPiece - last;
        }

        if (_items.Count == 0 && given == 0)
        {
            return;
        }

        // the given piece at place g, the remainder at place r of the others
        var count = _items.Count;
        for (var g = 0; g <= (given > 0 ? count : 0); g++)
        {
            if (g > 1 && g < count - 1)
            {
                continue;
            }

            if (given > 0)
            {
                _items.Insert(g, given);
            }

            for (var r = 0; r <= _items.Count; r++)
            {
                if (r <= 1 || r >= _items.Count - 1)
                {
                    Lay(run, stand, r, false, found);
                    Lay(run, stand, r, true, found);
                }
            }

            if (given > 0)
            {
                _items.RemoveAt(g);
            }
        }
    }

    // pieces before the remainder from the low wall, those after it from the high wall
    private void Lay(CourseRun run, ButtStand stand, int remainder, bool onRows, List<RunPattern> found)
    {
        WorkMeter.Spend(10L * (1 + _items.Count));
        _butts.Clear();
        _high.Clear();
        var low = run.Along.Lo;
        for (var i = 0; i < remainder; i++)
        {
            var next = stand.Down(low + _items[i], onRows);
            if (next < low + ButtPatterns.LeastPiece)
            {
                return;
            }

            _butts.Add(next);
            low = next;
        }

        var high = run.Along.Hi;
        for (var i = _items.Count - 1; i >= remainder; i--)
        {
            var next = stand.Up(high - _items[i], onRows);
            if (next > high - ButtPatterns.LeastPiece)
            {
                return;
            }

            _high.Add(next);
            high = next;
        }

        if (high - low < ButtPatterns.LeastPiece || high - low > _lengths[0])
        {
            return;
        }

        _high.Reverse();
        _butts.AddRange(_high);
        Keep(run, stand, _butts, found);
    }

    private void Keep(CourseRun run, ButtStand stand, List<long> places, List<RunPattern> found)
    {
        long key = 17;
        foreach (var butt in places)
        {
            key = unchecked((key * 1_000_003) + butt);
        }

        if (_seen.Add(key))
        {
            var butts = new Butt[places.Count];
            for (var i = 0; i < butts.Length; i++)
            {
                butts[i] = stand.At(places[i]);
            }

            found.Add(new RunPattern(butts, weights.Of(run, places, stand)));
        }
    }
}
