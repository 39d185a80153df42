using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Tests.Takeoff;

/// <summary>
/// An invented ceiling of 8 × 8 ft, small enough to count on paper: three rows over six joists, one joint on a joist, one
/// scabbed joint, one ledger, two sheets.
/// </summary>
internal static class SmallCeiling
{
    public static TakeoffFacts Facts() => new()
    {
        Strapping = Strapping(),
        Sheets = Sheets(30, 28),
        CutPlan = Cuts(),
        StrappingWish = new StrappingWish
        {
            SizeName = "1x3",
            Thickness = Inches(0.75m),
            Face = Inches(2.5m),
            MaxSpacing = Inches(48),
            JointsAllowed = JointStyles.OnJoist | JointStyles.Scab,
            MinPiece = Inches(24),
            Stock = [new("len8", Inches(96), PackPrice: 2.49m), new("len12", Inches(144), PackPrice: 3.99m)],
            Kerf = Inches(0.125m),
            EndTrim = Inches(0.125m),
            EndClearance = Inches(0.25m),
        },
        SheetWish = new SheetWish
        {
            Type = "regular",
            Thickness = Inches(0.5m),
            Stock = [new("b8", Inches(48), Inches(96), PackPrice: 14.98m)],
            CutAllowance = Inches(0.125m),
        },
        Prices = Prices(),
        Ruleset = "us-irc-2021",
        Units = UnitSystem.Imperial,
        TapeText = length => $"{length.Inches:0.####} in",
    };

    public static PriceList Prices() => new()
    {
        Currency = "USD",
        Items =
        [
            new("nailer", "n8", "2408", 1, 4.25m),
            new("strap-screw", null, "s50", 50, 6.50m),
            new("strap-screw", null, "s100", 100, 9.99m),
            new("board-screw", null, "d100", 100, 4.99m),
            new("board-screw", null, "d500", 500, 12m),
            new("joint-tape", null, "t75", 75, 3.29m),
            new("joint-tape", null, "t250", 250, 6.49m),
            new("joint-compound", null, "c12", 12, 9.99m),
            new("joint-compound", null, "c50", 50, 18.50m),
            new("scab-adhesive", null, "g", 0.295m, 5.49m),
        ],
    };

    public static StrappingPlan Strapping() => new()
    {
        Rows =
        [
            Row("R1", 1.25m, null, ("P1", 96)),
            Row("R2", 48, 46.75m, ("P2", 40), ("P3", 56)),
            Row("R3", 94.75m, 46.75m, ("P4", 50), ("P5", 46)),
        ],
        Nailers = [new("N1", NailerRole.Ledger, At(0, 0), At(96, 0), Inches(96), "n8", Inches(96), [])],
        Spacers = [new(Inches(44.25m), ["R1", "R2", "R3"])],
        Crossings =
        [
            .. from row in (string[])["R1", "R2", "R3"]
               from joist in Enumerable.Range(1, 6)
               let joint = row == "R2" && joist == 3
               select new Crossing(row, $"J{joist}", At(0, 0), joint ? CrossingKind.Joint : CrossingKind.Plain, joint ? 4 : 2),
        ],
        Scabs = [new("C1", "R3", At(94.75m, 50), Length.FromMillimetres(300), "len12")],
        Fastening = [],
        WidestSpacing = Inches(46.75m),
        WidestSpacingRows = ["R1", "R2"],
    };

    public static SheetPlan Sheets(int firstScrews, int secondScrews) => new()
    {
        Courses = [new("K1", 1, Inches(0), Inches(48)), new("K2", 1, Inches(48), Inches(96))],
        Pieces = [Board("B1", "K1", 0, firstScrews), Board("B2", "K2", 48, secondScrews)],
        Joints = [new(BoardJointKind.Tapered, "B1", "B2", At(0, 48), At(96, 48), Inches(96))],
        ButtJointLength = Inches(48),
        TaperedJointLength = Inches(96),
        CutEdgeJointLength = Inches(12),
        PerimeterLength = Inches(372),
        StartWalls = ["W1"],
    };

    public static CutPlan Cuts() => new(
        [
            Stick("S1", "1x3", 96, "len8", "P1"),
            Stick("S2", "1x3", 96, "len8", "P2", "P5"),
            Stick("S3", "1x3", 96, "len8", "P3"),
            Stick("S4", "1x3", 144, "len12", "P4", "C1"),
            Stick("S5", "2x4", 96, "n8", "N1"),
        ],
        [Sheet("A1", "B1"), Sheet("A2", "B2")],
        Inches(0.125m),
        Inches(0.125m),
        []);

    public static Length Inches(decimal inches) => Length.FromInches(inches);

    public static Point At(decimal x, decimal y) => new(Inches(x), Inches(y));

    private static StrapRow Row(string id, decimal at, decimal? spacing, params (string Id, decimal Length)[] pieces) => new()
    {
        Id = id,
        At = Inches(at),
        Short = false,
        Marks =
        [
            new("start", At(at, 0), Inches(at - 1.25m), "far"),
            new("end", At(at, 96), Inches(at - 1.25m), "far"),
        ],
        SpacingBefore = spacing is { } inches ? Inches(inches) : null,
        Reasons = [],
        Pieces =
        [
            .. pieces.Select(piece => new RowPiece
            {
                Id = piece.Id,
                From = At(at, 0),
                To = At(at, piece.Length),
                Length = Inches(piece.Length),
                CutLength = Inches(piece.Length),
                StockId = "len8",
                StartJoint = JointKind.Wall,
                EndJoint = JointKind.Wall,
            }),
        ],
    };

    private static BoardPiece Board(string id, string course, decimal from, int screws) => new()
    {
        Id = id,
        Course = course,
        Layer = 1,
        Outline = [At(0, from), At(96, from), At(96, from + 48), At(0, from + 48)],
        Width = Inches(48),
        Length = Inches(96),
        AreaSquareMetres = 32 * 0.09290304,
        StockId = "b8",
        Ends = [],
        MeasureInPlace = id == "B2",
        Screws = screws,
    };

    private static Stick Stick(string id, string size, decimal length, string stock, params string[] pieces) =>
        new(id, size, Inches(length), stock, [.. pieces.Select(piece => new StickCut(piece, Inches(12)))], Length.Zero);

    private static CutSheet Sheet(string id, string piece) => new(
        id, Inches(48), Inches(96), "b8", [new(piece, Length.Zero, Length.Zero, Inches(48), Inches(96), false)], []);
}
