using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Writes the fixtures in the caller's coordinates, in the caller's order, with clearances measured to what was planned.</summary>
public sealed class FixtureWriter(FramedRoom room, ChosenCeiling chosen, CutBulkheads boxes, IReadOnlyList<PlacedFixture> placed)
{
    private readonly List<PlanBox> _straps = [.. chosen.Lines.SelectMany((line, i) => line.Stretches.Select(s =>
        new PlanBox(new Span(line.At - chosen.Rules.Half, line.At + chosen.Rules.Half), s.Across, i)))];

    private readonly string[] _joistNames = placed.Count == 0 ? [] : JoistWriter.Names(room);

    private readonly List<PlanBox> _services = placed.Count == 0 ? [] : ServiceBoxes.Of(room);

    public IReadOnlyList<PlannedFixture> Write(string[] rowIds, IReadOnlyList<BoardSeam> seams, StrappingPlan strapping)
    {
        if (placed.Count == 0)
        {
            return [];
        }

        var lines = seams.Select((s, i) => new PlanBox(
            new Span(Math.Min(s.From.U, s.To.U), Math.Max(s.From.U, s.To.U)), new Span(Math.Min(s.From.V, s.To.V), Math.Max(s.From.V, s.To.V)), i)).ToList();
        var trims = strapping.Rows
            .SelectMany(row => row.Reasons.Where(r => r.Code == "trimmed_at_hole").SelectMany(r => r.Of.Select(fixture => (fixture, row.Id))))
            .ToLookup(t => t.fixture, t => t.Id);
        return [.. placed.Select(p => Write(p, rowIds, lines, [.. trims[p.Wish.Id]]))];
    }

    private PlannedFixture Write(PlacedFixture fixture, string[] rowIds, List<PlanBox> seams, IReadOnlyList<string> trimmed)
    {
        var reasons = new List<Reason>();
        if (fixture.Moved)
        {
            reasons.AddRange(Why(fixture, fixture.Fled, rowIds, false));
        }

        reasons.AddRange(Why(fixture, fixture.Clashes, rowIds, true));
        if (trimmed.Count > 0)
        {
            reasons.Add(new Reason("strap", trimmed, "row_trimmed", "The row is trimmed round this hole, with headers."));
        }

        return new PlannedFixture
        {
            Wish = fixture.Wish,
            At = fixture.Moved ? room.Frame.Out(fixture.Hole.At) : fixture.Wish.At,
            Shift = new Length((long)Math.Round(Rings.DistanceBetween(fixture.Asked, fixture.Hole.At))),
            Clearances = fixture.Host < 0 ? Clearances(fixture, seams) : InBulkhead(fixture, boxes.Planned[fixture.Host]),
            BulkheadId = fixture.Host < 0 ? null : room.Solids[fixture.Host].Id,
            Status = fixture.Clashes.Count > 0 ? FixtureStatus.Conflict : fixture.Moved ? FixtureStatus.Moved : FixtureStatus.AsAsked,
            OpensOldCeiling = OldCeilingCuts.By(room, fixture),
            Reasons = reasons,
        };
    }

    private IEnumerable<Reason> Why(PlacedFixture fixture, IReadOnlyList<Clash> clashes, string[] rowIds, bool still)
    {
        foreach (var kind in clashes.GroupBy(c => c.Kind).OrderBy(g => g.Key))
        {
            var of = kind.Select(c => Name(fixture, c, rowIds)).OfType<string>().Distinct().ToList();
            var (word, what) = kind.Key switch
            {
                ClashKind.Wall => ("wall", room.Survey.Part is null ? "too near a wall or an opening" : "too near a wall, an opening or a line where the joists change direction"),
                ClashKind.Joist => ("joist", "at a joist, where its body or its driver box does not go"),
                ClashKind.Service => ("service", "at a service"),
                ClashKind.Fixture => ("fixture", "too near another hole"),
                ClashKind.Strap => ("strap", "at a strap"),
                ClashKind.Seam => ("seam", "at a seam of the board"),
                ClashKind.Frame => ("frame", "at wood of the bulkhead's frame"),
                ClashKind.Depth => ("depth", "deeper than the bulkhead is high inside"),
                _ => ("remote-box", "not fit for its driver box, which does not pass the hole or finds no bay"),
            };
            yield return still
                ? new Reason(word, of, $"conflict_{word.Replace('-', '_')}", $"It is {what}, and nothing within its allowance is free.")
                : new Reason(word, of, $"moved_off_{word.Replace('-', '_')}", $"Where it was asked for it would be {what}.");
        }
    }

    private string? Name(PlacedFixture fixture, Clash clash, string[] rowIds) => clash switch
    {
        { Kind: ClashKind.Joist } => _joistNames[room.Joists.Supports[clash.Index].FirstMember],
        { Kind: ClashKind.Service } => room.Survey.Services![clash.Index].Id,
        { Kind: ClashKind.Fixture } => Beside(fixture)[clash.Index].Wish.Id,
        { Kind: ClashKind.Frame } => BulkheadWriter.MemberId(room.Solids[fixture.Host], clash.Index),
        { Kind: ClashKind.Strap, Index: >= 0 } => rowIds[clash.Index],
        _ => null,
    };

    private HoleClearances Clearances(PlacedFixture fixture, List<PlanBox> seams)
    {
        var hole = fixture.Hole;
        var finish = (room.Survey.Sheets.Thickness * room.Survey.Sheets.Layers).Units + room.Survey.JoistToBoard.Units;
        return new HoleClearances(
            Nearest(_straps, hole),
            Nearest(room.Joists.Zones.SelectMany(z => Enumerable.Range(z.FirstSupport, z.SupportCount)
                .Select(i => new PlanBox(z.Along, new Span(room.Joists.Supports[i].Lo, room.Joists.Supports[i].Hi), i))), hole),
            Nearest(_services.Where(b => ServiceBoxes.Reaches(room.Survey.Services![b.Index], finish, fixture.Wish.BodyDepth.Units)), hole),
            Nearest(seams, hole),
            new Length((long)Math.Floor(Math.Max(0, room.Board.Edges.Min(e => HoleShapes.Distance(hole, e.From, e.To))))));
    }

    private HoleClearances InBulkhead(PlacedFixture fixture, PlannedBulkhead box)
    {
        var hole = fixture.Hole;
        var sides = box.Solid.Footprint.Patches.SelectMany(p => p.Loops).SelectMany(ring => ring.Select((c, i) => (From: c, To: ring[(i + 1) % ring.Count])));
        return new HoleClearances(
            Nearest(BoxFixtures.Wood(box), hole),
            null,
            Nearest(_services.Where(b => ServiceBoxes.Reaches(room.Survey.Services![b.Index], box.Solid.Underside, fixture.Wish.BodyDepth.Units)), hole),
            Nearest(BoxFixtures.Joints(box), hole),
            new Length((long)Math.Floor(Math.Max(0, sides.Min(s => HoleShapes.Distance(hole, s.From, s.To))))));
    }

    // those that were placed in one go with it: an index counts among them
    private List<PlacedFixture> Beside(PlacedFixture fixture) => fixture.Host < 0
        ? [.. placed.Where(p => p.Host < 0)]
        : [.. placed.Where(p => p.Host == fixture.Host && Patch(p) == Patch(fixture))];

    private int Patch(PlacedFixture fixture) => BoxFixtures.PatchOf(room, fixture.Wish);

    private static Length? Nearest(IEnumerable<PlanBox> footprints, Hole hole)
    {
        var nearest = footprints.Select(f => f.DistanceTo(hole)).DefaultIfEmpty(-1).Min();
        return nearest < 0 ? null : new Length((long)Math.Floor(nearest));
    }
}
