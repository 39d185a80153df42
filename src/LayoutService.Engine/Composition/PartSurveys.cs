using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>The survey of each part of a room whose joists run more than one way: what lies in it, in its own measures across the joists.</summary>
internal sealed class PartSurveys(Survey survey, RunParts parts)
{
    private IReadOnlyList<Point> Around { get; } =
    [
        .. survey.Room.Outline,
        .. parts.Breaks.SelectMany(b => new[] { b.From, b.To }),
        .. survey.JoistFields.Select(f => f.RunDegrees).Distinct().SelectMany(degrees => JoistEnds(survey, degrees)),
    ];

    /// <summary>Surveys in the order of the parts, or what cannot be divided.</summary>
    public (IReadOnlyList<Survey> Surveys, IReadOnlyList<Finding> Obstacles) Of()
    {
        var obstacles = Crossing().ToList();
        return obstacles.Count > 0 ? ([], obstacles) : ([.. parts.Areas.Select(Part)], []);
    }

    private static IEnumerable<Point> JoistEnds(Survey survey, decimal degrees)
    {
        var frame = PlanFrame.Of(survey.Room.Outline, degrees);
        var fields = survey with { JoistFields = [.. survey.JoistFields.Where(f => f.RunDegrees == degrees)] };
        return FloorJoists.MembersOf(fields, frame).SelectMany(j => new[] { frame.Out(new Uv(j.Along.Lo, j.At)), frame.Out(new Uv(j.Along.Hi, j.At)) });
    }

    // bulkheads and partitions are carried by rows and blocks of one part
    private IEnumerable<Finding> Crossing()
    {
        var frame = PlanFrame.Of(survey.Room.Outline, 0);
        foreach (var solid in BulkheadSolids.Of(survey, frame))
        {
            if (Met(solid.Footprint) is { Count: > 0 } lines)
            {
                yield return RunFindings.Crosses("bulkhead", solid.Id, lines);
            }
        }

        foreach (var partition in FramedPartition.Of(survey, frame))
        {
            if (Met(partition.Footprint) is { Count: > 0 } lines)
            {
                yield return RunFindings.Crosses("partition", partition.Wish.Id, lines);
            }
        }
    }

    private List<string> Met(Footprint footprint) =>
        [.. parts.Breaks.Where((_, i) => !footprint.Meet(Footprint.Along([[parts.Lines[i].From, parts.Lines[i].To]], Length.PerMillimetre)).Empty).Select(b => b.Id)];

    private Survey Part(RunArea area)
    {
        var outline = area.Corners.Select(parts.Out).ToList();
        var degrees = survey.JoistFields[area.Fields[0]].RunDegrees;
        var (whole, own) = (PlanFrame.Of(survey.Room.Outline, degrees), PlanFrame.Of(outline, degrees));
        var first = PlanFrame.Of(survey.Room.Outline, survey.JoistFields[0].RunDegrees);
        var (there, here) = (whole.In(outline[0]), own.In(outline[0]));
        var part = new RunPart
        {
            EdgeIds = area.EdgeIds,
            OnLine = area.EdgeIds.Index().Where(e => !e.Item.StartsWith('W')).Select(e => e.Index).ToHashSet(),
            Fields = area.Fields,
            RunDegrees = degrees,
            Around = Around,
            Size = own.SizeU,
            Along = there.U - here.U,
            Across = there.V - here.V,
            Extent = Math.Max(first.SizeU, first.SizeV),
        };
        return survey with
        {
            Part = part,
            Room = Room(area, outline),
            JoistFields = [.. area.Fields.Select(f => Field(survey.JoistFields[f], area, part.Across, whole.SizeV, own.SizeV))],
            Services = survey.Services is { } services
                ? [.. services.Where(s => !Shape(s).Meet(area.Floor).Empty).Select(s => s with { NeedsReach = s.NeedsReach && area == ReachedFrom(s) })]
                : null,
            Bulkheads = [.. survey.Bulkheads.Where((b, i) => IsIn(i, area)).Select(b => b with { Edges = [.. b.Edges.SelectMany(e => EdgesOf(area, e))] })],
            Partitions = [.. survey.Partitions.Where(p => area == Holder(new Point((p.Line[0].X + p.Line[1].X) / 2, (p.Line[0].Y + p.Line[1].Y) / 2)))],
            Insulation = survey.Insulation is { } wish && (wish.Region is null || !parts.Ring(wish.Region).Meet(area.Floor).Empty)
                ? wish with { JoistDepths = [.. area.Fields.Select(f => wish.JoistDepths[f])] }
                : null,
            Fixtures = [.. survey.Fixtures.Where(f => area == Holder(f.At))],
            LightGrid = null,
            Sheets = survey.Sheets with { Stock = Stock(area) },
            Mounts = [.. survey.Mounts.Where(m => area == Holder(m.At))],
        };
    }

    // sheets of which there are so many go to the first part: two parts that each count on all of them could not be cut together
    private IReadOnlyList<SheetStock> Stock(RunArea area)
    {
        var stock = survey.Sheets.Stock;
        return area == parts.Areas[0] || stock.All(s => s.Quantity is not null) ? stock : [.. stock.Where(s => s.Quantity is null)];
    }

    // the part with the caller's door over it, else the first that one of its places lies in
    private RunArea? ReachedFrom(Service service)
    {
        var places = ServiceShapes.Places(service).ToList();
        return places.Where(p => AccessPanels.HasDoor(survey.Fixtures, p)).Concat(places).Select(Holder).FirstOrDefault(held => held is not null);
    }

    private RoomSurvey Room(RunArea area, List<Point> outline)
    {
        var room = survey.Room;
        var heights = room.Heights.Where(h => h.At is not { } at || area.Floor.Holds(parts.At(at))).ToList();
        return room with
        {
            Outline = outline,
            Walls = area.EdgeIds.Index().Where(e => e.Item.StartsWith('W') && room.Walls.ContainsKey(Wall(e.Item))).ToDictionary(e => e.Index, e => room.Walls[Wall(e.Item)]),
            Openings = [.. room.Openings.SelectMany(o => parts.Ring(o.Outline).Meet(area.Floor).Patches.Select(p => o with { Outline = [.. p.Outer.Select(parts.Out)] }))],
            Heights = heights.Count > 0 ? heights : room.Heights,
        };
    }

    private JoistField Field(JoistField field, RunArea area, long across, long roomSize, long size)
    {
        var centres = field.Positions?.Select(p => p.Units) ?? Spaced(field, roomSize);
        var half = field.Face.Units / 2;
        return field with
        {
            Spacing = null,
            First = null,
            Positions = [.. centres.Select(c => c - across).Where(c => c + half > 0 && c - half < size).Select(c => new Length(c))],
            Undersides = [.. field.Undersides.Where(r => area.Floor.Holds(parts.At(r.At)))],
        };
    }

    private static IEnumerable<long> Spaced(JoistField field, long end)
    {
        for (var at = field.First!.Value.Units; at <= end; at += field.Spacing!.Value.Units)
        {
            yield return at;
        }
    }

    // on the line itself the part that comes first
    private RunArea? Holder(Point place) => parts.Areas.FirstOrDefault(a => a.Floor.Holds(parts.At(place)));

    private bool IsIn(int bulkhead, RunArea area)
    {
        _solids ??= BulkheadSolids.Of(survey, PlanFrame.Of(survey.Room.Outline, 0));
        return !_solids[bulkhead].Footprint.Meet(area.Floor).Empty;
    }

    private IReadOnlyList<BulkheadSolid>? _solids;

    private static IEnumerable<int> EdgesOf(RunArea area, int edge) => area.EdgeIds.Index().Where(e => e.Item == $"W{edge + 1}").Select(e => e.Index);

    private static int Wall(string id) => int.Parse(id.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture) - 1;

    private Footprint Shape(Service service) =>
        service.Rings().Select(parts.Ring).Aggregate(Footprint.Of([]), (sum, ring) => sum.Plus(ring));
}
