using LayoutService.Drawing.Paper;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Tests.Drawing;

/// <summary>
/// Holes on the sheet that a piece is cut from, worked out by hand. The piece hangs from (10, 24) to (106, 70), 96 in along x and 46 in
/// across, joists along x; face up its high edge (y = 70) is the bottom one. The hole is at (22, 50): from the corner (10, 70)
/// that is 12 in from the left end and 20 in from the bottom edge, so 26 in from the top.
/// </summary>
public sealed class SheetHolesTests
{
    [Fact]
    public void A_piece_with_both_edges_or_none_of_the_factory_lies_as_its_mark_says()
    {
        // 3 + 12 along; 1 + 26 across
        Assert.Equal((15m, 27m, ""), Place(Cut(x: 3, y: 1, factoryEdges: 0), seam: 70));
    }

    [Fact]
    public void A_piece_whose_factory_edge_is_the_bottom_one_is_turned_end_for_end_at_the_top_of_a_sheet()
    {
        // 3 + (96 − 12) along; 46 − 26 = 20 across
        Assert.Equal((87m, 20m, ", turned half round"), Place(Cut(x: 3, y: 0, factoryEdges: 1), seam: 70));
    }

    [Fact]
    public void At_the_bottom_of_a_sheet_the_same_piece_is_not_turned()
    {
        // the sheet is 48 wide, so the piece lies 2 from the top: 2 + 26
        Assert.Equal((15m, 28m, ""), Place(Cut(x: 3, y: 2, factoryEdges: 1), seam: 70));
    }

    [Fact]
    public void A_piece_whose_factory_edge_is_the_top_one_lies_at_the_top_as_it_is()
    {
        Assert.Equal((15m, 26m, ""), Place(Cut(x: 3, y: 0, factoryEdges: 1), seam: 24));
    }

    [Fact]
    public void A_piece_cut_across_the_sheet_has_its_left_end_at_the_top()
    {
        // along x the sheet gives it 46, down it 96: 3 + (46 − 26) and 0 + 12
        Assert.Equal((23m, 12m, ", lying across"), Place(new("S1", In(3), In(0), In(96), In(46), true), seam: 70));
    }

    private static SheetCut Cut(decimal x, decimal y, int factoryEdges) => new("S1", In(x), In(y), In(46), In(96), false, factoryEdges);

    private static (decimal FromLeft, decimal FromTop, string Lies) Place(SheetCut cut, decimal seam)
    {
        var mark = Sentence.Of("mark_hole", "", ("end", "left"), ("edge", "bottom"));
        var piece = new BoardPiece
        {
            Id = "S1", Course = "C1", Layer = 1, Outline = [At(10, 24), At(106, 24), At(106, 70), At(10, 70)], Width = In(46), Length = In(96), AreaSquareMetres = 2.85,
            StockId = "sheet", Ends = [], MeasureInPlace = false, Screws = 0, Cutouts = [new("L1", At(10, 70), At(22, 50), new(In(4), In(4), true), mark)],
        };
        var sheets = new SheetPlan
        {
            Courses = [], Pieces = [piece], Joints = [new(BoardJointKind.Tapered, "S1", "S2", At(10, seam), At(106, seam), In(96))],
            ButtJointLength = In(0), TaperedJointLength = In(96), CutEdgeJointLength = In(0), PerimeterLength = In(0), StartWalls = [],
        };
        var hole = Assert.Single(SheetHoles.Of(sheets, new("B1", In(48), In(120), "sheet", [cut], []), cut, piece, 0));
        return (hole.FromLeft.Units / (decimal)In(1).Units, hole.FromTop.Units / (decimal)In(1).Units, hole.Lies);
    }

    private static Length In(decimal inches) => Length.FromInches(inches);

    private static Point At(decimal x, decimal y) => new(In(x), In(y));
}
