using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Insulation;

public enum SlideReason
{
    /// <summary>What is in the bay leaves too little depth to push the batt up between the straps.</summary>
    Depth,

    /// <summary>The gaps between the straps are too narrow for the batt.</summary>
    Width,
}

/// <summary>A batt that is laid before a row is fastened at its bay's joists. Indices are of the laid batts and of the rows.</summary>
public sealed record StrapAfter(int Batt, int Row, SlideReason Reason);

/// <summary>
/// Which straps wait for a batt. Batts are pushed up between fastened rows; two things stop that. Under a duct the space is
/// too shallow to fold the batt into, over a stretch longer than one gap between rows, so that the batt cannot be fed from
/// one either; or no gap along the batt lets it pass. Common practice, no source; the two shares are rules.
/// </summary>
public sealed class BattsOverStraps(IReadOnlyList<BearingLine> rows, long face, BattRules rules)
{
    public IReadOnlyList<StrapAfter> Of(IReadOnlyList<LaidBatt> laid)
    {
        var found = new List<StrapAfter>();
        for (var i = 0; i < laid.Count; i++)
        {
            var batt = laid[i];
            var over = Crossing(batt.Across);
            if (over.Exists(row => batt.Along.Lo < rows[row].At && rows[row].At < batt.Along.Hi))
            {
                foreach (var (row, reason) in After(batt, over))
                {
                    found.Add(new StrapAfter(i, row, reason));
                }
            }
        }

        return found;
    }

    private List<(int Row, SlideReason Reason)> After(LaidBatt batt, List<int> over)
    {
        var layer = batt.Verdict.Layer!;
        if (WidestGap(over, batt.Along) < layer.Loose * rules.PassGap)
        {
            return [.. Under(over, batt.Along).Select(row => (row, SlideReason.Width))];
        }

        if (batt.Verdict.Place != BattPlace.Below || batt.Verdict.Depth >= layer.Installed * rules.FoldDepth)
        {
            return [];
        }

        var found = new List<(int, SlideReason)>();
        foreach (var shallow in Shallow(batt, layer))
        {
            if (shallow.Size > WidestGap(over, shallow))
            {
                found.AddRange(Under(over, shallow).Select(row => (row, SlideReason.Depth)));
            }
        }

        return [.. found.Distinct()];
    }

    // the stretches where what is overhead leaves no room to fold the batt
    private List<Span> Shallow(LaidBatt batt, BattLayer layer)
    {
        var spans = new List<Span>();
        foreach (var obstacle in batt.Verdict.Obstacles)
        {
            if (-obstacle.Bottom < layer.Installed * rules.FoldDepth && obstacle.AlongIn(batt.Across) is { } along && along.Overlaps(batt.Along))
            {
                spans.Add(along.Meet(batt.Along));
            }
        }

        return Region.Merge(spans);
    }

    private List<int> Crossing(Span across)
    {
        var over = new List<int>();
        for (var row = 0; row < rows.Count; row++)
        {
            for (var i = 0; i < rows[row].Stretches.Count; i++)
            {
                if (rows[row].Stretches[i].Overlaps(across))
                {
                    over.Add(row);
                    break;
                }
            }
        }

        return over;
    }

    private IEnumerable<int> Under(List<int> over, Span along) => over.Where(row => along.Lo < rows[row].At && rows[row].At < along.Hi);

    // the widest clear gap between rows that meets a stretch; open at a row's far side where no other row follows
    private long WidestGap(List<int> over, Span along)
    {
        var (widest, before) = (0L, long.MinValue);
        foreach (var at in over.Select(row => rows[row].At).Distinct().Order())
        {
            if (before != long.MinValue && at > along.Lo && before < along.Hi)
            {
                widest = Math.Max(widest, at - before - face);
            }

            before = at;
        }

        return widest == 0 ? along.Size : widest;
    }
}
