using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Fixtures;

/// <summary>
/// The arms of a room as rectangles, each for a grid of its own: the outline cut into strips along or across the joists,
/// whichever gives fewer, or the same number with the widest narrowest one. Strips whose ends differ by a jog of less than
/// 600 mm are one; a slanted end counts at its middle. Both figures common practice, no source. Cost: corners².
/// </summary>
public static class GridParts
{
    private const long Jog = 600 * Length.PerMillimetre;

    public static IReadOnlyList<(Span Along, Span Across)> Of(FramedRoom room)
    {
        var across = Strips(room.Outline);
        var along = Strips([.. room.Outline.Select(c => new Uv(c.V, c.U))]).ConvertAll(s => (Along: s.Across, Across: s.Along));
        return (along.Count, -Narrowest(along)).CompareTo((across.Count, -Narrowest(across))) < 0 ? along : across;
    }

    private static long Narrowest(List<(Span Along, Span Across)> parts) => parts.Min(p => Math.Min(p.Along.Size, p.Across.Size));

    private static List<(Span Along, Span Across)> Strips(IReadOnlyList<Uv> outline)
    {
        var strips = Region.Of(outline, []).Cells
            .Select(c => (Along: new Span((c.L0 + c.L1) / 2, (c.R0 + c.R1) / 2), Across: new Span(c.V0, c.V1)))
            .OrderBy(s => s.Across.Lo).ThenBy(s => s.Along.Lo)
            .ToList();
        for (var again = true; again;)
        {
            again = false;
            for (var i = 0; i < strips.Count && !again; i++)
            {
                for (var j = 0; j < strips.Count && !again; j++)
                {
                    if (strips[i].Across.Hi == strips[j].Across.Lo && Alike(strips[i].Along, strips[j].Along))
                    {
                        var larger = strips[i].Across.Size >= strips[j].Across.Size ? strips[i].Along : strips[j].Along;
                        strips[i] = (larger, new Span(strips[i].Across.Lo, strips[j].Across.Hi));
                        strips.RemoveAt(j);
                        again = true;
                    }
                }
            }
        }

        return strips;
    }

    private static bool Alike(Span a, Span b) => Math.Abs(a.Lo - b.Lo) < Jog && Math.Abs(a.Hi - b.Hi) < Jog;
}
