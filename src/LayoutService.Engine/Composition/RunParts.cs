using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>One connected part of a room whose joists run one way: its floor, the numbers of its fields, and its corners with the id of each edge.</summary>
internal sealed record RunArea(Footprint Floor, IReadOnlyList<int> Fields, IReadOnlyList<Uv> Corners, IReadOnlyList<string> EdgeIds);

/// <summary>
/// Divides a room along the lines where its joists change direction. Problem: the connected parts in which all joists run one way, each with the
/// walls and lines round it. Method: polygon overlay of the outline with the union of the regions of each run; corners of the
/// outline and of the neighbours are set into each ring, so that every edge has one wall or one line at it. Cost:
/// corners × log corners for the overlays, parts × corners² for the edges; rooms have few of either.
/// </summary>
internal sealed class RunParts
{
    /// <summary>Two units of 1/8000 mm: what rounding a crossing to whole units leaves.</summary>
    private const double Near = 2;

    private readonly Survey _survey;
    private readonly PlanFrame _frame;

    private RunParts(Survey survey)
    {
        (_survey, _frame) = (survey, PlanFrame.Of(survey.Room.Outline, 0));
        Outline = [.. survey.Room.Outline.Select(_frame.In)];
    }

    /// <summary>The room's corners, from its lowest x and y.</summary>
    public Uv[] Outline { get; }

    public IReadOnlyList<RunArea> Areas { get; private set; } = [];

    public IReadOnlyList<RunBreak> Breaks { get; private set; } = [];

    /// <summary>Ends of each line, as <see cref="Breaks"/>.</summary>
    public IReadOnlyList<(Uv From, Uv To)> Lines { get; private set; } = [];

    public Finding? Obstacle { get; private set; }

    /// <summary>True where the joists of a room run more than one way.</summary>
    public static bool In(Survey survey)
    {
        for (var i = 1; i < survey.JoistFields.Count; i++)
        {
            if (survey.JoistFields[i].RunDegrees != survey.JoistFields[0].RunDegrees)
            {
                return true;
            }
        }

        return false;
    }

    public static RunParts Of(Survey survey)
    {
        var parts = new RunParts(survey);
        parts.Divide();
        return parts;
    }

    public Uv At(Point place) => _frame.In(place);

    public Point Out(Uv place) => _frame.Out(place);

    public Footprint Ring(IReadOnlyList<Point> ring) => Footprint.Of([[.. ring.Select(_frame.In)]]);

    private void Divide()
    {
        var fields = _survey.JoistFields;
        var room = Footprint.Of([Outline]);
        var regions = fields.Select(f => f.Region is { } region ? Ring(region).Meet(room) : room).ToList();
        var left = room;
        var floors = new List<(Footprint Floor, List<int> Fields)>();
        foreach (var run in Enumerable.Range(0, fields.Count).GroupBy(f => fields[f].RunDegrees))
        {
            var floor = run.Aggregate(Footprint.Of([]), (sum, f) => sum.Plus(regions[f]));
            if (floors.Find(other => !other.Floor.Meet(floor).Empty) is { Fields: not null } over)
            {
                Obstacle = RunFindings.FieldsOverlap([.. over.Fields.Concat(run).Select(f => fields[f].Id)]);
                return;
            }

            floors.Add((floor, [.. run]));
            left = left.Minus(floor);
        }

        if (!left.Empty)
        {
            Obstacle = RunFindings.NotCovered([.. fields.Select(f => f.Id)]);
            return;
        }

        // in the order of the fields, so that a mirrored room has its parts in the same order
        var patches = floors.SelectMany(f => f.Floor.Patches.Select(p => (Patch: p, f.Fields)).OrderBy(p => FirstOver(p.Patch, p.Fields, regions))).ToList();
        if (patches.Find(p => p.Patch.Holes.Count > 0) is { Patch: not null } ring)
        {
            Obstacle = RunFindings.FieldIsRing([.. ring.Fields.Select(f => fields[f].Id)]);
            return;
        }

        var rings = patches.ConvertAll(p => Split(p.Patch.Outer, [.. Outline, .. patches.SelectMany(o => o.Patch.Outer)]));
        FindLines(rings, [.. patches.Select(p => p.Fields)], regions);
        Areas = [.. patches.Select((p, i) =>
        {
            var floor = Footprint.Of([p.Patch.Outer]);
            return new RunArea(floor, [.. p.Fields.Where(f => !regions[f].Meet(floor).Empty)], rings[i], [.. Edges(rings[i]).Select(IdAt)]);
        })];
    }

    private static int FirstOver(Patch patch, List<int> fields, List<Footprint> regions)
    {
        var floor = Footprint.Of([patch.Outer]);
        return fields.FirstOrDefault(f => !regions[f].Meet(floor).Empty);
    }

    private static IEnumerable<(Uv From, Uv To)> Edges(IReadOnlyList<Uv> ring) => ring.Select((from, i) => (from, ring[(i + 1) % ring.Count]));

    private static Uv[] Split(IReadOnlyList<Uv> ring, IReadOnlyList<Uv> corners) =>
        [.. Edges(ring).SelectMany(edge => corners
            .Where(c => c != edge.From && c != edge.To && Rings.Distance(c, edge.From, edge.To) <= Near
                && Rings.DistanceBetween(c, edge.From) > Near && Rings.DistanceBetween(c, edge.To) > Near)
            .Distinct()
            .OrderBy(c => Rings.DistanceBetween(c, edge.From))
            .Prepend(edge.From))];

    private static Uv Middle((Uv From, Uv To) edge) => new((edge.From.U + edge.To.U) / 2, (edge.From.V + edge.To.V) / 2);

    private int? WallAt((Uv From, Uv To) edge)
    {
        for (var i = 0; i < Outline.Length; i++)
        {
            if (Rings.Distance(Middle(edge), Outline[i], Outline[(i + 1) % Outline.Length]) <= Near)
            {
                return i;
            }
        }

        return null;
    }

    private string IdAt((Uv From, Uv To) edge) => WallAt(edge) is { } wall
        ? $"W{wall + 1}"
        : Breaks[Enumerable.Range(0, Lines.Count).MinBy(i => Rings.Distance(Middle(edge), Lines[i].From, Lines[i].To))].Id;

    // each line once, from the side that comes first; edges in one line with the same parts at both sides are one
    private void FindLines(List<Uv[]> rings, IReadOnlyList<List<int>> fields, List<Footprint> regions)
    {
        var lines = new List<(Uv From, Uv To, int Other)>();
        var sides = new List<IReadOnlyList<string>>();
        for (var a = 0; a < rings.Count; a++)
        {
            var first = lines.Count;
            foreach (var edge in Edges(rings[a]).Where(e => WallAt(e) is null))
            {
                var other = Enumerable.Range(0, rings.Count).FirstOrDefault(
                    b => b != a && Edges(rings[b]).Any(e => Rings.Distance(Middle(edge), e.From, e.To) <= Near), a);
                if (other <= a)
                {
                    continue;
                }

                if (lines.Count > first && lines[^1].Other == other && lines[^1].To == edge.From && Rings.Turn(lines[^1].From, edge.From, edge.To) == 0)
                {
                    lines[^1] = lines[^1] with { To = edge.To };
                    continue;
                }

                lines.Add((edge.From, edge.To, other));
                sides.Add([.. fields[a].Concat(fields[other]).Where(f => regions[f].Holds(Middle(edge))).Order().Select(f => _survey.JoistFields[f].Id)]);
            }
        }

        Lines = [.. lines.Select(l => (l.From, l.To))];
        Breaks = [.. lines.Select((l, i) => new RunBreak(
            $"X{i + 1}", Out(l.From), Out(l.To), new Length((long)Math.Round(Rings.DistanceBetween(l.From, l.To))), sides[i]))];
    }
}
