using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// How far past <c>maxSpacing</c> the first row may stand from an oblique wall's nearest corner: half a face where every
/// wall there is so far out of square that strap ends are cut square (see <see cref="StrapLines.SteepestBevel"/>), else
/// nothing, as a bevelled end reaches the wall with its whole face.
/// </summary>
public static class ObliqueReach
{
    /// <summary>At the room's low end along the joists, or at its high end; 0 or half a face.</summary>
    public static long Of(FramedRoom room, RowRules rules, bool highEnd)
    {
        foreach (var edge in room.Straps.Edges)
        {
            var near = highEnd ? room.Straps.HighU - edge.Along.Hi : edge.Along.Lo - room.Straps.LowU;
            if (edge.InsideUp != highEnd && !edge.Square && !edge.Parallel && near < rules.Half && !CutSquare(edge.Across.Size, edge.Along.Size))
            {
                return 0;
            }
        }

        return rules.Half;
    }

    private static bool CutSquare(long across, long along) =>
        Math.Atan((double)across / along) * 180 / Math.PI > StrapLines.SteepestBevel;
}
