using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Two rows that lie side by side, their ids, and how far apart they are on centre.</summary>
internal readonly record struct SpacedRows(StrapLine Before, StrapLine Line, string BeforeId, string LineId, long Apart);

/// <summary>Blocks cut as long as the clear gap between two rows, set between them while they are fastened; one kind for each gap, the one most rows have first.</summary>
internal static class RowSpacers
{
    /// <summary>How far two rows must run side by side for two spacer blocks between them. Common practice, no source.</summary>
    private const long LeastBeside = 600 * Length.PerMillimetre;

    public static IEnumerable<Spacer> Between(IEnumerable<SpacedRows> pairs, long face)
    {
        var gaps = new SortedDictionary<long, List<string>>();
        foreach (var pair in pairs.Where(SideBySide))
        {
            var gap = pair.Apart - face;
            if (!gaps.TryGetValue(gap, out var between))
            {
                gaps[gap] = between = [];
            }

            between.Add(pair.BeforeId);
            between.Add(pair.LineId);
        }

        return gaps.OrderByDescending(g => g.Value.Count).ThenByDescending(g => g.Key).Select(g => new Spacer(new Length(g.Key), [.. g.Value.Distinct()]));
    }

    // two blocks bear on both rows: side by side for 600 mm at least, else marks alone must do
    private static bool SideBySide(SpacedRows pair) => pair.Line.Stretches
        .Sum(a => pair.Before.Stretches.Sum(b => Math.Max(0, Math.Min(a.Across.Hi, b.Across.Hi) - Math.Max(a.Across.Lo, b.Across.Lo)))) >= LeastBeside;
}
