using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// The surveyed room turned into the working frame and mirrored to a standard pose, so that a room, its mirror image and
/// the same room listed from another corner all get the same plan.
/// </summary>
public sealed class FramedRoom
{
    private static readonly (bool U, bool V)[] Mirrors = [(false, false), (true, false), (false, true), (true, true)];

    private FramedRoom(Survey survey, PlanFrame frame, FramedRoom? plain = null)
    {
        Survey = survey;
        Frame = frame;
        Field = survey.JoistFields[0];
        Outline = [.. survey.Room.Outline.Select(frame.In)];
        var openings = survey.Room.Openings.Select(o => ((IReadOnlyList<Uv>)[.. o.Outline.Select(frame.In)], o.Clearance.Units)).ToArray();
        OpeningRings = [.. openings.Select(o => o.Item1)];
        Solids = BulkheadSolids.Of(survey, frame);
        Partitions = FramedPartition.Of(survey, frame);
        IReadOnlyList<Footprint> taken =
            [.. Solids.Select(s => s.Wish.BoardedAbove ? Footprint.Of([]) : s.Footprint), .. Partitions.Where(p => p.Stands).Select(p => p.Footprint)];
        IReadOnlyList<Footprint> under = [.. Partitions.Where(p => p is { StopsBoard: true, Stands: false }).Select(p => p.Footprint)];
        Board = Region.Of(Outline, [.. openings.Select(o => (o.Item1, 0L))], [.. taken, .. under]);
        Straps = openings.All(o => o.Units == 0) && under.Count == 0 ? Board : Region.Of(Outline, openings, taken);
        InsideCorners = [.. RingCorners.Inside(Outline), .. WellCorners(survey)];
        Tips = [.. taken.All(t => t.Empty) && under.All(t => t.Empty) ? RingCorners.Tips(Outline, Rings.TwiceArea(Outline) > 0 ? 1 : -1) : RegionLoops.Of(Board).SelectMany(l => RingCorners.Tips(l, 1)).Distinct()];
        Joists = plain?.Joists ?? FloorJoists.Of(survey, frame);
        Levels = plain is null ? JoistLevels.Of(survey, frame, Joists) : plain.Levels;
        CourseBreaks = plain is null ? [] : [.. Joists.Zones.Skip(1).Select(z => z.Along.Lo).Where(v => Board.LowV < v && v < Board.HighV)];
        KeepOuts = plain?.KeepOuts.Turned() ?? KeepOuts.None;
        GridStep = survey.Units == UnitSystem.Imperial ? Length.PerSixteenth : Length.PerMillimetre;
        var (along, across) = survey.Part is { } part ? (part.Along, part.Across) : (0, 0);
        (FromRoom, var beside) = plain is null ? (along, across) : (across, along);
        GridPhase = Modulo(frame.MirrorU ? frame.SizeU + FromRoom : -FromRoom, GridStep);
        GridPhaseAcross = Modulo(frame.MirrorV ? frame.SizeV + beside : -beside, GridStep);
    }

    public Survey Survey { get; }

    public PlanFrame Frame { get; }

    /// <summary>The field that sets the direction of the rows, the first one given.</summary>
    public JoistField Field { get; }

    public IReadOnlyList<Uv> Outline { get; }

    public IReadOnlyList<IReadOnlyList<Uv>> OpeningRings { get; }

    /// <summary>The bulkheads as sized and joined, in the order of the survey.</summary>
    public IReadOnlyList<BulkheadSolid> Solids { get; }

    /// <summary>Walls inside the room, in the order of the survey.</summary>
    public IReadOnlyList<FramedPartition> Partitions { get; }

    /// <summary>What the board covers: the outline less the openings and the bulkheads that are not boarded above.</summary>
    public Region Board { get; }

    /// <summary>Where straps may lie: the outline less the openings with their clearances.</summary>
    public Region Straps { get; }

    /// <summary>Corners where the ceiling turns round a wall that stands into it, or round a stair or well: board cracks from them.</summary>
    public IReadOnlyList<Uv> InsideCorners { get; }

    /// <summary>Corners between oblique walls where an arm of the room ends in a point along the joists; HighEnd when it points towards +u.</summary>
    public IReadOnlyList<(long Along, bool HighEnd)> Tips { get; }

    /// <summary>Where other joists begin behind board that is screwed to them: a seam there keeps each butt on one joist. None on straps.</summary>
    public IReadOnlyList<long> CourseBreaks { get; }

    /// <summary>The joists of all fields and what they carry a row on.</summary>
    public FloorJoists Joists { get; }

    /// <summary>How level they are; null when nobody looked.</summary>
    public JoistLevels? Levels { get; }

    /// <summary>From the lowest coordinate along u of the whole room to this part's own; zero for a whole room.</summary>
    public long FromRoom { get; }

    /// <summary>Positions that we choose along the joists are whole steps from the outline's lowest coordinate.</summary>
    public long GridStep { get; }

    public long GridPhase { get; }

    public long GridPhaseAcross { get; }

    /// <summary>The holes that rows and seams keep off; none until they are known.</summary>
    public KeepOuts KeepOuts { get; private set; }

    /// <summary>
    /// The same room for board that is screwed to the joists: u runs across them and v along them, so that the board's long edges lie
    /// along u as ever. Joists and levels stay those of the room that it was turned from, in its frame.
    /// </summary>
    public FramedRoom Turned() => new(
        JoistLine.Stagger(this) is { } stagger && Survey.Sheets.MinStagger is null ? Survey with { Sheets = Survey.Sheets with { MinStagger = stagger } } : Survey, Frame.Turned(), this);

    /// <summary>The same room with holes to keep off.</summary>
    public FramedRoom With(KeepOuts holes)
    {
        var copy = (FramedRoom)MemberwiseClone();
        copy.KeepOuts = holes;
        return copy;
    }

    /// <summary>The greatest whole step at or below a place across the joists.</summary>
    public long SnapDownAcross(long across) => across - Modulo(across - GridPhaseAcross, GridStep);

    /// <summary>The least whole step at or above a place across the joists.</summary>
    public long SnapUpAcross(long across) => across + Modulo(GridPhaseAcross - across, GridStep);

    /// <summary>The nearest whole step across the joists.</summary>
    public long SnapNearAcross(long across) => SnapDownAcross(across + (GridStep / 2));

    /// <summary>The greatest whole step at or below a place along the joists.</summary>
    public long SnapDown(long along) => along - Modulo(along - GridPhase, GridStep);

    /// <summary>The least whole step at or above a place along the joists.</summary>
    public long SnapUp(long along) => along + Modulo(GridPhase - along, GridStep);

    public long SnapNear(long along) => SnapDown(along + (GridStep / 2));

    /// <summary>A distance as a person reads it off a tape, in the caller's units.</summary>
    public string Say(long units) => Survey.Units == UnitSystem.Imperial
        ? TapeText.Imperial(new Length(units), TapeRounding.Nearest)
        : TapeText.Metric(new Length(units), TapeRounding.Nearest);

    /// <summary>A size to cut as a person reads it off a tape: to the mark below.</summary>
    public string SayCut(Length size) => Survey.Units == UnitSystem.Imperial
        ? TapeText.Imperial(size, TapeRounding.Down)
        : TapeText.Metric(size, TapeRounding.Down);

    /// <summary>The bulkhead whose underside this fixture is let into, or null when it is in the ceiling.</summary>
    public BulkheadSolid? HostOf(FixtureWish wish)
    {
        for (var i = 0; i < Solids.Count; i++)
        {
            if (Solids[i].Footprint.Holds(Frame.In(wish.At)))
            {
                return Solids[i];
            }
        }

        return null;
    }

    public static FramedRoom Of(Survey survey)
    {
        var plain = PlanFrame.Of(survey.Room.Outline, survey.JoistFields[0].RunDegrees);
        var poses = Mirrors.Select(m => plain.Mirrored(m.U, m.V)).ToList();
        poses = PoseKeys.Least(poses, frame => Pose(survey, frame));
        if (poses.Count > 1 && survey.Bulkheads.Count > 0)
        {
            // what else decides the plan is alike in these; bulkheads take long to size, so they are asked last
            poses = PoseKeys.Least(poses, frame => SolidsKey(survey, frame));
        }

        return new FramedRoom(survey, poses[0]);
    }

    private IEnumerable<Uv> WellCorners(Survey survey) => OpeningRings.Where((_, i) => survey.Room.Openings[i].IsWell).SelectMany(ring => ring);

    private static long Modulo(long value, long step) => ((value % step) + step) % step;

    // all that decides the plan but the bulkheads, written so that the same room in the same pose gives the same list
    private static List<long> Pose(Survey survey, PlanFrame frame)
    {
        var key = new List<long>(64);
        key.AddRange(PoseKeys.RingKey([.. survey.Room.Outline.Select(frame.In)]));
        var openings = survey.Room.Openings
            .Select(o =>
            {
                var ring = PoseKeys.RingKey([.. o.Outline.Select(frame.In)]);
                ring.Add(o.Clearance.Units);
                ring.Add((long)o.Kind);
                return ring;
            })
            .ToList();
        openings.Sort(PoseKeys.Compare);
        openings.ForEach(key.AddRange);
        foreach (var edge in survey.Room.OpenEdges.Select(e => new[] { survey.Room.Outline[e], survey.Room.Outline[(e + 1) % survey.Room.Outline.Count] })
            .Select(ends => ends.Select(frame.In).Select(p => (p.U, p.V)).Order().ToList()).OrderBy(ends => ends[0]).ThenBy(ends => ends[1]))
        {
            key.AddRange(edge.SelectMany(p => new[] { p.U, p.V }));
        }

        var whole = new Span(0, frame.SizeU);
        foreach (var joist in FloorJoists.MembersOf(survey, frame).OrderBy(m => m.At).ThenBy(m => m.Along.Lo).ThenBy(m => m.Along.Hi).ThenBy(m => m.Face))
        {
            key.Add(joist.At);
            if (joist.Along != whole)
            {
                key.AddRange([joist.Along.Lo, joist.Along.Hi, joist.Face]);
            }
        }

        key.AddRange(survey.Fixtures
            .Select(f => (frame.In(f.At), Shape: (f.Cutout.Width.Units, f.Cutout.Height.Units, f.MaxShift.Units, f.BodyDepth.Units)))
            .Select(f => (f.Item1.U, f.Item1.V, f.Shape))
            .Order()
            .SelectMany(f => new[] { f.U, f.V, f.Shape.Item1, f.Shape.Item2, f.Shape.Item3, f.Shape.Item4 }));
        var services = (survey.Services ?? []).SelectMany(s => s.Rings().Select(ring =>
        {
            var own = PoseKeys.RingKey([.. ring.Select(frame.In)]);
            own.AddRange([s.Top.Units, s.Bottom.Units, s.Clearance.Units]);
            return own;
        })).ToList();
        services.Sort(PoseKeys.Compare);
        services.ForEach(key.AddRange);
        key.AddRange(survey.JoistFields.SelectMany(f => f.Undersides).Select(r => (frame.In(r.At), r.Level.Units)).Select(r => (r.Item1.U, r.Item1.V, r.Units)).Order()
            .SelectMany(r => new[] { r.U, r.V, r.Units }));
        key.AddRange(survey.Mounts.Select(m => frame.In(m.At)).Select(m => (m.U, m.V)).Order().SelectMany(m => new[] { m.U, m.V }));
        foreach (var partition in survey.Partitions)
        {
            // either end of a line may be named first
            var line = partition.Line.Select(frame.In).Select(p => new[] { p.U, p.V }).ToList();
            key.AddRange(new[] { line.SelectMany(p => p).ToList(), Enumerable.Reverse(line).SelectMany(p => p).ToList() }.Order(Comparer<List<long>>.Create(PoseKeys.Compare)).First());
            key.Add(partition.Thickness.Units);
        }

        key.AddRange((survey.Part?.Around ?? []).Select(frame.In).Select(p => (p.U, p.V)).Order().SelectMany(p => new[] { p.U, p.V }));
        return key;
    }

    private static List<long> SolidsKey(Survey survey, PlanFrame frame)
    {
        var key = new List<long>(64);
        foreach (var solid in BulkheadSolids.Of(survey, frame))
        {
            key.AddRange([solid.Underside, solid.Wish.BoardedAbove ? 1 : 0]);
            foreach (var ring in solid.Footprint.Patches.SelectMany(p => p.Loops))
            {
                key.AddRange(PoseKeys.RingKey([.. ring]));
            }
        }

        return key;
    }
}
