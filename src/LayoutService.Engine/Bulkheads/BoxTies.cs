using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// Ties of one convex part: square to its longest side, between the wood along its edges, evenly and at most the spacing on
/// centre. Along an opening there is no wood: a tie lies there when the next is more than half the spacing away. Where the
/// part is wider than the longest length, rails run across its ties and the ties stop at them. Cost: ties × corners.
/// </summary>
internal sealed class BoxTies
{
    private readonly FramedRoom _room;
    private readonly BoxPart _part;
    private readonly (double U, double V) _a;
    private readonly (double U, double V) _b;
    private readonly List<(double U, double V)> _ring;
    private readonly long _face;
    private readonly long _thick;

    public BoxTies(FramedRoom room, BoxPart part, FrameWish wood, long spacing, long longest)
    {
        (_room, _part, _face, _thick) = (room, part, wood.Face.Units, wood.Thickness.Units);
        (_a, _b) = (part.Axis, (-part.Axis.V, part.Axis.U));
        _ring = Inner(part);
        if (_ring.Count >= 3)
        {
            Find(spacing, longest);
        }
    }

    /// <summary>Where the ties lie along the part's longest side, rising.</summary>
    public List<double> Places { get; } = [];

    /// <summary>Their centre lines.</summary>
    public List<Side> Lines { get; } = [];

    /// <summary>Centre lines of the rails that ties too long for the stock end on.</summary>
    public List<Side> Rails { get; } = [];

    private void Find(long spacing, long longest)
    {
        var (low, high) = (_ring.Min(p => Axis.Along(p, _a)), _ring.Max(p => Axis.Along(p, _a)));
        var (near, far) = (_ring.Min(p => Axis.Along(p, _b)), _ring.Max(p => Axis.Along(p, _b)));
        var parts = (int)Math.Ceiling((far - near) / longest);
        var rails = Enumerable.Range(1, Math.Max(0, parts - 1)).Select(k => near + ((far - near) * k / parts)).ToList();
        foreach (var rail in rails)
        {
            var (from, to) = Across(_b, _a, rail);
            Rails.Add(Line(Place(from, rail), Place(to, rail)));
        }

        var spaces = (int)Math.Ceiling((high - low) / (spacing - _room.GridStep));
        var even = Enumerable.Range(1, Math.Max(0, spaces - 1)).Select(k => Axis.Snapped(_room, low + ((high - low) * k / spaces), _a)).ToList();
        if (IsBare(low) && even.Append(high).First() - low > spacing / 2)
        {
            Lay(low + (_face / 2.0), rails);
        }

        even.ForEach(at => Lay(at, rails));
        if (IsBare(high) && high - even.Prepend(low).Last() > spacing / 2)
        {
            Lay(high - (_face / 2.0), rails);
        }
    }

    private void Lay(double at, List<double> rails)
    {
        var (from, to) = Across(_a, _b, at);
        if (to - from < 2 * _thick)
        {
            return;
        }

        Places.Add(at);
        foreach (var rail in rails.Where(r => from < r - _face && r + _face < to))
        {
            Lines.Add(Line(Place(at, from), Place(at, rail - (_face / 2.0))));
            from = rail + (_face / 2.0);
        }

        Lines.Add(Line(Place(at, from), Place(at, to)));
    }

    // an edge along an opening, square to the axis, at this end of the part
    private bool IsBare(double end)
    {
        return Enumerable.Range(0, _part.Ring.Length).Any(i => _part.Bare[i] && Ends(_part.Ring[i]) && Ends(_part.Ring[(i + 1) % _part.Ring.Length]));

        bool Ends(Uv corner) => Math.Abs(Axis.Along((corner.U, corner.V), _a) - end) < 16;
    }

    private static Side Line(Uv from, Uv to) => new(from, to, SideKind.Seam, -1, 0, 0);

    private Uv Place(double along, double across) => new(
        (long)Math.Round((_a.U * along) + (_b.U * across)), (long)Math.Round((_a.V * along) + (_b.V * across)));

    // the ring moved in to the wood along each edge (Sutherland and Hodgman's clipping by half planes; the ring is convex)
    private static List<(double U, double V)> Inner(BoxPart part)
    {
        double size = 4.0 * part.Ring.Max(c => Math.Max(Math.Abs(c.U), Math.Abs(c.V))) + 1e6;
        List<(double U, double V)> ring = [(-size, -size), (size, -size), (size, size), (-size, size)];
        for (var i = 0; i < part.Ring.Length; i++)
        {
            var edge = new Side(part.Ring[i], part.Ring[(i + 1) % part.Ring.Length], SideKind.Rest, -1, 0, 0);
            var kept = new List<(double U, double V)>(ring.Count + 1);
            for (var k = 0; k < ring.Count; k++)
            {
                var (p, q) = (ring[k], ring[(k + 1) % ring.Count]);
                var (dp, dq) = (In(p), In(q));
                if (dp >= 0)
                {
                    kept.Add(p);
                }

                if (dp < 0 != dq < 0)
                {
                    var share = dp / (dp - dq);
                    kept.Add((p.U + ((q.U - p.U) * share), p.V + ((q.V - p.V) * share)));
                }
            }

            ring = kept;
            double In((double U, double V) p) =>
                ((p.U - edge.From.U) * edge.Inward.U) + ((p.V - edge.From.V) * edge.Inward.V) - part.Wood[i];
        }

        return ring;
    }

    private (double From, double To) Across((double U, double V) a, (double U, double V) b, double at)
    {
        double from = double.MaxValue, to = double.MinValue;
        for (var i = 0; i < _ring.Count; i++)
        {
            var (p, q) = (_ring[i], _ring[(i + 1) % _ring.Count]);
            var (dp, dq) = (Axis.Along(p, a) - at, Axis.Along(q, a) - at);
            if (dp < 0 != dq < 0)
            {
                var share = dp / (dp - dq);
                var across = Axis.Along((p.U + ((q.U - p.U) * share), p.V + ((q.V - p.V) * share)), b);
                (from, to) = (Math.Min(from, across), Math.Max(to, across));
            }
        }

        return (from, to);
    }
}
