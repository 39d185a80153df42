using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Whether the pieces that lie across the widest bay run on over a bay beside it.</summary>
internal static class StrapContinuity
{
    /// <summary>
    /// The shortest of the bays, beside the one that begins at support <paramref name="bay"/>, over which every piece across it
    /// runs on; null when some piece crosses that bay alone, or none crosses it.
    /// </summary>
    public static Length? NextSpan(FramedRoom room, StrappingPlan strapping, int bay)
    {
        var supports = room.Supports;
        long? shortest = null;
        foreach (var row in strapping.Rows)
        {
            foreach (var piece in row.Pieces)
            {
                var (a, b) = (room.Frame.In(piece.From).V, room.Frame.In(piece.To).V);
                var (lo, hi) = (Math.Min(a, b), Math.Max(a, b));
                if (lo >= supports[bay].Hi || hi <= supports[bay + 1].Lo)
                {
                    continue;
                }

                var before = bay > 0 && lo < supports[bay - 1].Hi ? supports[bay].Middle - supports[bay - 1].Middle : 0;
                var after = bay + 2 < supports.Length && hi > supports[bay + 2].Lo ? supports[bay + 2].Middle - supports[bay + 1].Middle : 0;
                var next = Math.Max(before, after);
                if (next == 0)
                {
                    return null;
                }

                shortest = Math.Min(shortest ?? next, next);
            }
        }

        return shortest is { } found ? new Length(found) : null;
    }
}
