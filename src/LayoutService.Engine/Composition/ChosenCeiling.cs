using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The rows and the board joints that were chosen together.</summary>
public sealed record ChosenCeiling(
    RowRules Rules, IReadOnlyList<WallRow> WallRows, RowSkeleton Skeleton, IReadOnlyList<StrapLine> Lines, SheetLayout Layout)
{
    /// <summary>What the search met beside it.</summary>
    public OtherCeilings Others { get; init; } = OtherCeilings.None;
}
