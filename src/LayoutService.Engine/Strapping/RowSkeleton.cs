using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Which wall rows run through the whole room and which stay short, and how many rows lie between the through ones.
/// </summary>
public sealed record RowSkeleton
{
    /// <summary>Through rows that walls fix, rising. The first and last may be loose: the corner of an oblique wall, not a row.</summary>
    public required IReadOnlyList<long> Anchors { get; init; }

    public required bool LooseStart { get; init; }

    public required bool LooseEnd { get; init; }

    /// <summary>The anchors that are rows.</summary>
    public IEnumerable<long> Fixed => Anchors.Skip(LooseStart ? 1 : 0).SkipLast(LooseEnd ? 1 : 0);

    /// <summary>Wall rows that serve their own arm or opening only.</summary>
    public required IReadOnlyList<WallRow> Locals { get; init; }

    public required RowFiller Filler { get; init; }

    /// <summary>Rows between anchor i and i + 1: the least there can be.</summary>
    public required IReadOnlyList<int> Between { get; init; }

    /// <summary>Rows that cross the whole room at their place: the first key of the goal.</summary>
    public int FullRows => Anchors.Count - (LooseStart ? 1 : 0) - (LooseEnd ? 1 : 0) + Between.Sum();

    /// <summary>Wall length served by short rows: the second key.</summary>
    public long LocalLength => Locals.Sum(l => l.ServedLength);
}

/// <summary>
/// Problem: fewest full rows, then least length of short straps. An arm's wall row may run on through its neighbour (it
/// then counts there too) or stay in its arm (then the neighbour keeps its own spacing). Method: every choice of
/// through or short for the inner wall rows (2^walls, up to 10 walls; beyond that, all short and then one by one through
/// where that costs nothing), each filled by farthest reach. Exact for up to 10 inner wall rows.
/// </summary>
public static class RowSkeletons
{
    private const int ExactInnerRows = 10;

    /// <param name="room">The framed room.</param>
    /// <param name="rules">The distances that rows keep.</param>
    /// <param name="wallRows">Rows that walls ask for.</param>
    /// <param name="avoided">Stretches along the joists where no free row may stand.</param>
    public static RowSkeleton? Choose(FramedRoom room, RowRules rules, IReadOnlyList<WallRow> wallRows, IReadOnlyList<Span> avoided)
    {
        var low = room.Straps.LowU;
        var high = room.Straps.HighU;
        var starts = wallRows.Where(r => r.InsideUp && r.At - rules.Half - low <= RowRules.ClearGap).ToList();
        var ends = wallRows.Where(r => !r.InsideUp && high - r.At - rules.Half <= RowRules.ClearGap).ToList();
        if (starts.Count > 0 && ends.Count == 0)
        {
            ends = [.. starts.Where(r => high - r.At - rules.Half <= RowRules.ClearGap)];
        }

        // two arms may end on one line, and one of them have a jog there smaller than a face and a clear gap; a bulkhead may part two rows
        // of a wall with such a jog: then neither row runs through the other's arm
        return Choose(room, rules, wallRows, starts, ends, avoided)
            ?? (starts.Concat(ends).Any(Jogged) ? Choose(room, rules, wallRows, [.. starts.Where(r => !Jogged(r))], [.. ends.Where(r => !Jogged(r))], avoided) : null);

        bool Jogged(WallRow outer) => wallRows.Any(r => r.InsideUp == outer.InsideUp && r.At != outer.At && Math.Abs(r.At - outer.At) < rules.MinGap && !r.Overlaps(outer));
    }

    private static RowSkeleton? Choose(
        FramedRoom room, RowRules rules, IReadOnlyList<WallRow> wallRows, List<WallRow> starts, List<WallRow> ends, IReadOnlyList<Span> avoided)
    {
        // beside a bulkhead a row cut at a post may end just short of what a short one serves, and not of its strap
        return room.Solids.Count == 0 ? Choose(room, rules, wallRows, starts, ends, avoided, false)
            : Choose(room, rules, wallRows, starts, ends, avoided, true) ?? Choose(room, rules, wallRows, starts, ends, avoided, false);
    }

    private static RowSkeleton? Choose(
        FramedRoom room, RowRules rules, IReadOnlyList<WallRow> wallRows, List<WallRow> starts, List<WallRow> ends, IReadOnlyList<Span> avoided, bool wholeStraps)
    {
        var inner = wallRows.Where(r => !starts.Contains(r) && !ends.Contains(r)).ToList();
        var clearance = new ShortRowClearance(room, rules);
        var oblique = (starts.Count > 0 ? 0 : ObliqueReach.Of(room, rules, false), ends.Count > 0 ? 0 : ObliqueReach.Of(room, rules, true));
        RowSkeleton? best = null;
        if (inner.Count <= ExactInnerRows)
        {
            for (var through = (1 << inner.Count) - 1; through >= 0; through--)
            {
                Consider(i => (through >> i & 1) == 1);
            }

            return best;
        }

        var kept = new HashSet<int>();
        Consider(_ => false);
        for (var i = 0; i < inner.Count; i++)
        {
            var before = best;
            kept.Add(i);
            Consider(kept.Contains);
            if (ReferenceEquals(before, best))
            {
                kept.Remove(i);
            }
        }

        return best;

        void Consider(Func<int, bool> through)
        {
            WorkMeter.Spend(100L * (1 + inner.Count));
            var made = Build(room, rules, starts, ends, inner, avoided, clearance, oblique, through);
            if (made is not null && !(wholeStraps && made.Locals.Any(l => made.Fixed.Any(f => clearance.LiesOn(l, f))))
                && (best is null || (made.FullRows, made.LocalLength).CompareTo((best.FullRows, best.LocalLength)) < 0))
            {
                best = made;
            }
        }
    }

    private static RowSkeleton? Build(
        FramedRoom room, RowRules rules, List<WallRow> starts, List<WallRow> ends, List<WallRow> inner,
        IReadOnlyList<Span> avoided, ShortRowClearance clearance, (long Low, long High) oblique, Func<int, bool> through)
    {
        var fixedRows = starts.Concat(ends).Concat(inner.Where((_, i) => through(i))).OrderBy(r => r.At).ToList();
        var locals = inner.Where((_, i) => !through(i)).ToList();
        for (var i = 0; i + 1 < fixedRows.Count; i++)
        {
            var gap = fixedRows[i + 1].At - fixedRows[i].At;
            if (gap > 0 && gap < rules.MinGap && !(gap >= rules.Face && fixedRows[i].InsideUp && !fixedRows[i + 1].InsideUp))
            {
                return null;
            }
        }

        if (fixedRows.Any(f => locals.Any(l => Math.Abs(l.At - f.At) < rules.MinGap && !Apart(room, rules, f, l))))
        {
            return null;
        }

        var filler = new RowFiller(
            room,
            rules,
            [.. locals.SelectMany(clearance.Of), .. avoided],
            [.. locals.Where(l => !l.BothWalls && !FacedNear(rules, l, starts, ends, inner)).Select(l => Window(rules, l)), .. Tips(room, rules)],
            oblique);
        var anchors = fixedRows.Select(r => r.At).Distinct().ToList();
        var (looseStart, looseEnd) = (starts.Count == 0, ends.Count == 0);
        if (looseStart)
        {
            anchors.Insert(0, room.Straps.LowU);
        }

        if (looseEnd)
        {
            anchors.Add(room.Straps.HighU);
        }

        var between = new int[anchors.Count - 1];
        for (var i = 0; i + 1 < anchors.Count; i++)
        {
            var rows = filler.Fill(
                anchors[i], anchors[i + 1], looseStart && i == 0, looseEnd && i == anchors.Count - 2, false);
            if (rows is null && anchors[i + 1] - anchors[i] > rules.MaxSpacing)
            {
                return null;
            }

            between[i] = rows?.Count ?? 0;
        }

        return new RowSkeleton
        {
            Anchors = anchors,
            LooseStart = looseStart,
            LooseEnd = looseEnd,
            Locals = locals,
            Filler = filler,
            Between = between,
        };
    }

    // a through row and a short one may be close when the through one does not reach into the short one's arm
    private static bool Apart(FramedRoom room, RowRules rules, WallRow through, WallRow local) =>
        !room.Straps.AcrossAt(through.At, rules.Half).Any(s => local.Across.Any(a => new Span(a.Lo - rules.Face, a.Hi + rules.Face).Overlaps(s)));

    // an arm that ends in a point needs a row within reach of it, and not so near that it is a stub
    private static IEnumerable<Span> Tips(FramedRoom room, RowRules rules) => room.Tips
        .Where(t => t.Along > room.Straps.LowU && t.Along < room.Straps.HighU)
        .Select(t => t.HighEnd
            ? new Span(t.Along - rules.MaxSpacing - rules.Half, t.Along - RowFiller.LeastFromCorner)
            : new Span(t.Along + RowFiller.LeastFromCorner, t.Along + rules.MaxSpacing + rules.Half));

    // the arm behind a short wall row needs a row within reach, unless the wall opposite has its own there
    private static Span Window(RowRules rules, WallRow local) => local.InsideUp
        ? new Span(local.At + rules.MinGap, local.At + rules.MaxSpacing)
        : new Span(local.At - rules.MaxSpacing, local.At - rules.MinGap);

    private static bool FacedNear(RowRules rules, WallRow local, List<WallRow> starts, List<WallRow> ends, List<WallRow> inner) =>
        starts.Concat(ends).Concat(inner).Any(other =>
            other.InsideUp != local.InsideUp
            && (local.InsideUp ? other.At - local.At : local.At - other.At) is var gap
            && gap > 0 && gap <= rules.MaxSpacing
            && local.Across.All(a => other.Across.Any(o => o.Holds(a))));
}
