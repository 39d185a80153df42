using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The greatest step between neighbouring joists that board without straps would show, and the lowest underside: both taken where
/// undersides were read along the joists and at the ends of the room, between which they run straight.
/// </summary>
internal sealed record DirectPlane(long Step, IReadOnlyList<string> Joists, long Lowest)
{
    /// <summary>Null when no underside was read.</summary>
    public static DirectPlane? Of(FramedRoom room)
    {
        if (room.Levels is not { } levels)
        {
            return null;
        }

        var names = JoistWriter.Names(room);
        var (step, joists, lowest) = (0L, (IReadOnlyList<string>)[], long.MaxValue);
        foreach (var zone in room.Joists.Zones)
        {
            var places = room.Survey.JoistFields.SelectMany(f => f.Undersides).Select(r => room.Frame.In(r.At).U)
                .Where(zone.Along.Holds).Append(zone.Along.Lo).Append(zone.Along.Hi).Distinct().Order().ToList();
            foreach (var u in places)
            {
                int? before = null;
                foreach (var joist in zone.Members.Where(m => Over(room, new Uv(u, room.Joists.Members[m].At)) && levels.At(m, u) is not null))
                {
                    var level = levels.At(joist, u)!.Value;
                    lowest = Math.Min(lowest, level);
                    if (before is { } other && Math.Abs(level - levels.At(other, u)!.Value) is var found && found > step)
                    {
                        (step, joists) = (found, [names[other], names[joist]]);
                    }

                    before = joist;
                }
            }
        }

        return lowest == long.MaxValue ? null : new DirectPlane(step, joists, lowest);
    }

    private static bool Over(FramedRoom room, Uv place) =>
        room.Board.LowU <= place.U && place.U <= room.Board.HighU && room.Board.LowV <= place.V && place.V <= room.Board.HighV;
}
