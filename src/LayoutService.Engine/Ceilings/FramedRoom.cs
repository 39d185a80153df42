using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// Joists whose faces touch (within the survey tolerance of 6 mm) carry a strap as one support. Lo and Hi are the
/// outer faces across the joists; <see cref="Members"/> are indices of the joists, sorted across the run.
/// </summary>
public readonly record struct Support(long Lo, long Hi, int FirstMember, int MemberCount)
{
    public long Middle => Lo + ((Hi - Lo) / 2);

    public bool Doubled => MemberCount > 1;
}

/// <summary>
/// The surveyed room turned into the working frame and mirrored to a standard pose, so that a room, its mirror image and
/// the same room listed from another corner all get the same plan.
/// </summary>
public sealed class FramedRoom
{
    /// <summary>Joists closer than this, face to face, act as one support. Common practice: the survey tolerance, 6 mm.</summary>
    private const long TouchingFaces = 6 * Length.PerMillimetre;

    private FramedRoom(Survey survey, PlanFrame frame)
    {
        Survey = survey;
        Frame = frame;
        Field = survey.JoistFields[0];
        Outline = [.. survey.Room.Outline.Select(frame.In)];
        var openings = survey.Room.Openings.Select(o => ((IReadOnlyList<Uv>)[.. o.Outline.Select(frame.In)], o.Clearance.Units)).ToArray();
        OpeningRings = [.. openings.Select(o => o.Item1)];
        Board = Region.Of(Outline, [.. openings.Select(o => (o.Item1, 0L))]);
        Straps = openings.All(o => o.Units == 0) ? Board : Region.Of(Outline, openings);
        InsideCorners = [.. FindInsideCorners(Outline)];
        Tips = [.. FindTips(Outline)];
        Joists = [.. JoistCentres(survey, frame)];
        Supports = Merge(Joists, Field.Face.Units);
        GridStep = survey.Units == UnitSystem.Imperial ? Length.PerSixteenth : Length.PerMillimetre;
        GridPhase = frame.MirrorU ? Modulo(frame.SizeU, GridStep) : 0;
        GridPhaseAcross = frame.MirrorV ? Modulo(frame.SizeV, GridStep) : 0;
    }

    public Survey Survey { get; }

    public PlanFrame Frame { get; }

    public JoistField Field { get; }

    public IReadOnlyList<Uv> Outline { get; }

    public IReadOnlyList<IReadOnlyList<Uv>> OpeningRings { get; }

    /// <summary>What the board covers: the outline less the openings.</summary>
    public Region Board { get; }

    /// <summary>Where straps may lie: the outline less the openings with their clearances.</summary>
    public Region Straps { get; }

    /// <summary>Corners of the outline where the room turns round a wall that stands into it.</summary>
    public IReadOnlyList<Uv> InsideCorners { get; }

    /// <summary>Corners between oblique walls where an arm of the room ends in a point along the joists; HighEnd when it points towards +u.</summary>
    public IReadOnlyList<(long Along, bool HighEnd)> Tips { get; }

    /// <summary>Joist centre lines across the run, rising.</summary>
    public long[] Joists { get; }

    public Support[] Supports { get; }

    /// <summary>Positions that we choose along the joists are whole steps from the outline's lowest coordinate.</summary>
    public long GridStep { get; }

    public long GridPhase { get; }

    public long GridPhaseAcross { get; }

    /// <summary>The greatest whole step at or below a place across the joists.</summary>
    public long SnapDownAcross(long across) => across - Modulo(across - GridPhaseAcross, GridStep);

    /// <summary>The least whole step at or above a place across the joists.</summary>
    public long SnapUpAcross(long across) => across + Modulo(GridPhaseAcross - across, GridStep);

    /// <summary>The greatest whole step at or below a place along the joists.</summary>
    public long SnapDown(long along) => along - Modulo(along - GridPhase, GridStep);

    /// <summary>The least whole step at or above a place along the joists.</summary>
    public long SnapUp(long along) => along + Modulo(GridPhase - along, GridStep);

    public long SnapNear(long along) => SnapDown(along + (GridStep / 2));

    /// <summary>A distance as a person reads it off a tape, in the caller's units.</summary>
    public string Say(long units) => Survey.Units == UnitSystem.Imperial
        ? TapeText.Imperial(new Length(units), TapeRounding.Nearest)
        : TapeText.Metric(new Length(units), TapeRounding.Nearest);

    public static FramedRoom Of(Survey survey)
    {
        var plain = PlanFrame.Of(survey.Room.Outline, survey.JoistFields[0].RunDegrees);
        PlanFrame? best = null;
        List<long>? bestKey = null;
        foreach (var (mirrorU, mirrorV) in new[] { (false, false), (true, false), (false, true), (true, true) })
        {
            var frame = plain.Mirrored(mirrorU, mirrorV);
            var key = Pose(survey, frame);
            if (bestKey is null || Compare(key, bestKey) < 0)
            {
                (best, bestKey) = (frame, key);
            }
        }

        return new FramedRoom(survey, best!);
    }

    private static IEnumerable<Uv> FindInsideCorners(IReadOnlyList<Uv> outline)
    {
        var sign = Rings.TwiceArea(outline) > 0 ? 1 : -1;
        for (var i = 0; i < outline.Count; i++)
        {
            var turn = Rings.Turn(outline[i], outline[(i + 1) % outline.Count], outline[(i + 2) % outline.Count]);
            if ((turn > 0 ? 1 : turn < 0 ? -1 : 0) == -sign)
            {
                yield return outline[(i + 1) % outline.Count];
            }
        }
    }

    private static IEnumerable<(long Along, bool HighEnd)> FindTips(IReadOnlyList<Uv> outline)
    {
        var sign = Rings.TwiceArea(outline) > 0 ? 1 : -1;
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b, c) = (outline[i], outline[(i + 1) % outline.Count], outline[(i + 2) % outline.Count]);
            var convex = Rings.Turn(a, b, c) > 0 == sign > 0;
            if (convex && ((a.U < b.U && c.U < b.U) || (a.U > b.U && c.U > b.U)))
            {
                yield return (b.U, a.U < b.U);
            }
        }
    }

    private static long Modulo(long value, long step) => ((value % step) + step) % step;

    private static IEnumerable<long> JoistCentres(Survey survey, PlanFrame frame)
    {
        var field = survey.JoistFields[0];
        var centres = field.Positions is { } positions
            ? positions.Select(p => p.Units)
            : Spaced(field.First!.Value.Units, field.Spacing!.Value.Units, frame.SizeV);
        return centres.Select(frame.AcrossIn).Order();
    }

    private static IEnumerable<long> Spaced(long first, long spacing, long end)
    {
        for (var at = first; at <= end; at += spacing)
        {
            yield return at;
        }
    }

    private static Support[] Merge(long[] joists, long face)
    {
        var merged = new List<Support>();
        for (var i = 0; i < joists.Length; i++)
        {
            var (lo, hi) = (joists[i] - (face / 2), joists[i] + (face / 2));
            if (merged.Count > 0 && lo <= merged[^1].Hi + TouchingFaces)
            {
                merged[^1] = merged[^1] with { Hi = Math.Max(hi, merged[^1].Hi), MemberCount = merged[^1].MemberCount + 1 };
            }
            else
            {
                merged.Add(new Support(lo, hi, i, 1));
            }
        }

        return [.. merged];
    }

    // all that decides the plan, written so that the same room in the same pose gives the same list
    private static List<long> Pose(Survey survey, PlanFrame frame)
    {
        var key = new List<long>(64);
        key.AddRange(RingKey([.. survey.Room.Outline.Select(frame.In)]));
        var openings = survey.Room.Openings
            .Select(o =>
            {
                var ring = RingKey([.. o.Outline.Select(frame.In)]);
                ring.Add(o.Clearance.Units);
                ring.Add((long)o.Kind);
                return ring;
            })
            .ToList();
        openings.Sort(Compare);
        openings.ForEach(key.AddRange);
        key.AddRange(JoistCentres(survey, frame));
        return key;
    }

    private static List<long> RingKey(Uv[] ring)
    {
        if (Rings.TwiceArea(ring) < 0)
        {
            Array.Reverse(ring);
        }

        ring = Rings.WithoutStraightCorners(ring);
        var first = 0;
        for (var i = 1; i < ring.Length; i++)
        {
            if ((ring[i].U, ring[i].V).CompareTo((ring[first].U, ring[first].V)) < 0)
            {
                first = i;
            }
        }

        var key = new List<long>(2 * ring.Length);
        for (var i = 0; i < ring.Length; i++)
        {
            var corner = ring[(first + i) % ring.Length];
            key.Add(corner.U);
            key.Add(corner.V);
        }

        return key;
    }

    private static int Compare(List<long> a, List<long> b)
    {
        for (var i = 0; i < Math.Min(a.Count, b.Count); i++)
        {
            if (a[i] != b[i])
            {
                return a[i].CompareTo(b[i]);
            }
        }

        return a.Count.CompareTo(b.Count);
    }
}
