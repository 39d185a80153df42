using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The rows and the board joints that were chosen together.</summary>
public sealed record ChosenCeiling(
    RowRules Rules, IReadOnlyList<WallRow> WallRows, RowSkeleton? Skeleton, IReadOnlyList<StrapLine> Lines, SheetLayout Layout)
{
    /// <summary>The room turned over that the board lies in when it is screwed to the joists; null on straps.</summary>
    public FramedRoom? BoardRoom { get; init; }

    /// <summary>The joists that carry such board, one for each of its lines.</summary>
    public IReadOnlyList<JoistLine> Joists { get; init; } = [];

    /// <summary>The second layer of board and those below it; none for one layer.</summary>
    public IReadOnlyList<SheetLayout> Upper { get; init; } = [];

    /// <summary>All layers, from the one next to the rows or joists on.</summary>
    public IEnumerable<SheetLayout> Layers => Upper.Prepend(Layout);

    /// <summary>What the search met beside it.</summary>
    public OtherCeilings Others { get; init; } = OtherCeilings.None;

    /// <summary>The same without the short straps that back nothing.</summary>
    public ChosenCeiling OnlyUsedShorts()
    {
        var used = Layout.Butts.SelectMany(b => b).ToHashSet();
        var kept = Enumerable.Range(0, Lines.Count)
            .Where(i => Lines[i].Through || Lines[i].Serves is not null || used.Contains(i))
            .ToList();
        return Over([.. kept.Select(i => Lines[i])]);
    }

    /// <summary>The same over other lines, among which are all that back a butt.</summary>
    public ChosenCeiling Over(IReadOnlyList<StrapLine> lines)
    {
        var index = new Dictionary<StrapLine, int>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < lines.Count; i++)
        {
            index[lines[i]] = i;
        }

        return this with
        {
            Lines = lines,
            Layout = Layout with
            {
                Lines = [.. lines.Select(l => l.Bearing)],
                Butts = [.. Layout.Butts.Select(run => run.Select(b => index[Lines[b]]).ToArray())],
            },
        };
    }
}
