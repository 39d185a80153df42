using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// What a ladder's top rail is fastened to. At the joists: every joist that it crosses, the joist that it runs under, or
/// blocks between the two joists beside it, also where a short rail
/// across the joists lies between two of them. Below the board: every row that it crosses, or the row that it runs under; where
/// no row could stand, the joists through the gap.
/// </summary>
internal sealed class RailBacking(FramedRoom room, IReadOnlyList<BearingLine> rows, BulkheadRules rules)
{
    /// <summary>Wood that a screw needs of a joist or strap that runs with the rail: 16 mm. Common practice, no source.</summary>
    private const long LeastHold = 16 * Length.PerMillimetre;

    public (Held Held, IReadOnlyList<PlannedMember> Blocks) Of(Side side, double from, double to, BulkheadSolid solid)
    {
        var half = solid.Wish.Frame.Face.Units / 2;
        var middle = (side.Outer + side.Inner) / 2.0;
        var (one, other) = (side.At(from, middle), side.At(to, middle));
        var (along, across) = (Reach(one.U, other.U), Reach(one.V, other.V));
        if (solid.Wish.BoardedAbove)
        {
            var rows = Rows(along, across, half);
            if (rows.Count > 0)
            {
                return (new Held("row", rows), []);
            }
        }

        var joists = Joists(along, across, half);
        return joists.Count > 0
            ? (new Held("joist", joists), [])
            : Blocks(along, across, half, solid);
    }

    private List<int> Rows(Span along, Span across, long half) => [.. Enumerable.Range(0, rows.Count).Where(r =>
        along.Lo - half + LeastHold - (room.Survey.Strapping.Face.Units / 2) <= rows[r].At
        && rows[r].At <= along.Hi + half - LeastHold + (room.Survey.Strapping.Face.Units / 2)
        && rows[r].Stretches.Any(s => s.Lo < across.Hi + half && across.Lo - half < s.Hi))];

    // joists whose face gives enough wood to the rail
    private List<int> Joists(Span along, Span across, long half)
    {
        var zone = room.Joists.ZoneAt(along.Middle);
        return [.. Enumerable.Range(zone.FirstSupport, zone.SupportCount).Where(s =>
            new Span(across.Lo - half, across.Hi + half).Meet(new Span(room.Joists.Supports[s].Lo, room.Joists.Supports[s].Hi)).Size >= LeastHold)];
    }

    private (Held, IReadOnlyList<PlannedMember>) Blocks(Span along, Span across, long half, BulkheadSolid solid)
    {
        var wood = solid.Wish.Frame;
        var supports = room.Joists.At(along.Middle).ToArray();
        var (lowest, highest) = (room.Outline.Min(c => c.V), room.Outline.Max(c => c.V));
        var below = supports.Where(s => s.Hi <= across.Lo - half + LeastHold).Select(s => s.Hi).DefaultIfEmpty(lowest).Max();
        var above = supports.Where(s => s.Lo >= across.Hi + half - LeastHold).Select(s => s.Lo).DefaultIfEmpty(highest).Min();
        var inset = Math.Min(wood.Face.Units / 2, along.Size / 2);
        var (first, last) = (along.Lo + inset, along.Hi - inset);
        var spaces = Math.Max(1, (int)((last - first + rules.BlockSpacing - room.GridStep - 1) / (rules.BlockSpacing - room.GridStep)));
        var blocks = Enumerable.Range(0, spaces + 1)
            .Select(k => k == 0 || k == spaces ? first + ((last - first) * k / spaces) : room.SnapNear(first + ((last - first) * k / spaces)))
            .Distinct()
            .Select(u => new PlannedMember(
                MemberRole.Blocking, new Uv(u, below), new Uv(u, above), -wood.Thickness.Units, 0, above - below, above - below))
            .ToList();
        return (new Held("blocking", []), blocks);
    }

    private static Span Reach(long a, long b) => new(Math.Min(a, b), Math.Max(a, b));
}
