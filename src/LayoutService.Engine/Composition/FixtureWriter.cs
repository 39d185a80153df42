using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Writes the fixtures in the caller's coordinates, in the caller's order, with clearances measured to what was planned.</summary>
public sealed class FixtureWriter(FramedRoom room, ChosenCeiling chosen, IReadOnlyList<PlacedFixture> placed)
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
            reasons.AddRange(Why(fixture.Fled, rowIds, false));
        }

        reasons.AddRange(Why(fixture.Clashes, rowIds, true));
        if (trimmed.Count > 0)
        {
            reasons.Add(new Reason("strap", trimmed, "row_trimmed", "The row is trimmed round this hole, with headers."));
        }

        return new PlannedFixture
        {
            Wish = fixture.Wish,
            At = fixture.Moved ? room.Frame.Out(fixture.Hole.At) : fixture.Wish.At,
            Shift = new Length((long)Math.Round(Rings.DistanceBetween(fixture.Asked, fixture.Hole.At))),
            Clearances = Clearances(fixture, seams),
            Status = fixture.Clashes.Count > 0 ? FixtureStatus.Conflict : fixture.Moved ? FixtureStatus.Moved : FixtureStatus.AsAsked,
            Reasons = reasons,
        };
    }

    private IEnumerable<Reason> Why(IReadOnlyList<Clash> clashes, string[] rowIds, bool still)
    {
        foreach (var kind in clashes.GroupBy(c => c.Kind).OrderBy(g => g.Key))
        {
            var of = kind.Select(c => Name(c, rowIds)).OfType<string>().Distinct().ToList();
            var (word, what) = kind.Key switch
            {
                ClashKind.Wall => ("wall", "too near a wall or an opening"),
                ClashKind.Joist => ("joist", "at a joist, where its body or its driver box does not go"),
                ClashKind.Service => ("service", "at a service"),
                ClashKind.Fixture => ("fixture", "too near another hole"),
                ClashKind.Strap => ("strap", "at a strap"),
                ClashKind.Seam => ("seam", "at a seam of the board"),
                _ => ("remote-box", "not fit for its driver box, which does not pass the hole or finds no bay"),
            };
            yield return still
                ? new Reason(word, of, $"conflict_{word.Replace('-', '_')}", $"It is {what}, and nothing within its allowance is free.")
                : new Reason(word, of, $"moved_off_{word.Replace('-', '_')}", $"Where it was asked for it would be {what}.");
        }
    }

    private string? Name(Clash clash, string[] rowIds) => clash switch
    {
        { Kind: ClashKind.Joist } => _joistNames[room.Joists.Supports[clash.Index].FirstMember],
        { Kind: ClashKind.Service } => room.Survey.Services![clash.Index].Id,
        { Kind: ClashKind.Fixture } => placed[clash.Index].Wish.Id,
        { Kind: ClashKind.Strap, Index: >= 0 } => rowIds[clash.Index],
        _ => null,
    };

    private HoleClearances Clearances(PlacedFixture fixture, List<PlanBox> seams)
    {
        var hole = fixture.Hole;
        var finish = (room.Survey.Sheets.Thickness * room.Survey.Sheets.Layers).Units + room.Survey.Strapping.Thickness.Units;
        return new HoleClearances(
            Nearest(_straps, hole),
            Nearest(room.Joists.Zones.SelectMany(z => Enumerable.Range(z.FirstSupport, z.SupportCount)
                .Select(i => new PlanBox(z.Along, new Span(room.Joists.Supports[i].Lo, room.Joists.Supports[i].Hi), i))), hole),
            Nearest(_services.Where(b => ServiceBoxes.Reaches(room.Survey.Services![b.Index], finish, fixture.Wish.BodyDepth.Units)), hole),
            Nearest(seams, hole),
            new Length((long)Math.Floor(Math.Max(0, room.Board.Edges.Min(e => HoleShapes.Distance(hole, e.From, e.To))))));
    }

    private static Length? Nearest(IEnumerable<PlanBox> footprints, Hole hole)
    {
        var nearest = footprints.Select(f => f.DistanceTo(hole)).DefaultIfEmpty(-1).Min();
        return nearest < 0 ? null : new Length((long)Math.Floor(nearest));
    }
}
