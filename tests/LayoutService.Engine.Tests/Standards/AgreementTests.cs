using LayoutService.Engine.Composition;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;
using LayoutService.Engine.Tests.Checks;

namespace LayoutService.Engine.Tests.Standards;

/// <summary>Where a stage keeps a figure of its own, it is the one that the rules catalogue serves.</summary>
public class AgreementTests
{
    private static readonly RuleBook Book = PlainRoom.Book("ca-nbc-2020");
    private static readonly Practice Practice = new(Book, imperial: false);

    [Fact]
    public void Strapping_and_sheets_plan_by_the_distances_in_the_practice_table()
    {
        Assert.Equal(RowRules.ClearGap, Practice.RowClearGap.Value.Units);
        Assert.Equal(RowRules.ClearGap, Practice.WallRowReach.Value.Units);
        Assert.Equal(LumberCut.ScabLength, Practice.ScabLength.Value.Units);
        Assert.Equal(CourseLines.LeastRip, Practice.RipLeast.Value.Units);
        Assert.Equal(CourseLines.PreferredRip, Practice.RipPreferred.Value.Units);
        Assert.Equal(ButtPatterns.LeastPiece, Practice.BoardPieceLeast.Value.Units);
        Assert.Equal(BoardScrews.Apart, Practice.BoardScrewSpacing.Value.Units);
        Assert.Equal(BoardScrews.EdgeDistance, Book.Limit("board-screw-edge").Value.Length.Units);
        var face = Length.FromMillimetres(64).Units;
        Assert.Equal((face / 2) - Practice.ButtEdgeWood.Value.Units, new RowRules(face, 1).ButtTolerance);
    }

    [Fact]
    public void The_takeoff_counts_by_the_waste_and_coverage_in_the_coverage_table()
    {
        var usual = Allowances.Usual;
        Assert.Equal(Share("waste-fasteners"), usual.FastenerWaste);
        Assert.Equal(Share("waste-tape"), usual.TapeWaste);
        Assert.Equal(Share("waste-compound"), usual.CompoundWaste);
        Assert.Equal(Share("waste-adhesive"), usual.AdhesiveWaste);
        Assert.Equal(Practice.CullsBoards.Value, usual.OneByCulls);
        Assert.Equal(Practice.CullsDimension.Value, usual.TwoByCulls);
        Assert.Equal(Book.Limit("compound-coverage").Value.Value, usual.CompoundPoundsPerSquareFoot);
        Assert.Equal(2 * Practice.ScabScrewsEachSide.Value, usual.ScrewsPerScab);
        Assert.Equal(Practice.ScabAdhesiveBead.Value, usual.AdhesiveBead);
        Assert.Equal(Practice.NailerFastenerSpacing.Value, usual.NailerFastenerSpacing);
        Assert.Equal(Practice.FastenersPerBlock.Value, usual.FastenersPerBlock);
        Assert.Equal(Practice.StrapScrewGrip.Value, usual.StrapScrewGrip);
    }

    [Fact]
    public void The_takeoff_weighs_by_the_board_lumber_and_fastener_tables()
    {
        var masses = MassTable.Published;
        foreach (var row in PublishedTables.Current.Boards.Rows.Where(row => row.Kind != "ceiling-board"))
        {
            var heavier = (row.HandlingMassHigh ?? row.HandlingMass).In("kg/m2");
            Assert.Equal(decimal.Round(heavier, 1), masses.BoardKilogramsPerSquareMetre(row.Kind, row.MetricThickness.Length));
        }

        Assert.Equal(decimal.Round(PublishedTables.Current.LumberWeights.Rows[^1].Weight.In("kN/m3") * 1000 / 9.80665m), masses.LumberKilogramsPerCubicMetre);
        Assert.Equal(Book.Limit("board-screw-mass").Value.In("kg") * 1000, masses.BoardScrewGramsPerInch);
        Assert.Equal(Book.Limit("wood-screw-mass").Value.In("kg") * 1000, masses.WoodScrewGramsPerInch);
        Assert.Equal(Book.Limit("tape-mass").Value.In("kg/m") * 1000, masses.TapeGramsPerMetre);
    }

    [Theory]
    [InlineData("3/8 in", "board-screw-three-eighths")]
    [InlineData("1/2 in", "board-screw-half-inch")]
    [InlineData("5/8 in", "board-screw-five-eighths")]
    public void The_takeoff_buys_the_board_screw_in_the_practice_table(string board, string rule)
    {
        foreach (var ruleset in RuleCatalogue.Current.Rulesets)
        {
            Assert.Equal(Book.Limit(rule).Value.Length, ScrewLengths.ForBoard(Figure.Parse(board).Length, ruleset.Id).Length);
        }
    }

    private static decimal Share(string rule)
    {
        var figure = Book.Limit(rule).Value;
        return figure.Value * figure.Unit.Factor;
    }
}
