using LayoutService.Drawing.Paper;
using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Drawing;

/// <summary>
/// A bulkhead along the wall x = 0, from y = 0 to 100, 24 in wide and 9 in below a ceiling of 3/4 in strap and 1/2 in board, framed
/// with 2x2 of 1-1/2 in and boarded with 1/2 in. Ceiling 1.25 below the joists, underside 10.25, frame down to 9.75.
/// </summary>
public sealed class BulkheadSectionTests
{
    private static readonly BulkheadMember[] Frame =
    [
        Member("m1", MemberRole.Rail, (22.75m, 0), (22.75m, 100), 0, 1.5m),
        Member("m2", MemberRole.Rail, (22.75m, 0), (22.75m, 100), 8.25m, 9.75m),
        Member("m3", MemberRole.Ledger, (0.75m, 0), (0.75m, 100), 8.25m, 9.75m),
        Member("m4", MemberRole.Rung, (22.75m, 48), (22.75m, 48), 1.5m, 8.25m),
        Member("m5", MemberRole.Tie, (1.5m, 32), (22, 32), 8.25m, 9.75m),
        Member("m6", MemberRole.Tie, (1.5m, 48), (22, 48), 8.25m, 9.75m),
    ];

    [Fact]
    public void The_cut_goes_through_rails_ledger_and_board_and_shows_the_nearest_rung_and_tie_behind()
    {
        var section = BulkheadSection.Of(Box(Frame), In(0.5m).Units)!;
        Assert.Equal(24m, Inches(section.Width));

        // from the wall or from the face, whichever way the face is listed: rails 22 to 23.5 from the wall are 0.5 to 2 from the face
        Assert.Equal([(0.5m, 2m, 0m, 1.5m), (0.5m, 2m, 8.25m, 9.75m), (22.5m, 24m, 8.25m, 9.75m)], FromFace(section, section.Cut));
        Assert.Equal([(0.5m, 2m, 1.5m, 8.25m), (2m, 22.5m, 8.25m, 9.75m)], FromFace(section, section.Behind));
        // a face of 9 in stands on the underside's board and goes up past the edge of the ceiling's board, 1/2 in
        Assert.Equal([(0m, 0.5m, 0.75m, 9.75m)], FromFace(section, section.Faces));
        Assert.Equal((0m, 24m, 9.75m, 10.25m), FromFace(section, [section.Underside]).Single());
    }

    [Fact]
    public void Members_beyond_the_bulkhead_and_across_the_room_are_not_in_the_section()
    {
        var far = Member("m7", MemberRole.Rail, (80, 0), (80, 100), 0, 1.5m);
        var elsewhere = Member("m8", MemberRole.Rail, (22.75m, 60), (22.75m, 100), 3, 4.5m);
        Assert.Equal(3, BulkheadSection.Of(Box([.. Frame, far, elsewhere]), In(0.5m).Units)!.Cut.Count);
    }

    private static IEnumerable<(decimal From, decimal To, decimal Top, decimal Bottom)> FromFace(BulkheadSection section, IEnumerable<SectionBox> boxes)
    {
        var isFirst = section.Faces[0].From < section.Width / 2;
        return boxes.Select(box => isFirst
                ? (Inches(box.From), Inches(box.To), Inches(box.Top), Inches(box.Bottom))
                : (Inches(section.Width - box.To), Inches(section.Width - box.From), Inches(box.Top), Inches(box.Bottom)))
            .Order();
    }

    private static Bulkhead Box(BulkheadMember[] members) => new()
    {
        Id = "box", Parts = [[[At(0, 0), At(24, 0), At(24, 100), At(0, 100)]]], Drop = In(9), Top = In(0), FrameBottom = In(9.75m), Underside = In(10.25m), BoardedAbove = false,
        FrameSize = "2x2", FrameStock = [], FrameThickness = In(1.5m), FrameFace = In(1.5m), Joins = [], Members = members, Beads = [], InsideCorners = [], Backing = [], Fireblocking = [],
        UndersideAboveFloor = null,
        Boards =
        [
            new() { Id = "b1", Face = BoardFace.Face, Outline = [At(24, 0), At(24, 100)], Width = In(9), Length = In(100), AreaSquareMetres = 0.58, StockId = "sheet", Screws = 0 },
        ],
    };

    private static BulkheadMember Member(string id, MemberRole role, (decimal X, decimal Y) from, (decimal X, decimal Y) to, decimal top, decimal bottom) =>
        new(id, role, At(from.X, from.Y), At(to.X, to.Y), In(top), In(bottom), In(100), In(100), "stick");

    private static decimal Inches(double units) => Math.Round((decimal)units / In(1).Units, 4);

    private static Length In(decimal inches) => Length.FromInches(inches);

    private static Point At(decimal x, decimal y) => new(In(x), In(y));
}
