using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Fixtures;

/// <summary>
/// Places the fixtures. They are taken in order along and then across the joists, so that their order in the request does
/// not matter: each stays where it was asked for, or moves to the nearest place within its allowance that has no conflict,
/// or stays in conflict, which is told.
/// </summary>
public sealed class FixturePlanner
{
    private readonly FramedRoom _room;
    private readonly Region _board;
    private readonly FixtureRules _rules;
    private readonly FixtureObstacles _obstacles;
    private readonly FixtureWish[] _wishes;
    private readonly Uv[] _asked;
    private readonly List<Obstacle>[] _standing;

    /// <param name="room">The framed room.</param>
    /// <param name="rules">Distances that they keep.</param>
    /// <param name="wishes">The fixtures.</param>
    /// <param name="board">The board that they are let into, where that is not the ceiling's.</param>
    public FixturePlanner(FramedRoom room, FixtureRules rules, IReadOnlyList<FixtureWish> wishes, Region? board = null)
    {
        _board = board ?? room.Board;
        (_room, _rules, _obstacles) = (room, rules, new FixtureObstacles(room, rules));
        (_wishes, _asked) = ([.. wishes], [.. wishes.Select(w => room.Frame.In(w.At))]);
        Order = [.. Enumerable.Range(0, _wishes.Length).OrderBy(i => _asked[i].U).ThenBy(i => _asked[i].V)];
        _standing = [.. _wishes.Select((w, i) => _obstacles.Standing(w, FixtureHoles.Of(room, w, _asked[i])))];
    }

    /// <summary>Indices of the fixtures in the order in which they are placed.</summary>
    public IReadOnlyList<int> Order { get; }

    /// <summary>Places every fixture among what is known so far.</summary>
    /// <param name="straps">Straps that the holes keep off.</param>
    /// <param name="seams">Seams that the holes keep off.</param>
    public PlacedFixture[] Place(IReadOnlyList<PlanBox> straps, IReadOnlyList<PlanBox> seams)
    {
        var wood = _rules.Inside is null ? ClashKind.Strap : ClashKind.Frame;
        var holes = _wishes.Select((w, i) => FixtureHoles.Of(_room, w, _asked[i])).ToArray();
        var placed = new PlacedFixture[_wishes.Length];
        foreach (var i in Order)
        {
            var obstacles = Around(i, (_asked[i], _wishes[i].MaxShift.Units), holes, holes[i], (straps, wood), seams);
            WorkMeter.Spend(obstacles.Count * (1L + obstacles.Count));
            var fled = Clashes(obstacles, _wishes[i], holes[i]);
            if (fled.Count > 0 && _wishes[i].MaxShift.Units > 0
                && NearestPlace.Of(_room, _asked[i], _wishes[i].MaxShift.Units, obstacles, at => Fits(_wishes[i], holes[i] with { At = at }), WallPlaces(_wishes[i], holes[i])) is { } free)
            {
                holes[i] = holes[i] with { At = free };
            }

            placed[i] = new PlacedFixture(_wishes[i], _asked[i], holes[i], fled, []);
        }

        // a later fixture may have made room: what is left is told for where each one ended
        return [.. placed.Select((p, i) => p with { Clashes = Left(i) })];

        IReadOnlyList<Clash> Left(int i)
        {
            var obstacles = Around(i, (_asked[i], _wishes[i].MaxShift.Units), holes, holes[i], (straps, wood), seams);
            return Clashes(obstacles, _wishes[i], holes[i]);
        }
    }

    /// <summary>The place nearest to where one of them is, within a reach, that is clear of all this and of the others where they are; null when there is none.</summary>
    public Uv? Nearest(int index, long reach, IReadOnlyList<PlacedFixture> placed, IReadOnlyList<PlanBox> straps, IReadOnlyList<PlanBox> seams)
    {
        var (wish, hole) = (_wishes[index], placed[index].Hole);
        var obstacles = Around(index, (hole.At, reach), [.. placed.Select(p => p.Hole)], hole, (straps, ClashKind.Strap), seams);
        return NearestPlace.Of(_room, hole.At, reach, obstacles, at => Clashes(obstacles, wish, hole with { At = at }).Count == 0, WallPlaces(wish, hole));
    }

    // all that the centre of one of them could meet within a reach of a place; the rest is no obstacle to it
    private List<Obstacle> Around(
        int index, (Uv At, long Reach) within, IReadOnlyList<Hole> holes, Hole hole, (IReadOnlyList<PlanBox> Boxes, ClashKind Kind) wood, IReadOnlyList<PlanBox> seams)
    {
        var found = new List<Obstacle>();
        Add(_standing[index]);
        Add(FixtureObstacles.Of(holes, index, hole));
        Add(FixtureObstacles.Of(wood.Boxes, hole, wood.Kind));
        Add(FixtureObstacles.Of(seams, hole, ClashKind.Seam));
        return found;

        void Add(IEnumerable<Obstacle> obstacles)
        {
            foreach (var obstacle in obstacles)
            {
                if (obstacle.Reaches(within.At, within.Reach))
                {
                    found.Add(obstacle);
                }
            }
        }
    }

    private List<Clash> Clashes(List<Obstacle> obstacles, FixtureWish wish, Hole hole)
    {
        var found = new List<Clash>();
        foreach (var obstacle in obstacles)
        {
            if (obstacle.Holds(hole.At) && !found.Contains(obstacle.Clash))
            {
                found.Add(obstacle.Clash);
            }
        }

        if (!Fits(wish, hole))
        {
            found.Add(new Clash(ClashKind.Wall, -1));
        }

        if (_rules.Inside is { Closed: true } hollow && wish.BodyDepth.Units > hollow.Board + hollow.Height)
        {
            found.Add(new Clash(ClashKind.Depth, -1));
        }

        if (wish.RemoteBox is { } box && !(BoxFeeding.Passes(box, hole) && Parks(box, hole)))
        {
            found.Add(new Clash(ClashKind.RemoteBox, -1));
        }

        return found;
    }

    // into a bay that the hole opens on
    private bool Parks(RemoteBox box, Hole hole)
    {
        if (_rules.Inside is { } hollow)
        {
            return box.Sorted[0] <= hollow.Height;
        }

        var depth = _room.Field.Depth?.Units;
        foreach (var bay in Bays(hole.At.U))
        {
            if (bay.Overlaps(hole.Across) && BoxFeeding.Parks(box, bay.Size, depth))
            {
                return true;
            }
        }

        return false;
    }

    private IEnumerable<Span> Bays(long along)
    {
        var at = _room.Board.LowV;
        foreach (var support in _room.Joists.At(along).ToArray())
        {
            yield return new Span(at, support.Lo);
            at = support.Hi;
        }

        yield return new Span(at, _room.Board.HighV);
    }

    // the hole with its edge clearance lies wholly in the board
    private bool Fits(FixtureWish wish, Hole hole)
    {
        var keep = wish.EdgeClearance.Units;
        var kept = new Span(hole.At.V - hole.HalfV - keep, hole.At.V + hole.HalfV + keep);
        return _board.AcrossAt(hole.At.U, hole.HalfU + keep).Exists(s => s.Lo <= kept.Lo + 1 && kept.Hi - 1 <= s.Hi);
    }

    private (IEnumerable<long> Along, IEnumerable<long> Across) WallPlaces(FixtureWish wish, Hole hole)
    {
        var (u, v) = (hole.HalfU + wish.EdgeClearance.Units, hole.HalfV + wish.EdgeClearance.Units);
        return (
            _board.Edges.Where(e => e.Square).SelectMany(e => new[] { e.From.U - u, e.From.U + u }),
            _board.Edges.Where(e => e.Parallel).SelectMany(e => new[] { e.From.V - v, e.From.V + v }));
    }
}
