using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Fixtures;

/// <summary>
/// Problem: the place nearest to where a fixture was asked for, within its reach, that lies in no obstacle. Method: the
/// obstacles are boxes for its centre (a configuration space), so the nearest free place is the asked one, or shares a
/// coordinate with it and one with a box's side, or stands in a corner of two sides: all of these are tried, nearest
/// first. Exact up to the whole steps of the tape, but that a hole beside the end of a joist is moved past its box, not round its
/// corner. Cost: (boxes in reach)² × boxes, for a fixture that has to move.
/// </summary>
internal static class NearestPlace
{
    /// <param name="room">The framed room.</param>
    /// <param name="asked">Where it was asked for.</param>
    /// <param name="reach">How far it may be moved.</param>
    /// <param name="obstacles">Boxes that its centre keeps out of.</param>
    /// <param name="fits">Whether it lies inside the board at a place.</param>
    /// <param name="walls">Coordinates along and across where it just clears a wall.</param>
    public static Uv? Of(
        FramedRoom room, Uv asked, long reach, IReadOnlyList<Obstacle> obstacles, Func<Uv, bool> fits, (IEnumerable<long> Along, IEnumerable<long> Across) walls)
    {
        var along = new SortedSet<long> { asked.U };
        var across = new SortedSet<long> { asked.V };
        foreach (var obstacle in obstacles)
        {
            if (obstacle.Reaches(asked, reach))
            {
                Note(obstacle.Along.Lo, obstacle.Along.Hi, obstacle.Across.Lo, obstacle.Across.Hi);
            }
        }

        foreach (var u in walls.Along)
        {
            Note(u, u, long.MinValue / 4, long.MaxValue / 4);
        }

        foreach (var v in walls.Across)
        {
            Note(long.MinValue / 4, long.MaxValue / 4, v, v);
        }

        WorkMeter.Spend(4L * along.Count * across.Count);
        var places = new List<(double Distance, Uv At)>();
        foreach (var u in along)
        {
            foreach (var v in across)
            {
                var distance = Rings.DistanceBetween(asked, new Uv(u, v));
                if (distance <= reach)
                {
                    places.Add((distance, new Uv(u, v)));
                }
            }
        }

        places.Sort(static (a, b) => (a.Distance, a.At.U, a.At.V).CompareTo((b.Distance, b.At.U, b.At.V)));
        foreach (var (_, at) in places)
        {
            WorkMeter.Spend(obstacles.Count);
            if (!Held(obstacles, at) && fits(at))
            {
                return at;
            }
        }

        return null;

        void Note(long lowU, long highU, long lowV, long highV)
        {
            Add(along, lowU, room.SnapDown, asked.U);
            Add(along, highU, room.SnapUp, asked.U);
            Add(across, lowV, room.SnapDownAcross, asked.V);
            Add(across, highV, room.SnapUpAcross, asked.V);
        }

        void Add(SortedSet<long> coordinates, long at, Func<long, long> snap, long from)
        {
            if (Math.Abs(at - from) <= reach && snap(at) is var step && Math.Abs(step - from) <= reach)
            {
                coordinates.Add(step);
            }
        }
    }

    private static bool Held(IReadOnlyList<Obstacle> obstacles, Uv at)
    {
        for (var i = 0; i < obstacles.Count; i++)
        {
            if (obstacles[i].Holds(at))
            {
                return true;
            }
        }

        return false;
    }
}
