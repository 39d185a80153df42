using System.Runtime.InteropServices;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// The places that the rows may take without a row more than the least: from the low wall, from the high wall, evenly, and
/// with rows put where a board of full length would end. Each is a choice of the same count, so the search for the best
/// board joints never costs a row. Cost: wished places² × rows.
/// </summary>
public sealed class RowLattices(RowRules rules, RowSkeleton skeleton)
{
    /// <summary>
    /// Through rows of each candidate, rising; the most promising first, at most <paramref name="most"/>. Wishes are places
    /// where a row would serve a board of full length, rising.
    /// </summary>
    public List<long[]> Offer(long[] wishes, int most)
    {
        var perStretch = new List<List<List<long>>>();
        for (var i = 0; i + 1 < skeleton.Anchors.Count; i++)
        {
            perStretch.Add(OfStretch(i, wishes, Math.Max(3, most)));
        }

        var joined = new List<List<long>> { new() };
        if (!skeleton.LooseStart)
        {
            joined[0].Add(skeleton.Anchors[0]);
        }

        for (var i = 0; i < perStretch.Count; i++)
        {
            var longer = new List<List<long>>();
            foreach (var option in perStretch[i])
            {
                foreach (var head in joined)
                {
                    var rows = new List<long>(head);
                    rows.AddRange(option);
                    if (i < perStretch.Count - 1 || !skeleton.LooseEnd)
                    {
                        rows.Add(skeleton.Anchors[i + 1]);
                    }

                    longer.Add(rows);
                    if (longer.Count >= 4 * most)
                    {
                        break;
                    }
                }
            }

            joined = longer;
        }

        return [.. joined
            .Select(rows => rows.Distinct().ToArray())
            .Select((rows, i) => (rows, i, hits: wishes.Count(w => Array.BinarySearch(rows, w) >= 0)))
            .OrderByDescending(x => x.hits).ThenBy(x => x.i)
            .Select(x => x.rows)
            .Take(most)];
    }

    private List<List<long>> OfStretch(int index, long[] wishes, int most)
    {
        var (from, to) = (skeleton.Anchors[index], skeleton.Anchors[index + 1]);
        var looseFrom = skeleton.LooseStart && index == 0;
        var looseTo = skeleton.LooseEnd && index == skeleton.Anchors.Count - 2;
        var count = skeleton.Between[index];
        var options = new List<(List<long> Rows, int Hits)>();
        var seen = new HashSet<List<long>>(new SameRows());
        Add(skeleton.Filler.Fill(from, to, looseFrom, looseTo, false));
        Add(skeleton.Filler.Fill(from, to, looseFrom, looseTo, true));
        if (!looseFrom && !looseTo)
        {
            Add(skeleton.Filler.FillEvenly(from, to, count));
        }

        if (count == 0)
        {
            return [.. options.Select(o => o.Rows)];
        }

        var pins = wishes.Where(w => w - from >= rules.MinGap && to - w >= rules.MinGap && skeleton.Filler.Allows(w)).Distinct().Order().Take(64).ToArray();
        // through one or two wished places; the remainder of each outer stretch falls at its wall
        var below = Array.ConvertAll(pins, pin => skeleton.Filler.Fill(from, pin, looseFrom, false, true));
        var above = Array.ConvertAll(pins, pin => skeleton.Filler.Fill(pin, to, false, looseTo, false));
        for (var i = 0; i < pins.Length; i++)
        {
            AddThrough(below[i], pins[i], [], above[i]);
            for (var j = i + 1; j < pins.Length; j++)
            {
                if (pins[j] - pins[i] >= rules.MinGap && below[i] is { } low && above[j] is { } high && low.Count + high.Count + 2 <= count
                    && skeleton.Filler.Fill(pins[i], pins[j], false, false, false) is { } between)
                {
                    AddThrough(low, pins[i], [.. between, pins[j]], high);
                }
            }
        }

        return [.. options.OrderByDescending(o => o.Hits).Select(o => o.Rows).Take(most)];

        void AddThrough(List<long>? low, long pin, List<long> rest, List<long>? high)
        {
            if (low is not null && high is not null && low.Count + 1 + rest.Count + high.Count == count)
            {
                Add([.. low, pin, .. rest, .. high]);
            }
        }

        void Add(List<long>? rows)
        {
            if (rows is not null && rows.Count == count && seen.Add(rows))
            {
                options.Add((rows, rows.Count(r => Array.BinarySearch(wishes, r) >= 0)));
            }
        }
    }

    private sealed class SameRows : IEqualityComparer<List<long>>
    {
        public bool Equals(List<long>? x, List<long>? y) => CollectionsMarshal.AsSpan(x).SequenceEqual(CollectionsMarshal.AsSpan(y));

        public int GetHashCode(List<long> rows)
        {
            long hash = rows.Count;
            foreach (var row in rows)
            {
                hash = unchecked((hash * 31) + row);
            }

            return hash.GetHashCode();
        }
    }
}
