using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// Frames the sides: a ladder of two rails and rungs along each face, a ledger along each wall and along the ladder of a
/// deeper bulkhead, a rail past each inside corner, all of it only where the bulkhead is. Rungs stand at both ends and evenly
/// between, at most the rung spacing on centre.
/// </summary>
internal sealed class BoxFrame(FramedRoom room, BulkheadSolid solid, BulkheadRules rules, RailBacking backing)
{
    private readonly FrameWish _wood = solid.Wish.Frame;
    private readonly List<PlannedMember> _members = [];
    private readonly InsideStretches _inside = new(solid.Footprint);

    public IReadOnlyList<PlannedMember> Members => _members;

    /// <summary>Where rungs stand along a side, from its start; what the boards' joints are put on.</summary>
    public Dictionary<Side, List<double>> Rungs { get; } = [];

    private long Thick => _wood.Thickness.Units;

    private long Longest => _wood.Stock.Max(s => s.Length.Units) - rules.EndTrim;

    public void Lay(IReadOnlyList<Side> loop, BoxCorners corners)
    {
        for (var i = 0; i < loop.Count; i++)
        {
            if (!loop[i].Carries)
            {
                continue;
            }

            var side = loop[i];
            var (from, to, cut) = corners.Centre(i);
            foreach (var (start, end, longPoint) in Inside(side, from, to, cut))
            {
                switch (side.Kind)
                {
                    case SideKind.Wall:
                        Level(MemberRole.Ledger, side, start, end, longPoint, solid.FrameBottom, new Held("wall", [side.Other]));
                        break;
                    case SideKind.Rest:
                        Level(MemberRole.Ledger, side, start, end, longPoint, solid.FrameBottom, new Held("bulkhead", [side.Other]));
                        break;
                    default:
                        Ladder(side, start, end, longPoint);
                        break;
                }
            }
        }
    }

    public void Lay(Carrier carrier)
    {
        foreach (var (from, to, cut) in Inside(carrier.Line, carrier.From, carrier.To, carrier.To - carrier.From))
        {
            Level(MemberRole.Rail, carrier.Line, from, to, cut, solid.FrameBottom, null);
        }
    }

    /// <summary>Ties of a part, square to its longest side, between the wood along its edges; returns where they cross that side's line.</summary>
    public List<double> Ties(BoxPart part)
    {
        var ring = Inner(part);
        var places = new List<double>();
        if (ring.Count < 3)
        {
            return places;
        }

        var (a, b) = (part.Axis, (U: -part.Axis.V, V: part.Axis.U));
        var (low, high) = (ring.Min(p => Dot(p, a)), ring.Max(p => Dot(p, a)));
        var spaces = (int)Math.Ceiling((high - low) / (rules.RungSpacing - room.GridStep));
        for (var k = 1; k < spaces; k++)
        {
            var at = Snapped(low + ((high - low) * k / spaces), a);
            var (from, to) = Across(ring, a, b, at);
            if (to - from < 2 * Thick)
            {
                continue;
            }

            places.Add(at);
            foreach (var (start, end) in _inside.Of(Place(a, b, at, from), Place(a, b, at, to)))
            {
                var (one, other) = (Place(a, b, at, from + start), Place(a, b, at, from + end));
                var length = (long)Math.Round(Rings.DistanceBetween(one, other));
                if (length >= 2 * Thick)
                {
                    _members.Add(new PlannedMember(MemberRole.Tie, one, other, solid.FrameBottom - Thick, solid.FrameBottom, length, length));
                }
            }
        }

        return places;
    }

    private void Ladder(Side side, double from, double to, double cut)
    {
        var height = solid.FrameBottom - solid.Top - (2 * Thick);
        var (held, blocks) = backing.Of(side, from, to, solid);
        Level(MemberRole.Rail, side, from, to, cut, solid.Top + Thick, held);
        _members.AddRange(blocks);
        Level(MemberRole.Rail, side, from, to, cut, solid.FrameBottom, null);
        var middle = (side.Outer + side.Inner) / 2.0;
        var (first, last) = (from + (Thick / 2.0), to - (Thick / 2.0));
        var spaces = Math.Max(1, (int)Math.Ceiling((last - first) / (rules.RungSpacing - room.GridStep)));
        var places = new List<double>();
        for (var k = 0; k <= spaces; k++)
        {
            var start = Dot((side.From.U, side.From.V), side.Along);
            var even = first + ((last - first) * k / spaces);
            var at = k == 0 || k == spaces ? even : Snapped(start + even, side.Along) - start;
            places.Add(at);
            if (height >= Thick / 2)
            {
                var place = side.At(at, middle);
                _members.Add(new PlannedMember(MemberRole.Rung, place, place, solid.Top + Thick, solid.FrameBottom - Thick, height, height));
            }
        }

        Rungs[side] = [.. Rungs.GetValueOrDefault(side) ?? [], .. places];
    }

    // the stretches of a line along a side where there is bulkhead, none shorter than the wood is thick; a slanting end keeps its long point
    private IEnumerable<(double From, double To, double Cut)> Inside(Side side, double from, double to, double cut)
    {
        if (to - from < Thick)
        {
            yield break;
        }

        var middle = (side.Outer + side.Inner) / 2.0;
        var (slant, last) = (cut - (to - from), to - from - (0.2 * Measures.Length.PerMillimetre));
        foreach (var (start, end) in _inside.Of(side.At(from, middle), side.At(to, middle)))
        {
            if (end - start >= Thick)
            {
                var whole = start < 0.2 * Measures.Length.PerMillimetre && end > last;
                yield return (from + (whole ? 0 : start), whole ? to : from + end, whole ? cut : end - start + (slant / 2));
            }
        }
    }

    // longer than the stock: in equal parts
    private void Level(MemberRole role, Side side, double from, double to, double cut, long bottom, Held? held)
    {
        var middle = (side.Outer + side.Inner) / 2.0;
        var parts = Math.Max(1, (int)Math.Ceiling(cut / Longest));
        for (var k = 0; k < parts; k++)
        {
            var (one, other) = (side.At(from + ((to - from) * k / parts), middle), side.At(from + ((to - from) * (k + 1) / parts), middle));
            var length = (long)Math.Round(Rings.DistanceBetween(one, other));
            var slant = parts == 1 ? cut - (to - from) : (k == 0 || k == parts - 1 ? (cut - (to - from)) / 2 : 0);
            _members.Add(new PlannedMember(role, one, other, bottom - Thick, bottom, length, Math.Max(length, (long)Math.Ceiling(length + slant - 1)), held));
        }
    }

    private double Snapped(double at, (double U, double V) axis) =>
        Math.Abs(axis.V) < 1e-9 ? Math.Sign(axis.U) * room.SnapNear((long)Math.Round(at * Math.Sign(axis.U)))
        : Math.Abs(axis.U) < 1e-9 ? Math.Sign(axis.V) * room.SnapDownAcross((long)Math.Round(at * Math.Sign(axis.V)) + (room.GridStep / 2))
        : at;

    private static double Dot((double U, double V) place, (double U, double V) axis) => (place.U * axis.U) + (place.V * axis.V);

    private static Uv Place((double U, double V) a, (double U, double V) b, double along, double across) => new(
        (long)Math.Round((a.U * along) + (b.U * across)), (long)Math.Round((a.V * along) + (b.V * across)));

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

    private static (double From, double To) Across(List<(double U, double V)> ring, (double U, double V) a, (double U, double V) b, double at)
    {
        double from = double.MaxValue, to = double.MinValue;
        for (var i = 0; i < ring.Count; i++)
        {
            var (p, q) = (ring[i], ring[(i + 1) % ring.Count]);
            var (dp, dq) = (Dot(p, a) - at, Dot(q, a) - at);
            if (dp < 0 != dq < 0)
            {
                var share = dp / (dp - dq);
                var across = Dot((p.U + ((q.U - p.U) * share), p.V + ((q.V - p.V) * share)), b);
                (from, to) = (Math.Min(from, across), Math.Max(to, across));
            }
        }

        return (from, to);
    }
}
