using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Blocks for what hangs between two joists: 2x4 on edge across the bay, joist to joist, over the mount. One under a joist
/// hangs from it. Common practice, no source; what a block and its joists may carry is for someone licensed to say.
/// </summary>
public static class MountBlocks
{
    public static IEnumerable<NailerLine> Of(FramedRoom room)
    {
        foreach (var mount in room.Survey.Mounts.OrderBy(m => room.Frame.In(m.At).U).ThenBy(m => room.Frame.In(m.At).V))
        {
            var at = room.Frame.In(mount.At);
            if (Under(room, at.V) < 0 && Bay(room, at.V) is { } bay)
            {
                yield return new NailerLine(NailerRole.Block, new Uv(at.U, bay.Lo), new Uv(at.U, bay.Hi), 0, [], [mount.Id]);
            }
        }
    }

    /// <summary>The support over a place across the joists, or −1.</summary>
    public static int Under(FramedRoom room, long across) => Array.FindIndex(room.Supports, s => s.Lo <= across && across <= s.Hi);

    /// <summary>The clear bay over a place, when it lies between two joists.</summary>
    private static Span? Bay(FramedRoom room, long across)
    {
        var above = Array.FindIndex(room.Supports, s => s.Lo > across);
        return above > 0 ? new Span(room.Supports[above - 1].Hi, room.Supports[above].Lo) : null;
    }
}
