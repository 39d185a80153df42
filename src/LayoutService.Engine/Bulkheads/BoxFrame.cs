using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// Frames the sides: a ladder of two rails and rungs along each face, a ledger along each wall and along the ladder of a
/// deeper bulkhead, a rail past each inside corner, all of it only where the bulkhead is. Rungs stand at both ends and evenly
/// between, at most the rung spacing on centre, and where a rail is jointed. Where a service goes through, from a shallower
/// bulkhead or out at an open edge, the ladder is open for it.
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

    private long Longest => rules.FrameLengths[_wood] - rules.EndTrim;

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

    /// <summary>Ties of a part (see <see cref="BoxTies"/>); returns where they cross its longest side's line.</summary>
    public IReadOnlyList<double> Ties(BoxPart part)
    {
        var ties = new BoxTies(room, part, _wood, rules.RungSpacing, Longest);
        foreach (var rail in ties.Rails)
        {
            foreach (var (start, end) in _inside.Of(rail.From, rail.To).Where(s => s.To - s.From >= 2 * Thick))
            {
                Level(MemberRole.Rail, rail, start, end, end - start, solid.FrameBottom, null);
            }
        }

        foreach (var tie in ties.Lines)
        {
            foreach (var (start, end) in _inside.Of(tie.From, tie.To))
            {
                var (one, other) = (tie.At(start, 0), tie.At(end, 0));
                var length = (long)Math.Round(Rings.DistanceBetween(one, other));
                if (length >= 2 * Thick)
                {
                    _members.Add(new PlannedMember(MemberRole.Tie, one, other, solid.FrameBottom - Thick, solid.FrameBottom, length, length));
                }
            }
        }

        return ties.Places;
    }

    private void Ladder(Side side, double from, double to, double cut)
    {
        var ways = new ServiceWays(room, side, from, to, solid.Top, Thick).Of();
        var places = Places(side, from + (Thick / 2.0), to - (Thick / 2.0));
        places = [.. places.Where(at => !ways.Exists(w => w.Meets(at))).Concat(ways.SelectMany(w => w.Posts(from, to))).Distinct().Order()];
        var below = RailJoints.Of(places, from, to, cut, Longest, []);
        var rungs = places.Concat(below).ToList();
        foreach (var (start, end) in ServiceWays.Between(ways, from, to).Where(s => s.To - s.From >= 2 * Thick))
        {
            var whole = start == from && end == to ? cut : end - start + ((cut - (to - from)) / 2);
            var (held, blocks) = backing.Of(side, start, end, solid);
            var above = RailJoints.Of(places, start, end, whole, Longest, below);
            var of = new List<int>();
            Level(MemberRole.Rail, side, start, end, whole, solid.Top + Thick, blocks.Count > 0 ? held with { Of = of } : held, above);
            blocks.ToList().ForEach(block => of.Add(Block(block)));
            rungs.AddRange(above);
        }

        Level(MemberRole.Rail, side, from, to, cut, solid.FrameBottom, null, below);
        foreach (var at in rungs.Distinct().Order().Where(at => !ways.Exists(w => w.Meets(at))))
        {
            Rung(side, at, solid.Top + Thick);
        }

        // under a service a header from post to post carries what hangs there
        foreach (var way in ways.Where(w => w.Bottom + (2 * Thick) <= solid.FrameBottom))
        {
            var (start, end) = (Math.Max(from, way.From), Math.Min(to, way.To));
            Level(MemberRole.Rail, side, start, end, end - start, way.Bottom + Thick, null);
            var spaces = Spaces(end - start);
            for (var k = 1; k < spaces; k++)
            {
                var at = start + ((end - start) * k / spaces);
                rungs.Add(at);
                Rung(side, at, way.Bottom + Thick);
            }
        }

        Rungs[side] = [.. Rungs.GetValueOrDefault(side) ?? [], .. rungs.Distinct().Order()];
    }

    private void Rung(Side side, double at, long top)
    {
        var height = solid.FrameBottom - Thick - top;
        if (height >= Thick / 2)
        {
            var place = side.At(at, (side.Outer + side.Inner) / 2.0);
            _members.Add(new PlannedMember(MemberRole.Rung, place, place, top, solid.FrameBottom - Thick, height, height));
        }
    }

    // rungs at both ends and evenly between
    private List<double> Places(Side side, double first, double last)
    {
        var spaces = Spaces(last - first);
        var start = Axis.Along((side.From.U, side.From.V), side.Along);
        return [.. Enumerable.Range(0, spaces + 1).Select(k => first + ((last - first) * k / spaces))
            .Select((even, k) => k == 0 || k == spaces ? even : Axis.Snapped(room, start + even, side.Along) - start)];
    }

    private int Spaces(double length) => Math.Max(1, (int)Math.Ceiling(length / (rules.RungSpacing - room.GridStep)));

    // one block serves both rails of a box where they run in one bay: in the same place it is the same, and two never lie in each other
    private int Block(PlannedMember block)
    {
        var beside = Enumerable.Range(0, _members.Count)
            .Where(n => _members[n].Role == MemberRole.Blocking && _members[n].From.V == block.From.V && _members[n].To.V == block.To.V
                && Math.Abs(_members[n].From.U - block.From.U) < Thick)
            .ToList();
        if (beside.Count == 0)
        {
            _members.Add(block);
            return _members.Count - 1;
        }

        return beside.MinBy(n => Math.Abs(_members[n].From.U - block.From.U));
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

    // longer than the stock: in parts between the joints given, else in equal ones
    private void Level(MemberRole role, Side side, double from, double to, double cut, long bottom, Held? held, IReadOnlyList<double>? joints = null)
    {
        var middle = (side.Outer + side.Inner) / 2.0;
        var parts = Math.Max(1, (int)Math.Ceiling(cut / Longest));
        joints ??= [.. Enumerable.Range(1, parts - 1).Select(k => from + ((to - from) * k / parts))];
        double[] stops = [from, .. joints, to];
        for (var k = 0; k + 1 < stops.Length; k++)
        {
            var (one, other) = (side.At(stops[k], middle), side.At(stops[k + 1], middle));
            var length = (long)Math.Round(Rings.DistanceBetween(one, other));
            var slant = stops.Length == 2 ? cut - (to - from) : (k == 0 || k == stops.Length - 2 ? (cut - (to - from)) / 2 : 0);
            _members.Add(new PlannedMember(role, one, other, bottom - Thick, bottom, length, Math.Max(length, (long)Math.Ceiling(length + slant - 1)), held));
        }
    }
}
