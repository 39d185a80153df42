using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>The check itself must find what is wrong.</summary>
public class SheetGuillotineTests
{
    private static readonly SheetProblem Problem = new()
    {
        Wanted = [new SheetWanted(20, 50, FactoryEdges.One), new SheetWanted(48, 46, FactoryEdges.Both)],
        Stock = [new SheetKind(48, 96, 10)],
    };

    private static readonly SheetPieceCut Rip = new(0, 0, 0, 20, 50, false);
    private static readonly SheetPieceCut Whole = new(1, 50, 0, 48, 46, false);
    private static readonly SheetRemnant Rest = new(0, 20, 28, 50);

    private static List<string> Faults(SheetRemnant rest, params SheetPieceCut[] cuts) => SheetGuillotine.Faults(
        Problem,
        new SheetSolution { Sheets = [new SheetUse(0, cuts, [rest])], Unplaced = [], Cost = 10, LowerBound = 10 });

    [Fact]
    public void A_right_plan_has_no_faults() => Assert.Empty(Faults(Rest, Rip, Whole));

    [Fact]
    public void A_rip_without_its_factory_edge_is_found() =>
        Assert.Contains(Faults(new SheetRemnant(0, 0, 14, 50), Rip with { Y = 14 }, Whole), f => f.Contains("factory edges"));

    [Fact]
    public void An_overlap_is_found() => Assert.Contains(Faults(Rest, Rip, Whole with { X = 49 }), f => f.Contains("parted"));

    [Fact]
    public void A_piece_outside_the_sheet_is_found() => Assert.Contains(Faults(Rest, Rip, Whole with { X = 51 }), f => f.Contains("outside"));

    [Fact]
    public void A_missing_piece_is_found() => Assert.Contains(Faults(Rest, Rip), f => f.Contains("piece 1"));

    [Fact]
    public void A_lost_offcut_is_found() => Assert.Contains(Faults(Rest with { Width = 27 }, Rip, Whole), f => f.Contains("cover"));

    [Fact]
    public void A_pinwheel_is_found()
    {
        var problem = new SheetProblem
        {
            Wanted = [new(1, 2), new(2, 1), new(1, 2), new(2, 1), new(1, 1)],
            Stock = [new SheetKind(3, 3, 1)],
        };
        var plan = new SheetSolution
        {
            Sheets =
            [
                new SheetUse(
                    0,
                    [new(0, 0, 0, 1, 2, false), new(1, 2, 0, 2, 1, false), new(2, 1, 2, 1, 2, false), new(3, 0, 1, 2, 1, false), new(4, 1, 1, 1, 1, false)],
                    []),
            ],
            Unplaced = [],
            Cost = 1,
            LowerBound = 1,
        };
        Assert.Contains(SheetGuillotine.Faults(problem, plan), f => f.Contains("parted"));
    }
}
