using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The gaps between full rows, which a person marks one by one.</summary>
internal static class RowGaps
{
    /// <summary>How many different ones there are.</summary>
    public static int Different(IReadOnlyList<StrapLine> lines)
    {
        var gaps = new HashSet<long>();
        StrapLine? before = null;
        foreach (var line in lines.Where(l => l.Through))
        {
            if (before is not null)
            {
                gaps.Add(line.At - before.At);
            }

            before = line;
        }

        return gaps.Count;
    }
}
