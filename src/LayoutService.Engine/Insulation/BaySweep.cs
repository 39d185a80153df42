using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Insulation;

/// <summary>A box in a bay with one verdict; the room may cover less of it.</summary>
public sealed record BayStretch(Span Along, Span Across, BayVerdict Verdict);

/// <summary>Walks along one bay and divides it where something begins or ends.</summary>
internal sealed class BaySweep(BattScene scene, BattBay bay, BayDepths depths)
{
    /// <summary>An obstacle that reaches less than this into a bay does not touch it: 0.1 mm, the rounding of a turned ring.</summary>
    private const long Grazing = Length.PerMillimetre / 10;

    public IEnumerable<BayStretch> Stretches()
    {
        if (scene.Region.AlongIn(bay.Across) is not { } whole)
        {
            return [];
        }

        whole = bay.Along is { } along ? whole.Meet(along) : whole;
        if (whole.Size <= 0)
        {
            return [];
        }

        var (met, panned) = Met(whole);
        return Joined(Columns(whole, met, panned));
    }

    private (List<(BattObstacle Obstacle, Span Along)> Met, List<BattObstacle> Panned) Met(Span whole)
    {
        var met = new List<(BattObstacle, Span)>();
        var panned = new List<BattObstacle>();
        foreach (var obstacle in scene.Obstacles)
        {
            if (Shared(obstacle.Across, bay.Across) <= Grazing || obstacle.Top >= 0 || obstacle.Bottom <= -bay.Depth)
            {
                continue;
            }

            if (obstacle.AlongIn(bay.Across) is { } along && Shared(along, whole) > Grazing)
            {
                if (obstacle.Kind == ObstacleKind.PannedReturn)
                {
                    panned.Add(obstacle);
                }

                met.Add((obstacle, along));
            }
        }

        return (met, panned);
    }

    // each stretch between two places where something changes, as boxes side by side across the bay
    private IEnumerable<(Span Along, bool AfterWall, List<BayStretch> Boxes)> Columns(
        Span whole, List<(BattObstacle Obstacle, Span Along)> met, List<BattObstacle> panned)
    {
        var walls = new HashSet<long>(scene.Region.Breaks(bay.Across));
        var places = new SortedSet<long>(walls) { whole.Lo, whole.Hi };
        foreach (var (_, along) in panned.Count > 0 ? [] : met)
        {
            places.Add(along.Lo);
            places.Add(along.Hi);
        }

        long? from = null;
        foreach (var to in places)
        {
            if (from is { } start && whole.Lo <= start && to <= whole.Hi)
            {
                var column = new Span(start, to);
                if (panned.Count > 0)
                {
                    yield return (column, walls.Contains(start), [new BayStretch(column, bay.Across, new BayVerdict(null, BattPlace.Clear, 0, 0, panned))]);
                    from = to;
                    continue;
                }

                var over = met.Where(m => m.Along.Overlaps(column)).Select(m => m.Obstacle).ToList();
                yield return (column, walls.Contains(start), [.. Boxes(column, over)]);
            }

            from = to;
        }
    }

    private List<BayStretch> Boxes(Span column, List<BattObstacle> over)
    {
        if (over.Count == 0)
        {
            return [new BayStretch(column, bay.Across, depths.Of([]))];
        }

        var places = new SortedSet<long> { bay.Across.Lo, bay.Across.Hi };
        foreach (var across in over.Select(o => o.Across))
        {
            places.Add(Math.Clamp(across.Lo, bay.Across.Lo, bay.Across.Hi));
            places.Add(Math.Clamp(across.Hi, bay.Across.Lo, bay.Across.Hi));
        }

        var boxes = new List<BayStretch>();
        var from = bay.Across.Lo;
        foreach (var to in places.Skip(1))
        {
            var strip = new Span(from, to);
            var box = new BayStretch(column, strip, depths.Of([.. over.Where(o => o.Across.Overlaps(strip))]));
            if (boxes.Count > 0 && boxes[^1].Verdict.Continues(box.Verdict))
            {
                boxes[^1] = boxes[^1] with { Across = new Span(boxes[^1].Across.Lo, to), Verdict = boxes[^1].Verdict.With(box.Verdict) };
            }
            else
            {
                boxes.Add(box);
            }

            from = to;
        }

        return boxes;
    }

    // columns whose boxes all go on as they are become one
    private static List<BayStretch> Joined(IEnumerable<(Span Along, bool AfterWall, List<BayStretch> Boxes)> columns)
    {
        var done = new List<BayStretch>();
        List<BayStretch> open = [];
        foreach (var (along, afterWall, boxes) in columns)
        {
            if (!afterWall && open.Count == boxes.Count && open.Zip(boxes).All(b => b.First.Across == b.Second.Across && b.First.Verdict.Continues(b.Second.Verdict)))
            {
                open = [.. open.Zip(boxes).Select(b => new BayStretch(new Span(b.First.Along.Lo, along.Hi), b.First.Across, b.First.Verdict.With(b.Second.Verdict)))];
            }
            else
            {
                done.AddRange(open);
                open = boxes;
            }
        }

        done.AddRange(open);
        return done;
    }

    private static long Shared(Span a, Span b) => Math.Min(a.Hi, b.Hi) - Math.Max(a.Lo, b.Lo);
}
