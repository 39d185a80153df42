using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The widest bay that a strap crosses, on centre between neighbouring supports, as the furring tables count it; within the room
/// only. <see cref="At"/> is the number of the support before it.
/// </summary>
internal readonly record struct WidestBay(JoistZone Zone, int At, Length Width)
{
    /// <summary>Null where no zone has two supports.</summary>
    public static WidestBay? Of(FramedRoom room)
    {
        WidestBay? widest = null;
        foreach (var zone in room.Joists.Zones)
        {
            for (var i = zone.FirstSupport; i + 1 < zone.FirstSupport + zone.SupportCount; i++)
            {
                var width = new Length(room.Joists.Supports[i + 1].Middle - room.Joists.Supports[i].Middle);
                if (width > (widest?.Width ?? Length.Zero))
                {
                    widest = new(zone, i, width);
                }
            }
        }

        return widest;
    }

    public IReadOnlyList<string> Joists(FramedRoom room)
    {
        var names = JoistWriter.Names(room);
        return [names[room.Joists.Supports[At].FirstMember], names[room.Joists.Supports[At + 1].FirstMember]];
    }

    /// <summary>
    /// The shortest of the bays beside this one over which every piece across it runs on; null when some piece crosses this bay
    /// alone, or none crosses it.
    /// </summary>
    public Length? NextSpan(FramedRoom room, StrappingPlan strapping)
    {
        var supports = room.Joists.Supports;
        var end = Zone.FirstSupport + Zone.SupportCount;
        long? shortest = null;
        foreach (var piece in strapping.Rows.SelectMany(row => row.Pieces))
        {
            var (a, b) = (room.Frame.In(piece.From), room.Frame.In(piece.To));
            var (lo, hi) = (Math.Min(a.V, b.V), Math.Max(a.V, b.V));
            if (room.Joists.ZoneAt(a.U).FirstSupport != Zone.FirstSupport || lo >= supports[At].Hi || hi <= supports[At + 1].Lo)
            {
                continue;
            }

            var before = At > Zone.FirstSupport && lo < supports[At - 1].Hi ? supports[At].Middle - supports[At - 1].Middle : 0;
            var after = At + 2 < end && hi > supports[At + 2].Lo ? supports[At + 2].Middle - supports[At + 1].Middle : 0;
            var next = Math.Max(before, after);
            if (next == 0)
            {
                return null;
            }

            shortest = Math.Min(shortest ?? next, next);
        }

        return shortest is { } found ? new Length(found) : null;
    }
}
