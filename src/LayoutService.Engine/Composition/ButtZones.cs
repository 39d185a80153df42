using LayoutService.Engine.Geometry;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>For each row, the stretches across the joists that back butt ends; joints of the row keep away from them.</summary>
public static class ButtZones
{
    public static IReadOnlyList<IReadOnlyList<Span>> Of(ChosenCeiling chosen, IReadOnlyList<BoardPart> parts)
    {
        var zones = chosen.Lines.Select(_ => new List<Span>()).ToArray();
        foreach (var part in parts)
        {
            if (part.LowLine >= 0)
            {
                zones[part.LowLine].AddRange(BoardSeams.EdgesAlong(part.Ring, chosen.Lines[part.LowLine].At, true));
            }
        }

        return [.. zones.Select(z => (IReadOnlyList<Span>)Region.Merge(z))];
    }
}
