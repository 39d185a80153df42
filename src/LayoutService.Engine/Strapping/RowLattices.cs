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
    /// <summary>Through rows of each candidate, rising; the most promising first, at most <paramref name="most"/>.</summary>
    public List<long[]> Offer(IReadOnlyList<long> wishes, int most)
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

    private List<List<long>> OfStretch(int index, IReadOnlyList<long> wishes, int most)
    {
        var (from, to) = (skeleton.Anchors[index], skeleton.Anchors[index + 1]);
        var looseFrom = skeleton.LooseStart && index == 0;
        var looseTo = skeleton.LooseEnd && index == skeleton.Anchors.Count - 2;
        var count = skeleton.Between[index];
        var options = new List<(List<long> Rows, int Hits)>();
        var seen = new HashSet<string>();
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
        for (var i = 0; i < pins.Length; i++)
        {
            Add(Through(from, to, looseFrom, looseTo, [pins[i]]));
            for (var j = i + 1; j < pins.Length; j++)
            {
                if (pins[j] - pins[i] >= rules.MinGap)
                {
                    Add(Through(from, to, looseFrom, looseTo, [pins[i], pins[j]]));
                }
            }
        }

        return [.. options.OrderByDescending(o => o.Hits).Select(o => o.Rows).Take(most)];

        void Add(List<long>? rows)
        {
            if (rows is not null && rows.Count == count && seen.Add(string.Join(',', rows)))
            {
                options.Add((rows, rows.Count(wishes.Contains)));
            }
        }
    }

    // rows through given places; the remainder of each outer stretch falls at its wall
    private List<long>? Through(long from, long to, bool looseFrom, bool looseTo, ReadOnlySpan<long> pins)
    {
        var rows = new List<long>();
        var at = from;
        for (var i = 0; i <= pins.Length; i++)
        {
            var end = i < pins.Length ? pins[i] : to;
            var part = skeleton.Filler.Fill(at, end, looseFrom && i == 0, looseTo && i == pins.Length, i == 0);
            if (part is null)
            {
                return null;
            }

            rows.AddRange(part);
            if (i < pins.Length)
            {
                rows.Add(end);
            }

            at = end;
        }

        return rows;
    }
}
