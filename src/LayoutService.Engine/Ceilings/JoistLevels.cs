using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>How high the underside of a joist is at one place, above (or, negative, below) a level line that all readings share.</summary>
public sealed record UndersideReading(Point At, Length Level);

/// <summary>
/// The undersides of the joists between the places where they were read. On a joist with readings the underside runs straight
/// from one reading to the next, and level beyond the outer ones; a joist without any lies in line between its nearest neighbours
/// of the same field that have some, or level with the nearest when it is the outermost. A reading is of the joist that it is
/// nearest to. Piecewise linear interpolation, O(log readings) a joist; why: a string or a straightedge says the same.
/// </summary>
public sealed class JoistLevels
{
    private readonly FramedJoist[] _joists;
    private readonly List<(long U, long Level)>?[] _read;

    private JoistLevels(FramedJoist[] joists, List<(long, long)>?[] read) => (_joists, _read) = (joists, read);

    /// <summary>Null when nothing was read.</summary>
    public static JoistLevels? Of(Survey survey, PlanFrame frame, FloorJoists joists)
    {
        if (survey.JoistFields.All(f => f.Undersides.Count == 0))
        {
            return null;
        }

        var read = new List<(long U, long Level)>?[joists.Members.Length];
        for (var f = 0; f < survey.JoistFields.Count; f++)
        {
            foreach (var reading in survey.JoistFields[f].Undersides)
            {
                var at = frame.In(reading.At);
                if (Nearest(joists.Members, f, at) is { } joist)
                {
                    (read[joist] ??= []).Add((at.U, reading.Level.Units));
                }
            }
        }

        // where one place was read twice the lower reading holds
        return new JoistLevels(joists.Members, [.. read.Select(list => list?.GroupBy(r => r.U).OrderBy(g => g.Key).Select(g => (g.Key, g.Min(r => r.Level))).ToList())]);
    }

    /// <summary>True when the joist was read itself.</summary>
    public bool Measured(int joist) => _read[joist] is not null;

    /// <summary>Level of a joist's underside at a place along it; null in a field without readings.</summary>
    public long? At(int joist, long u) => _read[joist] is { } own
        ? On(own, u)
        : Between(u, _joists[joist].At, Enumerable.Range(0, _joists.Length).Where(j => _joists[j].Field == _joists[joist].Field));

    /// <summary>Level of the plane that neighbouring undersides span at a place between them; null where none was read.</summary>
    public long? At(Uv place) => Between(place.U, place.V, Enumerable.Range(0, _joists.Length).Where(j => _joists[j].Along.Holds(place.U)));

    // the nearest of a field's joists that run there
    private static int? Nearest(FramedJoist[] joists, int field, Uv at)
    {
        int? best = null;
        for (var j = 0; j < joists.Length; j++)
        {
            if (joists[j].Field == field && joists[j].Along.Holds(at.U) && (best is not { } b || Math.Abs(joists[j].At - at.V) < Math.Abs(joists[b].At - at.V)))
            {
                best = j;
            }
        }

        return best;
    }

    private long? Between(long u, long v, IEnumerable<int> among)
    {
        int? below = null, above = null;
        foreach (var j in among.Where(j => _read[j] is not null))
        {
            below = _joists[j].At <= v && (below is not { } b || _joists[j].At > _joists[b].At) ? j : below;
            above = _joists[j].At >= v && (above is not { } a || _joists[j].At < _joists[a].At) ? j : above;
        }

        return (below, above) switch
        {
            (null, null) => null,
            ({ } low, null) => On(_read[low]!, u),
            (null, { } high) => On(_read[high]!, u),
            ({ } low, { } high) => Line((_joists[low].At, On(_read[low]!, u)), (_joists[high].At, On(_read[high]!, u)), v),
        };
    }

    private static long On(List<(long U, long Level)> read, long u)
    {
        if (u <= read[0].U)
        {
            return read[0].Level;
        }

        for (var i = 1; i < read.Count; i++)
        {
            if (u <= read[i].U)
            {
                return Line(read[i - 1], read[i], u);
            }
        }

        return read[^1].Level;
    }

    // to the nearest unit, whichever end is named first
    private static long Line((long At, long Level) a, (long At, long Level) b, long at)
    {
        if (a.At == b.At)
        {
            return Math.Min(a.Level, b.Level);
        }

        var span = (Int128)Math.Abs(b.At - a.At);
        var twice = (2 * (((Int128)a.Level * Math.Abs(b.At - at)) + ((Int128)b.Level * Math.Abs(at - a.At)))) + span;
        var (whole, rest) = (twice / (2 * span), twice % (2 * span));
        return (long)(rest < 0 ? whole - 1 : whole);
    }
}
