using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Sheets;

/// <summary>How far one board of a run reaches along and across the joists.</summary>
internal readonly record struct PartExtent(Span Along, Span Across);

/// <summary>
/// The boards that lie between two places of a run, before anything is cut: where a wall or an opening leaves only a part of the
/// course, the board there is narrower, and beside an opening there are two. Walks the run's trapezoids; cost: cells².
/// </summary>
internal sealed class RunExtents
{
    private readonly List<PartExtent> _parts = [];
    private readonly List<int> _group = [];
    private readonly List<PartExtent> _found = [];

    /// <summary>The boards between two places; the list serves until the next question.</summary>
    public List<PartExtent> Of(CourseRun run, long from, long to)
    {
        _found.Clear();
        _parts.Clear();
        _group.Clear();
        foreach (var cell in run.Cells)
        {
            if (Clip(cell, from, to) is { } part)
            {
                _group.Add(_parts.Count);
                _parts.Add(part);
            }
        }

        Join();
        for (var g = 0; g < _parts.Count; g++)
        {
            PartExtent? whole = null;
            for (var i = 0; i < _parts.Count; i++)
            {
                if (_group[i] == g)
                {
                    whole = whole is { } w ? new PartExtent(w.Along.Hull(_parts[i].Along), w.Across.Hull(_parts[i].Across)) : _parts[i];
                }
            }

            if (whole is { } found)
            {
                _found.Add(found);
            }
        }

        return _found;
    }

    // what lies of a trapezoid between the two places
    private static PartExtent? Clip(Cell cell, long from, long to)
    {
        if (cell.L0 == cell.L1 && cell.R0 == cell.R1)
        {
            var along = new Span(Math.Max(from, cell.L0), Math.Min(to, cell.R0));
            return along.Size > 0 ? new PartExtent(along, new Span(cell.V0, cell.V1)) : null;
        }

        // L(t) < to and R(t) > from, both straight in t
        var (t0, t1) = (0.0, 1.0);
        Keep(cell.L0 - to, cell.L1 - to);
        Keep(from - cell.R0, from - cell.R1);
        if (t1 <= t0)
        {
            return null;
        }

        var size = cell.V1 - cell.V0;
        var across = new Span(cell.V0 + (long)(size * t0), cell.V0 + (long)Math.Ceiling(size * t1));
        var low = Math.Max(from, (long)Math.Min(At(cell.L0, cell.L1, t0), At(cell.L0, cell.L1, t1)));
        var high = Math.Min(to, (long)Math.Ceiling(Math.Max(At(cell.R0, cell.R1, t0), At(cell.R0, cell.R1, t1))));
        return high > low && across.Size > 0 ? new PartExtent(new Span(low, high), across) : null;

        // the part of [t0, t1] where a straight line from a to b lies below zero
        void Keep(long a, long b)
        {
            if (a >= 0 && b >= 0)
            {
                t1 = -1;
            }
            else if (a >= 0)
            {
                t0 = Math.Max(t0, (double)a / (a - b));
            }
            else if (b >= 0)
            {
                t1 = Math.Min(t1, (double)a / (a - b));
            }
        }

        static double At(long at0, long at1, double t) => at0 + ((at1 - at0) * t);
    }

    private void Join()
    {
        for (var again = _parts.Count > 1; again;)
        {
            again = false;
            for (var i = 0; i < _parts.Count; i++)
            {
                for (var j = 0; j < _parts.Count; j++)
                {
                    if (_group[i] > _group[j] && Meets(_parts[i], _parts[j]))
                    {
                        _group[i] = _group[j];
                        again = true;
                    }
                }
            }
        }

        static bool Meets(PartExtent a, PartExtent b) =>
            (a.Across.Hi == b.Across.Lo || b.Across.Hi == a.Across.Lo) && a.Along.Overlaps(b.Along);
    }
}
