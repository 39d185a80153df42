using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Where free rows may not stand for the sake of a short wall row: closer to it than face and clear gap, unless they keep
/// off its strap across the joists, as in another arm of the room. A free row's stretches change at corners alone, or
/// steadily along oblique walls, so each part between two corners is judged at its ends and its middle. Cost: corners ×
/// cells a short row, once.
/// </summary>
public sealed class ShortRowClearance(FramedRoom room, RowRules rules)
{
    private readonly StrapLines _straps = new(room, rules);
    private readonly Dictionary<WallRow, List<Span>> _known = [];

    /// <summary>Open stretches along the joists, rising, where no free row's centre may be.</summary>
    public List<Span> Of(WallRow local)
    {
        if (!_known.TryGetValue(local, out var spans))
        {
            _known[local] = spans = Find(local);
        }

        return spans;
    }

    /// <summary>True when the strap of a short row, run on past what it serves to its joists, lies on a row through the room.</summary>
    public bool LiesOn(WallRow local, long through)
    {
        if (Math.Abs(local.At - through) >= rules.Face)
        {
            return false;
        }

        var row = room.Straps.AcrossAt(through, rules.Half);
        return _straps.Short(local.At, local.Across).Exists(strap => row.Exists(strap.Across.Overlaps));
    }

    private List<Span> Find(WallRow local)
    {
        List<Span> strap = [.. local.Across, .. _straps.Short(local.At, local.Across).Select(s => s.Across)];
        var reach = strap.ConvertAll(s => new Span(s.Lo - rules.Face, s.Hi + rules.Face));
        var (lo, hi) = (local.At - rules.MinGap, local.At + rules.MinGap);
        var corners = new SortedSet<long> { lo, hi };
        foreach (var edge in room.Straps.Edges)
        {
            foreach (var corner in (ReadOnlySpan<long>)[edge.From.U - rules.Half, edge.From.U + rules.Half])
            {
                if (lo < corner && corner < hi)
                {
                    corners.Add(corner);
                }
            }
        }

        var found = new List<Span>();
        var from = lo;
        foreach (var to in corners.Skip(1))
        {
            if (Meets(from + 1) || Meets(from + ((to - from) / 2)) || Meets(to - 1))
            {
                found.Add(new Span(from, to));
            }
            else if (Meets(from))
            {
                found.Add(new Span(from - 1, from + 1));
            }

            from = to;
        }

        return Joined(found);

        bool Meets(long at) => room.Straps.AcrossAt(at, rules.Half).Exists(s => reach.Exists(r => r.Overlaps(s)));
    }

    // open stretches that meet at a point are one: their common end is no place for a row either
    private static List<Span> Joined(List<Span> spans)
    {
        var joined = new List<Span>();
        foreach (var span in spans)
        {
            if (joined.Count > 0 && span.Lo <= joined[^1].Hi)
            {
                joined[^1] = new Span(joined[^1].Lo, Math.Max(joined[^1].Hi, span.Hi));
            }
            else
            {
                joined.Add(span);
            }
        }

        return joined;
    }
}
