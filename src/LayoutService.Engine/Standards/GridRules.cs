using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Standards;

/// <summary>A rule whose value is looked up in a grid: its id, what it says, how it compares, what it measures.</summary>
public sealed record GridRule(string Id, string Title, string Comparison, string MetricUnit, string ImperialUnit)
{
    /// <summary>The unit that a caller's own value is read in: the one that the ruleset's country prints.</summary>
    public string UnitIn(string country) => country == "US" ? ImperialUnit : MetricUnit;
}

/// <summary>The rules that are looked up by size, spacing or space, and the look-ups themselves.</summary>
public static class GridRules
{
    public static readonly GridRule StrapThickness = new("strap-thickness", "Thickness of a strap, by row and support spacing", "at-least", "mm", "in");

    public static readonly GridRule StrapFace = new("strap-face", "Face of a strap, by row and support spacing", "at-least", "mm", "in");

    public static readonly GridRule StrapSupports = new("strap-support-spacing", "Joists that straps are fastened to, on centre", "at-most", "mm", "in");

    public static readonly GridRule RowSpacing = new("row-spacing", "Supports of the board, on centre, by board and finish", "at-most", "mm", "in");

    public static readonly GridRule Headroom = new("headroom", "Finished ceiling above the finished floor", "at-least", "mm", "in");

    public static readonly GridRule HeadroomOverArea = new("headroom-over-area", "Finished ceiling over a stated part of the required area", "at-least", "mm", "in");

    public static readonly GridRule HeadroomUnder = new("headroom-obstruction", "Finished underside of a beam, duct or bulkhead above the finished floor", "at-least", "mm", "in");

    public static readonly GridRule HeadroomStair = new("headroom-stair", "Finished ceiling plumb above the nosings of a stair", "at-least", "mm", "in");

    public static readonly GridRule InsulationLoad = new("insulation-on-board", "Insulation that lies on the board", "at-most", "kg/m2", "lb/ft2");

    public static readonly GridRule RatedPenetration = new("rated-ceiling-penetration", "Board fastener into wood, fire-rated ceiling", "at-least", "mm", "in");

    public static readonly GridRule FloorSpan = new("floor-span", "Clear span of a floor joist, by species, grade, size, spacing and what braces it", "at-most", "m", "ft");

    /// <summary>Source of a fire rating where the code gives no figure: the assembly that was tested.</summary>
    public static Citation ListedAssembly { get; } = new()
    {
        Document = "The tested assembly's own listing", Basis = Basis.CommonPractice, Confidence = Confidence.Low,
        Note = "The code gives no figure: the rating belongs to the assembly as it was tested.",
    };

    public static IReadOnlyList<GridRule> All { get; } =
    [
        StrapThickness, StrapFace, StrapSupports, RowSpacing, Headroom, HeadroomOverArea, HeadroomUnder, HeadroomStair, InsulationLoad, RatedPenetration, FloorSpan,
    ];

    public static IReadOnlySet<string> Ids { get; } = All.Select(rule => rule.Id).ToHashSet(StringComparer.Ordinal);

    /// <summary>
    /// The least strap for these spacings, on centre; no support spacing means continuous backing. Beyond the table's widest
    /// spacing the widest row answers, and <c>Outside</c> says so.
    /// </summary>
    public static (Cited<FurringRow> Least, bool Outside) Furring(this RuleBook book, Length rows, Length? supports)
    {
        var table = book.Tables.Furring.First(table => table.SpeaksFor(book.Ruleset));
        var candidates = table.Rows.Where(row => row.SupportSpacing is null == supports is null).ToList();
        var fitting = candidates.FirstOrDefault(row =>
            (row.RowSpacing is null || NominalModule.Of(row.RowSpacing) >= rows)
            && (supports is null || NominalModule.Of(row.SupportSpacing!) >= supports));
        var least = fitting ?? candidates[^1];
        return (new(least, book.Cite(least.Source, table.Source)), fitting is null);
    }

    /// <summary>The widest support spacing that the furring table knows.</summary>
    public static Cited<Figure> WidestFurringSupports(this RuleBook book)
    {
        var table = book.Tables.Furring.First(table => table.SpeaksFor(book.Ruleset));
        var row = table.Rows.Last(row => row.SupportSpacing is not null);
        return new(row.SupportSpacing!, book.Cite(row.Source, table.Source));
    }

    /// <summary>
    /// How far apart the supports of this board may be; a null value means that the use is not permitted, a null answer that
    /// the table does not know the board. Lightweight and type X board read the rows of regular board.
    /// </summary>
    public static Cited<Figure?>? BoardSpan(this RuleBook book, Length thickness, string board, string orientation, string surface)
    {
        var kind = board == "ceiling-board" ? board : "regular";
        foreach (var table in book.Tables.BoardSpans.Where(table => table.SpeaksFor(book.Ruleset)))
        {
            foreach (var row in table.Rows)
            {
                if (row.Board == kind && row.Orientation == orientation && row.Surface == surface && IsThickness(row.Thickness, thickness))
                {
                    return new(row.MaxSpacing, book.Cite(row.Source, table.Source));
                }
            }
        }

        return null;
    }

    /// <summary>The most insulation that may lie on this board, or null when no figure is known. Closer supports than a row's are as good.</summary>
    public static Cited<Figure>? InsulationOnBoard(this RuleBook book, Length thickness, string board, Length supports)
    {
        var table = book.Tables.BoardInsulation;
        var kind = board == "ceiling-board" ? board : "regular";
        var row = table.Rows
            .Where(row => row.Board == kind && IsThickness(row.Thickness, thickness) && row.SupportSpacing.Length >= supports)
            .OrderBy(row => row.SupportSpacing.Length.Units)
            .FirstOrDefault();
        return row is null ? null : new(row.MostMass, book.Cite(row.Source, table.Source));
    }

    /// <summary>
    /// The least heights for a space, whole area first, then over a part of it; empty when the ruleset has none. A suite's rows go before an
    /// existing building's, those before the common ones; a space's own rows before those for any.
    /// </summary>
    public static IReadOnlyList<Cited<HeightRow>> Heights(this RuleBook book, string space, bool obstruction, bool existing, bool suite)
    {
        var table = book.Tables.Heights.First(table => table.SpeaksFor(book.Ruleset));
        var mine = table.Rows
            .Where(row => row.Obstruction == obstruction && (row.Rulesets?.Contains(book.Ruleset) ?? true)
                && (row.Space == space || row.Space == "any") && (suite || !row.SecondarySuite) && (existing || !row.ExistingBuilding))
            .ToList();
        var best = mine.GroupBy(row => (row.SecondarySuite ? 4 : 0) + (row.ExistingBuilding ? 2 : 0) + (row.Space == space ? 1 : 0))
            .OrderByDescending(group => group.Key)
            .FirstOrDefault();
        return best is null
            ? []
            : [.. best.OrderByDescending(row => row.Share.Value).Select(row => new Cited<HeightRow>(row, book.Cite(row.Source, table.Source)))];
    }

    // Boards are printed as 12.7 mm and 1/2 in, 15.9 mm and 5/8 in: the same board within half a millimetre.
    private static bool IsThickness(Figure printed, Length thickness) =>
        Math.Abs(printed.Length.Units - thickness.Units) <= Length.PerMillimetre / 2;
}
