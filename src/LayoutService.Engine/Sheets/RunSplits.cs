using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// Breaks a run where it gets narrower: at the line of an inside corner or beside an opening, so that the board of the narrow
/// part is a rip and not a whole width with most of it cut away. What lies between such breaks is laid in whole sheets, from
/// either side. Cost: 3^breaks × lengths of stock.
/// </summary>
internal sealed class RunSplits(long[] lengths, int mostBreaks)
{
    // what a change of width must be to be worth a butt
    private const long LeastStep = 100 * Length.PerMillimetre;
    private const long Beside = 8;

    private readonly RunExtents _parts = new();
    private readonly List<(long At, long Step)> _breaks = new(8);
    private readonly List<long> _split = new(8);
    private readonly List<long> _butts = new(12);

    /// <summary>Offers the butts of every such way to break the run, as places that rise.</summary>
    public void Offer(CourseRun run, ButtStand stand, Action<List<long>> offered)
    {
        FindBreaks(run);
        foreach (var onRows in new[] { false, true })
        {
            _split.Clear();
            Choose(run, stand, onRows, 0, offered);
        }
    }

    // where the run changes its width: the greatest changes, in order along it; a step above zero is narrower on the high side
    private void FindBreaks(CourseRun run)
    {
        _breaks.Clear();
        foreach (var cell in run.Cells)
        {
            foreach (var at in new[] { cell.L0, cell.L1, cell.R0, cell.R1 })
            {
                if (at - run.Along.Lo >= Beside && run.Along.Hi - at >= Beside && !_breaks.Exists(b => b.At == at)
                    && Wide(run, at - Beside, at) - Wide(run, at, at + Beside) is var step && Math.Abs(step) >= LeastStep)
                {
                    _breaks.Add((at, step));
                }
            }
        }

        if (_breaks.Count > mostBreaks)
        {
            _breaks.Sort(static (a, b) => (-Math.Abs(a.Step), a.At).CompareTo((-Math.Abs(b.Step), b.At)));
            _breaks.RemoveRange(mostBreaks, _breaks.Count - mostBreaks);
        }

        _breaks.Sort(static (a, b) => a.At.CompareTo(b.At));
    }

    private long Wide(CourseRun run, long from, long to)
    {
        long wide = 0;
        foreach (var part in _parts.Of(run, from, to))
        {
            wide += part.Across.Size;
        }

        return wide;
    }

    private void Choose(CourseRun run, ButtStand stand, bool onRows, int index, Action<List<long>> offered)
    {
        if (index == _breaks.Count)
        {
            if (_split.Count > 0)
            {
                foreach (var length in lengths)
                {
                    Fill(run, stand, onRows, length, true, offered);
                    Fill(run, stand, onRows, length, false, offered);
                }
            }

            return;
        }

        Choose(run, stand, onRows, index + 1, offered);
        var (at, step) = _breaks[index];
        long before = long.MinValue;
        foreach (var off in new[] { 0, JointWeights.OffCorner })
        {
            var place = step > 0 ? stand.Up(at + off, onRows) : stand.Down(at - off, onRows);
            var low = _split.Count > 0 ? _split[^1] : run.Along.Lo;
            if (place == before || place == long.MinValue || place == long.MaxValue || place - low < ButtPatterns.LeastPiece || run.Along.Hi - place < ButtPatterns.LeastPiece)
            {
                continue;
            }

            before = place;
            _split.Add(place);
            Choose(run, stand, onRows, index + 1, offered);
            _split.RemoveAt(_split.Count - 1);
        }
    }

    // whole sheets from one side of each stretch between the splits
    private void Fill(CourseRun run, ButtStand stand, bool onRows, long length, bool up, Action<List<long>> offered)
    {
        _butts.Clear();
        var low = run.Along.Lo;
        for (var i = 0; i <= _split.Count; i++)
        {
            var high = i < _split.Count ? _split[i] : run.Along.Hi;
            if (!(up ? Up(low, high) : Down(low, high)))
            {
                return;
            }

            if (i < _split.Count)
            {
                _butts.Add(high);
            }

            low = high;
        }

        offered(_butts);

        bool Up(long from, long to)
        {
            while (to - from > length)
            {
                var next = stand.Down(Math.Min(from + length, to - ButtPatterns.LeastPiece), onRows);
                if (next < from + ButtPatterns.LeastPiece)
                {
                    return false;
                }

                _butts.Add(next);
                from = next;
            }

            return true;
        }

        bool Down(long from, long to)
        {
            var first = _butts.Count;
            while (to - from > length)
            {
                var next = stand.Up(Math.Max(to - length, from + ButtPatterns.LeastPiece), onRows);
                if (next > to - ButtPatterns.LeastPiece)
                {
                    return false;
                }

                _butts.Insert(first, next);
                to = next;
            }

            return true;
        }
    }
}
