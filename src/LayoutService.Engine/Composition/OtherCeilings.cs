namespace LayoutService.Engine.Composition;

/// <summary>
/// Layouts that the search met and did not choose, kept to say what another wish would have cost: the same rules with the
/// fewest butts, the same rules with the least material, and what it would be with one rule less.
/// </summary>
public sealed record OtherCeilings(ChosenCeiling? FewestButts, ChosenCeiling? LeastMaterial, ChosenCeiling? RowsThroughPosts, ChosenCeiling? LessStagger)
{
    public static OtherCeilings None { get; } = new(null, null, null, null);

    /// <summary>Picks them; <paramref name="postsCut"/> counts the rows that a layout lets a post cut.</summary>
    public static OtherCeilings Of(ChosenCeiling chosen, IReadOnlyList<ChosenCeiling> met, Func<ChosenCeiling, int> postsCut)
    {
        ChosenCeiling? butts = null, material = null, posts = null, stagger = null;
        var cut = postsCut(chosen);
        foreach (var other in met)
        {
            if (ReferenceEquals(other.Layout, chosen.Layout) || other.Layout.Division.Slivers > chosen.Layout.Division.Slivers)
            {
                continue;
            }

            var (mine, its) = (chosen.Layout, other.Layout);
            var (kept, clear) = (its.Penalty <= mine.Penalty, postsCut(other) <= cut);
            if (kept && clear && its.ButtLength < (butts?.Layout ?? mine).ButtLength)
            {
                butts = other;
            }
            else if (kept && clear && butts is not null && its.ButtLength == butts.Layout.ButtLength && its.SheetCost < butts.Layout.SheetCost)
            {
                butts = other;
            }

            if (kept && clear && (its.SheetCost, its.ButtLength).CompareTo(((material?.Layout ?? mine).SheetCost, (material?.Layout ?? mine).ButtLength)) < 0
                && its.SheetCost < mine.SheetCost)
            {
                material = other;
            }

            if (kept && !clear && its.SheetCost < (posts?.Layout ?? mine).SheetCost)
            {
                posts = other;
            }

            if (!kept && clear && its.Penalty < Sheets.Butt.OneRow && its.SheetCost < (stagger?.Layout ?? mine).SheetCost)
            {
                stagger = other;
            }
        }

        return new OtherCeilings(butts, material, posts, stagger);
    }
}
