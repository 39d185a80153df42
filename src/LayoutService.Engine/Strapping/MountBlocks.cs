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
            if (Under(room, at) is null && Bay(room, at) is { } found)
            {
                var bay = OpeningBlocks.Clear(room, at, found);
                yield return new NailerLine(NailerRole.Block, new Uv(at.U, bay.Lo), new Uv(at.U, bay.Hi), 0, [], [mount.Id]);
            }
        }
    }

    /// <summary>The support over a place; null where there is none.</summary>
    public static Support? Under(FramedRoom room, Uv at)
    {
        foreach (var support in room.Joists.At(at.U))
        {
            if (support.Lo <= at.V && at.V <= support.Hi)
            {
                return support;
            }
        }

        return null;
    }

    /// <summary>The clear bay over a place, when it lies between two joists.</summary>
    private static Span? Bay(FramedRoom room, Uv at)
    {
        var supports = room.Joists.At(at.U).ToArray();
        var above = Array.FindIndex(supports, s => s.Lo > at.V);
        return above > 0 ? new Span(supports[above - 1].Hi, supports[above].Lo) : null;
    }
}
