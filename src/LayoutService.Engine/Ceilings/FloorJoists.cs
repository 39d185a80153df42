using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// Joists whose faces touch (within the survey tolerance of 6 mm) carry a strap as one support. Lo and Hi are the
/// outer faces across the joists; <see cref="FirstMember"/> is the index of the lowest joist in it.
/// </summary>
public readonly record struct Support(long Lo, long Hi, int FirstMember, int MemberCount)
{
    public long Middle => Lo + ((Hi - Lo) / 2);

    public bool Doubled => MemberCount > 1;
}

/// <summary>One joist in the working frame: its centre line across, how wide its nailing face is, where it runs, and its field's number.</summary>
public readonly record struct FramedJoist(long At, long Face, Span Along, int Field);

/// <summary>A stretch along the joists over which the same joists run: from Lo up to, not including, Hi. Its supports are rising.</summary>
public readonly record struct JoistZone(Span Along, int FirstSupport, int SupportCount, IReadOnlyList<int> Members);

/// <summary>
/// The joists of all fields, in the working frame. Where one field ends and another begins (joists lapped over a beam, a
/// trimmed well) the supports of a row depend on its place along the joists: the floor is cut into zones, each with its own.
/// A joist runs over its field's region from the lowest to the highest place that its face meets there. Zones: one pass over
/// the ends of the joists, O(ends × joists).
/// </summary>
public sealed class FloorJoists
{
    /// <summary>Joists closer than this, face to face, act as one support. Common practice: the survey tolerance, 6 mm.</summary>
    public const long TouchingFaces = 6 * Length.PerMillimetre;

    private FloorJoists(FramedJoist[] members, JoistZone[] zones, Support[] supports)
    {
        (Members, Zones, Supports) = (members, zones, supports);
    }

    /// <summary>Rising across the joists, then along them.</summary>
    public FramedJoist[] Members { get; }

    /// <summary>Rising along the joists; one when there is one field.</summary>
    public JoistZone[] Zones { get; }

    /// <summary>The supports of all zones, zone by zone.</summary>
    public Support[] Supports { get; }

    /// <summary>The zone that a place along the joists lies in.</summary>
    public JoistZone ZoneAt(long along)
    {
        for (var i = 0; i + 1 < Zones.Length; i++)
        {
            if (along < Zones[i].Along.Hi)
            {
                return Zones[i];
            }
        }

        return Zones[^1];
    }

    /// <summary>The supports that a row at a place along the joists crosses, rising.</summary>
    public ReadOnlySpan<Support> At(long along)
    {
        var zone = ZoneAt(along);
        return Supports.AsSpan(zone.FirstSupport, zone.SupportCount);
    }

    public static FloorJoists Of(Survey survey, PlanFrame frame)
    {
        var members = MembersOf(survey, frame).OrderBy(m => m.At).ThenBy(m => m.Along.Lo).ThenBy(m => m.Along.Hi).ThenBy(m => m.Face).ToArray();
        var ends = members.SelectMany(m => new[] { m.Along.Lo, m.Along.Hi }).Where(e => e > 0 && e < frame.SizeU).Append(0).Append(frame.SizeU).Distinct().Order().ToList();
        var (zones, supports) = (new List<JoistZone>(), new List<Support>());
        for (var i = 0; i + 1 < ends.Count; i++)
        {
            var over = Enumerable.Range(0, members.Length).Where(m => members[m].Along.Lo <= ends[i] && ends[i + 1] <= members[m].Along.Hi).ToList();
            if (zones.Count > 0 && zones[^1].Members.SequenceEqual(over))
            {
                zones[^1] = zones[^1] with { Along = zones[^1].Along with { Hi = ends[i + 1] } };
                continue;
            }

            var first = supports.Count;
            Merge(members, over, supports);
            zones.Add(new JoistZone(new Span(ends[i], ends[i + 1]), first, supports.Count - first, over));
        }

        return new FloorJoists(members, [.. zones], [.. supports]);
    }

    /// <summary>Every joist of every field; a field without a region runs over the whole room.</summary>
    public static IEnumerable<FramedJoist> MembersOf(Survey survey, PlanFrame frame)
    {
        for (var f = 0; f < survey.JoistFields.Count; f++)
        {
            var field = survey.JoistFields[f];
            var ring = field.Region?.Select(frame.In).ToArray();
            var half = field.Face.Units / 2;
            foreach (var centre in Centres(field, frame.SizeV))
            {
                var at = frame.AcrossIn(centre);
                if (ring is null)
                {
                    yield return new FramedJoist(at, field.Face.Units, new Span(0, frame.SizeU), f);
                }
                else if (Over(ring, at - half, at + half) is { } along && along.Meet(new Span(0, frame.SizeU)) is { Size: > 0 } inside)
                {
                    yield return new FramedJoist(at, field.Face.Units, inside, f);
                }
            }
        }
    }

    private static IEnumerable<long> Centres(JoistField field, long end)
    {
        if (field.Positions is { } positions)
        {
            foreach (var position in positions)
            {
                yield return position.Units;
            }

            yield break;
        }

        for (var at = field.First!.Value.Units; at <= end; at += field.Spacing!.Value.Units)
        {
            yield return at;
        }
    }

    // from the lowest to the highest place of a ring between two lines along the joists; null when it does not reach between them
    private static Span? Over(Uv[] ring, long low, long high)
    {
        var (lo, hi) = (long.MaxValue, long.MinValue);
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            var (from, to) = (Math.Max(Math.Min(a.V, b.V), low), Math.Min(Math.Max(a.V, b.V), high));
            if (from > to || (a.V == b.V && (a.V <= low || a.V >= high)))
            {
                continue;
            }

            Note(a, b, from);
            Note(a, b, to);
        }

        return hi > lo ? new Span(lo, hi) : null;

        void Note(Uv a, Uv b, long v)
        {
            var (first, last) = a.V == b.V ? (a.U, b.U) : (On(a, b, v), On(a, b, v));
            lo = Math.Min(lo, Math.Min(first, last));
            hi = Math.Max(hi, Math.Max(first, last));
        }

        static long On(Uv a, Uv b, long v) => a.U + (long)((Int128)(b.U - a.U) * (v - a.V) / (b.V - a.V));
    }

    private static void Merge(FramedJoist[] members, List<int> over, List<Support> into)
    {
        var first = into.Count;
        foreach (var i in over)
        {
            var half = members[i].Face / 2;
            var (lo, hi) = (members[i].At - half, members[i].At + half);
            if (into.Count > first && lo <= into[^1].Hi + TouchingFaces)
            {
                into[^1] = into[^1] with { Hi = Math.Max(hi, into[^1].Hi), MemberCount = into[^1].MemberCount + 1 };
            }
            else
            {
                into.Add(new Support(lo, hi, i, 1));
            }
        }
    }
}
