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
            var start = Axis.Along((side.From.U, side.From.V), side.Along);
            var even = first + ((last - first) * k / spaces);
            var at = k == 0 || k == spaces ? even : Axis.Snapped(room, start + even, side.Along) - start;
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
}
