using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>The references themselves, on cases small enough to count by hand.</summary>
public sealed class ReferenceTests
{
    private const long Mm = Length.PerMillimetre;

    [Fact]
    public void A_room_of_12_ft_along_the_joists_needs_ten_rows_at_16_in()
    {
        // first centre 1-1/4 in from the wall, last 142-3/4 in: 141-1/2 in is nine spaces of 16 in at least
        Assert.Equal(10, RowProgram.FewestFullRows(Room([(0, 0), (144, 0), (144, 120), (0, 120)])));
    }

    [Fact]
    public void Exactly_nine_spaces_of_16_in_need_ten_rows_and_a_quarter_inch_more_needs_eleven()
    {
        Assert.Equal(10, RowProgram.FewestFullRows(Room([(0, 0), (146.5m, 0), (146.5m, 120), (0, 120)])));
        Assert.Equal(11, RowProgram.FewestFullRows(Room([(0, 0), (146.75m, 0), (146.75m, 120), (0, 120)])));
    }

    [Fact]
    public void The_end_wall_of_a_short_arm_is_served_without_a_full_row_more()
    {
        // the arm ends at 70 in: a full row there would break the spacing of the long part, a short one does not
        Assert.Equal(10, RowProgram.FewestFullRows(Room([(0, 0), (146.5m, 0), (146.5m, 60), (70, 60), (70, 120), (0, 120)])));
    }

    [Fact]
    public void A_jog_of_an_inch_is_served_by_the_row_at_the_wall_that_stands_further_in()
    {
        // 146-1/2 in from the jog to the far wall is exactly nine spaces; from the wall behind it they would not reach
        Assert.Equal(10, RowProgram.FewestFullRows(Room([(0, 0), (147.5m, 0), (147.5m, 120), (1, 120), (1, 60), (0, 60)])));
    }

    [Fact]
    public void Two_courses_of_24_ft_take_six_sheets_of_8_ft_by_hand()
    {
        var room = Room([(0, 0), (288, 0), (288, 96), (0, 96)]);
        var sheet = new SheetStock("B", Length.FromInches(48), Length.FromInches(96), null, 1, 10m);
        Assert.Equal(60, HandBoard.LeastCost(room with { Sheets = room.Sheets with { Stock = [sheet] } }, HandRule.Unbacked));
    }

    [Fact]
    public void The_strap_reference_puts_two_pieces_in_a_stick_with_one_kerf()
    {
        // two bars of 1998.5 mm from sticks of 4003 mm less 3 mm trim: 3997 + 3 mm kerf is the whole stick
        var bar = new Bar([new(-1, 0), new(-1, 0)], [new(0, 1, 3997 * Mm / 2)], []);
        var problem = new BarProblem([bar, bar], [], [new StickKind(4003 * Mm, 7)], 3 * Mm, 3 * Mm, 10);
        Assert.Equal(new LumberReference(7, 7, true), LumberProgram.Solve(problem, Mm / 2, 1000));
        Assert.Equal(14, LumberProgram.Solve(problem with { Kerf = 4 * Mm }, Mm / 2, 1000)!.Cost);
    }

    private static Survey Room((decimal X, decimal Y)[] corners)
    {
        var plain = SeededSurveys.Make(0).Survey;
        return plain with
        {
            Units = UnitSystem.Imperial,
            Room = new RoomSurvey { Outline = [.. corners.Select(c => new Point(Length.FromInches(c.X), Length.FromInches(c.Y)))] },
            JoistFields = [new JoistField { Id = "F", RunDegrees = 0, Face = Length.FromInches(1.5m), Spacing = Length.FromInches(16), First = Length.FromInches(8) }],
            Strapping = plain.Strapping with { Face = Length.FromInches(2.5m), MaxSpacing = Length.FromInches(16) },
        };
    }
}
