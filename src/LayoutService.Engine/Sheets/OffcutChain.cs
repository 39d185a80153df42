using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// Problem: the cheapest chain of course options when what one course leaves over starts the next. Method: a dynamic
/// programme over courses whose labels carry the offcuts at hand (a beam of one label for each option: the true state, all
/// offcuts, has no end). Pieces take the shortest offcut that holds them, else the new sheet whose price less what it
/// leaves is least. Two rips lie side by side in a sheet. Cost: courses × options² × pieces × offcuts kept.
/// </summary>
public sealed class OffcutChain
{
    private const int Kept = 6;

    /// <summary>What an offcut is worth, as a part of the best price for its length.</summary>
    private const double OffcutWorth = 0.8;

    private readonly IReadOnlyList<CourseRun> _runs;
    private readonly IReadOnlyList<BearingLine> _lines;
    private readonly (long Length, long Cost)[] _stock;
    private readonly long _sheetWidth;
    private readonly double _rate;

    public OffcutChain(StockPrices prices, CourseDivision division, IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines)
    {
        (_runs, _lines, _sheetWidth) = (runs, lines, division.SheetWidth);
        _stock = prices.Offers(division.SheetWidth);
        _rate = _stock.Min(s => (double)s.Cost / s.Length);
    }

    /// <summary>What is at hand after some courses: the price so far and the offcuts, longest first; a half is half a sheet wide.</summary>
    private sealed class Label
    {
        public long Penalty;
        public double Price;
        public readonly long[] Offcut = new long[Kept];
        public readonly bool[] Half = new bool[Kept];

        public void CopyFrom(Label other)
        {
            (Penalty, Price) = (other.Penalty, other.Price);
            other.Offcut.CopyTo(Offcut, 0);
            other.Half.CopyTo(Half, 0);
        }
    }

    /// <summary>The option of each course on the best chain; <paramref name="penalty"/> is of option o of course c after option p, <paramref name="weight"/> of option o alone, in money.</summary>
    public int[] Best(IReadOnlyList<CourseOption>[] options, Func<int, int, int, long> penalty, Func<int, int, long> weight)
    {
        var from = new int[options.Length][];
        var before = new List<Label> { new() };
        var trial = new Label();
        var spare = new Stack<Label>();
        for (int c = 0, firstRun = 0; c < options.Length; c++)
        {
            var here = new List<Label>(options[c].Count);
            from[c] = new int[options[c].Count];
            // whatever is laid, its length costs at least what an offcut of it is worth
            var least = OffcutWorth * _rate * Laid(firstRun, options[c][0]);
            var worthBefore = before.ConvertAll(Value);
            WorkMeter.Spend((4L + options[c][0].All.Length) * options[c].Count * before.Count);
            for (var o = 0; o < options[c].Count; o++)
            {
                var best = spare.TryPop(out var used) ? used : new Label();
                best.Penalty = long.MaxValue;
                var bestValue = double.MaxValue;
                for (var p = 0; p < before.Count; p++)
                {
                    var worth = before[p].Penalty + penalty(c, p, o);
                    if (worth > best.Penalty || (worth == best.Penalty && worthBefore[p] + least >= bestValue))
                    {
                        continue;
                    }

                    trial.CopyFrom(before[p]);
                    trial.Penalty = worth;
                    trial.Price += weight(c, o);
                    Lay(trial, firstRun, options[c][o]);
                    var value = Value(trial);
                    if (worth < best.Penalty || value < bestValue)
                    {
                        (best, trial, bestValue) = (trial, best, value);
                        from[c][o] = p;
                    }
                }

                here.Add(best);
            }

            firstRun += options[c][0].Butts.Length;
            before.ForEach(spare.Push);
            before = here;
        }

        var choice = new int[options.Length];
        for (var o = 1; o < before.Count; o++)
        {
            if ((before[o].Penalty, before[o].Price).CompareTo((before[choice[^1]].Penalty, before[choice[^1]].Price)) < 0)
            {
                choice[^1] = o;
            }
        }

        for (var c = options.Length - 1; c > 0; c--)
        {
            choice[c - 1] = from[c][choice[c]];
        }

        return choice;
    }

    // length that an option lays, half widths by half
    private double Laid(int firstRun, CourseOption option)
    {
        double length = 0;
        for (var r = 0; r < option.Butts.Length; r++)
        {
            var run = _runs[firstRun + r];
            length += 2 * run.Across.Size <= _sheetWidth ? 0.5 * run.Along.Size : run.Along.Size;
        }

        return length;
    }

    // the price so far, less most of what the offcuts would save
    private double Value(Label label)
    {
        var value = label.Price;
        for (var i = 0; i < Kept; i++)
        {
            value -= OffcutWorth * _rate * label.Offcut[i] * (label.Half[i] ? 0.5 : 1);
        }

        return value;
    }

    private void Lay(Label label, int firstRun, CourseOption option)
    {
        for (var r = 0; r < option.Butts.Length; r++)
        {
            var run = _runs[firstRun + r];
            var half = 2 * run.Across.Size <= _sheetWidth;
            var at = run.Along.Lo;
            foreach (var line in option.Butts[r])
            {
                Take(label, _lines[line].At - at, half);
                at = _lines[line].At;
            }

            Take(label, run.Along.Hi - at, half);
        }
    }

    private void Take(Label label, long length, bool half)
    {
        var chosen = -1;
        for (var i = 0; i < Kept; i++)
        {
            if (label.Offcut[i] >= length && (half || !label.Half[i])
                && (chosen < 0 || (label.Half[i] && !label.Half[chosen]) || (label.Half[i] == label.Half[chosen] && label.Offcut[i] < label.Offcut[chosen])))
            {
                chosen = i;
            }
        }

        if (chosen >= 0)
        {
            var (rest, wasHalf) = (label.Offcut[chosen] - length, label.Half[chosen]);
            label.Offcut[chosen] = 0;
            Leave(label, rest, wasHalf);
            if (half && !wasHalf)
            {
                Leave(label, length, true);
            }

            return;
        }

        var best = (Value: double.MaxValue, Length: 0L, Cost: 0L);
        foreach (var (stockLength, cost) in _stock)
        {
            var value = cost - (OffcutWorth * _rate * (stockLength - length));
            if (stockLength >= length && value < best.Value)
            {
                best = (value, stockLength, cost);
            }
        }

        label.Price += best.Cost;
        Leave(label, best.Length - length, false);
        if (half)
        {
            Leave(label, length, true);
        }
    }

    // keeps the most useful offcuts; scraps are waste
    private static void Leave(Label label, long length, bool half)
    {
        if (length < ButtPatterns.LeastPiece)
        {
            return;
        }

        var least = 0;
        for (var i = 1; i < Kept; i++)
        {
            if (label.Offcut[i] < label.Offcut[least])
            {
                least = i;
            }
        }

        if (length > label.Offcut[least])
        {
            label.Offcut[least] = length;
            label.Half[least] = half;
        }
    }
}
