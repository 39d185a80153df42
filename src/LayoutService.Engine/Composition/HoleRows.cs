using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Rows clear of holes where that costs no row. All holes are tried at once; where that costs a row, one hole after the
/// other is kept in the list that stays without cost, firm holes first (greedy). Cost: one filling of the rows a hole.
/// </summary>
public static class HoleRows
{
    private const int MostTried = 60;

    /// <summary>Rows clear of as many holes as costs no row, and rows wherever they fit.</summary>
    public static List<RowSkeleton> Skeletons(
        FramedRoom room, RowRules rules, IReadOnlyList<WallRow> wallRows, IReadOnlyList<Span> posts, RowSkeleton plain)
    {
        var spans = room.KeepOuts.Firm.Concat(room.KeepOuts.Soft).Select(h => Avoided(h, rules)).Distinct().ToList();
        if (Clear([.. posts, .. spans]) is { } all)
        {
            return [all, plain];
        }

        var kept = new List<Span>();
        RowSkeleton? best = null;
        foreach (var span in posts.Concat(spans).Take(MostTried))
        {
            kept.Add(span);
            if (Clear(kept) is { } made)
            {
                best = made;
            }
            else
            {
                kept.RemoveAt(kept.Count - 1);
            }
        }

        return best is null ? [plain] : [best, plain];

        RowSkeleton? Clear(IReadOnlyList<Span> avoided) =>
            RowSkeletons.Choose(room, rules, wallRows, avoided) is { } made && made.FullRows <= plain.FullRows ? made : null;
    }

    /// <summary>How often rows meet holes.</summary>
    public static int Met(IReadOnlyList<Hole> holes, RowRules rules, IReadOnlyList<StrapLine> lines)
    {
        var met = 0;
        foreach (var hole in holes)
        {
            var avoided = Avoided(hole, rules);
            for (var i = 0; i < lines.Count; i++)
            {
                var line = lines[i];
                met += line.Through && avoided.Lo < line.At && line.At < avoided.Hi ? 1 : 0;
            }
        }

        return met;
    }

    private static Span Avoided(Hole hole, RowRules rules) => new(hole.AlongKept.Lo - rules.Half, hole.AlongKept.Hi + rules.Half);
}
