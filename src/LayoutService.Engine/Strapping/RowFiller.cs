using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Fills the distance between two fixed rows with the fewest rows. Problem: points on a line, neighbours at most
/// <c>MaxSpacing</c> and at least <c>MinGap</c> apart, none inside a forbidden stretch, at least one in every window.
/// Method: farthest reach (the greedy shortest path over positions): each row as far as it may go. By exchange this is
/// a least count, since a farther row never makes the rest harder. Cost: rows × (forbidden + windows).
/// </summary>
/// <param name="room">The framed room.</param>
/// <param name="rules">The distances that rows keep.</param>
/// <param name="forbidden">Open stretches where no row may stand.</param>
/// <param name="windows">Stretches that each want a row.</param>
/// <param name="oblique">How far past the spacing a row may stand from a loose end, low and high (see <see cref="ObliqueReach"/>).</param>
public sealed class RowFiller(
    FramedRoom room, RowRules rules, IReadOnlyList<Span> forbidden, IReadOnlyList<Span> windows, (long Low, long High) oblique)
{
    private readonly Span[] _forbidden = [.. forbidden];
    private readonly Span[] _windows = [.. windows];

    /// <summary>A row nearer than this to an oblique corner is a stub: 100 mm. Common practice, no source.</summary>
    public const long LeastFromCorner = 100 * Length.PerMillimetre;

    /// <summary>
    /// Rows strictly between two fixed rows, as far as they reach from the low end (or, mirrored, from the high end).
    /// A loose end is not a row but an oblique wall's nearest corner: only the greatest spacing counts from it, and half a
    /// face more where strap ends are cut square.
    /// Null when no filling keeps the distances.
    /// </summary>
    public List<long>? Fill(long from, long to, bool looseFrom, bool looseTo, bool fromHigh)
    {
        var rows = fromHigh
            ? Mirror(Reach(-to, -from, looseTo, looseFrom, true))
            : Reach(from, to, looseFrom, looseTo, false);
        if (rows is { Count: > 0 })
        {
            Settle(rows, from, to, looseFrom, looseTo);
        }

        return rows;
    }

    // a row right in an oblique wall's corner would be a stub: it stands halfway to the next instead
    private void Settle(List<long> rows, long from, long to, bool looseFrom, bool looseTo)
    {
        if (looseFrom && rows[0] - from < LeastFromCorner)
        {
            var next = rows.Count > 1 ? rows[1] : to;
            Move(0, (from + next) / 2, next);
        }

        if (looseTo && to - rows[^1] < LeastFromCorner)
        {
            var before = rows.Count > 1 ? rows[^2] : from;
            Move(rows.Count - 1, (before + to) / 2, before);
        }

        void Move(int index, long place, long neighbour)
        {
            place = room.SnapNear(place);
            if (!Blocked(place) && Math.Abs(neighbour - place) >= rules.MinGap)
            {
                rows[index] = place;
            }
        }
    }

    /// <summary>The same number of rows as nearly evenly as the tape's steps allow; null when an even row may not stand where it falls.</summary>
    public List<long>? FillEvenly(long from, long to, int count)
    {
        var rows = new List<long>(count);
        for (var i = 1; i <= count; i++)
        {
            rows.Add(room.SnapNear(from + ((to - from) * i / (count + 1))));
        }

        return Keeps(from, to, rows) ? rows : null;
    }

    private bool Keeps(long from, long to, List<long> rows)
    {
        var before = from;
        foreach (var row in rows.Append(to))
        {
            if (row - before > rules.MaxSpacing || row - before < rules.MinGap || (row != to && Blocked(row)))
            {
                return false;
            }

            before = row;
        }

        return Array.TrueForAll(_windows, w => w.Hi < from || w.Lo > to || w.Holds(from) || w.Holds(to) || rows.Any(w.Holds));
    }

    /// <summary>True when a row may stand here.</summary>
    public bool Allows(long row) => !Blocked(row);

    private bool Blocked(long row) => Array.Exists(_forbidden, f => f.Lo < row && row < f.Hi);

    private static List<long>? Mirror(List<long>? rows)
    {
        if (rows is null)
        {
            return null;
        }

        rows.Reverse();
        for (var i = 0; i < rows.Count; i++)
        {
            rows[i] = -rows[i];
        }

        return rows;
    }

    // all positions here are signed: mirrored when filling from the high end
    private List<long>? Reach(long from, long to, bool looseFrom, bool looseTo, bool mirrored)
    {
        var rows = new List<long>();
        var at = from;
        var (more, most) = mirrored ? (oblique.High, oblique.Low) : oblique;
        var last = looseTo ? most : 0;
        while (true)
        {
            var cap = WindowCap(at, mirrored);
            var first = rows.Count == 0 && looseFrom ? more : 0;
            // between two oblique walls there is a row, however near they are
            if (to - at <= rules.MaxSpacing + (rows.Count == 0 && looseFrom && looseTo ? 0 : first + last) && (cap >= to || cap == long.MaxValue))
            {
                break;
            }

            var next = Allowed(Math.Min(at + rules.MaxSpacing + first, cap), mirrored);
            if (next >= to)
            {
                next = Allowed(to - 1, mirrored);
            }

            var least = rows.Count == 0 && looseFrom ? 1 : rules.MinGap;
            if (next - at < least || rows.Count > 100_000)
            {
                return null;
            }

            rows.Add(next);
            at = next;
        }

        return looseTo || PushBack(rows, from, to, looseFrom, mirrored) ? rows : null;
    }

    // the last rows give way so that none stands too close to the row at the end
    private bool PushBack(List<long> rows, long from, long to, bool looseFrom, bool mirrored)
    {
        var bound = to;
        for (var i = rows.Count - 1; i >= 0 && bound - rows[i] < rules.MinGap; i--)
        {
            rows[i] = Allowed(bound - rules.MinGap, mirrored);
            if (bound - rows[i] > rules.MaxSpacing)
            {
                return false;
            }

            bound = rows[i];
        }

        return rows.Count == 0 || rows[0] - from >= (looseFrom ? 1 : rules.MinGap);
    }

    private long Allowed(long highest, bool mirrored)
    {
        var at = Snap(highest, mirrored);
        for (var again = true; again;)
        {
            again = false;
            foreach (var stretch in _forbidden)
            {
                var (lo, hi) = mirrored ? (-stretch.Hi, -stretch.Lo) : (stretch.Lo, stretch.Hi);
                if (lo < at && at < hi)
                {
                    at = Snap(lo, mirrored);
                    again = true;
                }
            }
        }

        return at;
    }

    private long Snap(long at, bool mirrored) => mirrored ? -room.SnapUp(-at) : room.SnapDown(at);

    // a window that lies wholly ahead may not be jumped
    private long WindowCap(long at, bool mirrored)
    {
        var cap = long.MaxValue;
        foreach (var window in _windows)
        {
            var (lo, hi) = mirrored ? (-window.Hi, -window.Lo) : (window.Lo, window.Hi);
            if (at < lo && hi < cap)
            {
                cap = hi;
            }
        }

        return cap;
    }
}
