using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Tests.Steps;

/// <summary>Invented plans of every size, from a seed: rows out of order, nailers of every role, scabs, courses on rows.</summary>
internal sealed record MadeUpCeiling(StrappingPlan Strapping, SheetPlan Sheets, CutPlan Cut, JoistPlan Joists, IReadOnlyList<WallLine> Walls)
{
    public static MadeUpCeiling Of(int seed)
    {
        var random = new Random(seed);
        var rows = Enumerable.Range(1, random.Next(1, 9)).Select(number => Row($"R{number}", random)).ToList();
        random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(rows));
        var nailers = Enumerable.Range(1, random.Next(0, 5)).Select(number => new Nailer(
            $"N{number}", (NailerRole)random.Next(3), At(0, 0), At(0, 500), Mm(500), "n", Mm(500), [])).ToList();
        var strapping = new StrappingPlan
        {
            Rows = rows,
            Nailers = nailers,
            Spacers = [new(Mm(342), [.. rows.Select(row => row.Id)])],
            Crossings = [],
            Scabs = [.. rows.Where(_ => random.Next(3) == 0).Select(row => new Scab($"C-{row.Id}", row.Id, At(0, 0), Mm(300), "s"))],
            Fastening = [],
            WidestSpacing = Mm(400),
            WidestSpacingRows = [],
        };
        var courses = Enumerable.Range(0, random.Next(1, 5)).Select(number => new Course($"K{number}", 1, Mm(number * 1200), Mm((number + 1) * 1200))).ToList();
        if (random.Next(2) == 0)
        {
            courses.AddRange(courses.Select(course => course with { Layer = 2 }).ToList());
        }

        var pieces = courses.SelectMany(course => Pieces(course, rows, random)).ToList();
        random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(pieces));
        return new MadeUpCeiling(strapping, DrawSheets(courses, pieces), Cuts(strapping, pieces), DrawJoists(), DrawWalls(courses));
    }

    private static StrapRow Row(string id, Random random)
    {
        var number = int.Parse(id.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture);
        return new StrapRow
        {
            Id = id,
            At = Mm((number * 406) - 374),
            Short = false,
            Marks = random.Next(4) == 0 ? [] : [new("start", At(0, 0), Mm((number * 406) - 406), "far"), new("end", At(0, 9), Mm((number * 406) - 406), "far")],
            SpacingBefore = number == 1 ? null : Mm(406),
            Reasons = [],
            Pieces = [.. Enumerable.Range(1, random.Next(1, 4)).Select(piece => Piece($"{id}-P{piece}"))],
        };
    }

    private static RowPiece Piece(string id) => new()
    {
        Id = id,
        From = At(0, 0),
        To = At(0, 900),
        Length = Mm(900),
        CutLength = Mm(900),
        StockId = "s",
        StartJoint = JointKind.Wall,
        EndJoint = JointKind.Joist,
    };

    private static IEnumerable<BoardPiece> Pieces(Course course, List<StrapRow> rows, Random random) =>
        Enumerable.Range(0, random.Next(1, 5)).Select(number => new BoardPiece
        {
            Id = $"{course.Id}-L{course.Layer}-B{number}",
            Course = course.Id,
            Layer = course.Layer,
            Outline =
            [
                new(Mm(number * 2400), course.From), new(Mm((number + 1) * 2400), course.From),
                new(Mm((number + 1) * 2400), course.To), new(Mm(number * 2400), course.To),
            ],
            Width = course.To - course.From,
            Length = Mm(2400),
            AreaSquareMetres = 2.88,
            StockId = "b",
            Ends = number == 0 ? [] : [new(Mm(number * 2400), course.From, course.To, [rows[random.Next(rows.Count)].Id])],
            MeasureInPlace = random.Next(3) == 0,
            Notes = [Sentence.Of("keep-taper", "Keep the taper to the field.")],
            Screws = 30,
        });

    private static SheetPlan DrawSheets(List<Course> courses, List<BoardPiece> pieces) => new()
    {
        Courses = courses,
        Pieces = pieces,
        Joints = [],
        ButtJointLength = Mm(1200),
        TaperedJointLength = Mm(2400),
        CutEdgeJointLength = Length.Zero,
        PerimeterLength = Mm(9600),
        StartWalls = ["far-wall"],
    };

    private static CutPlan Cuts(StrappingPlan plan, List<BoardPiece> pieces) => new(
        [
            .. plan.Rows.SelectMany(row => row.Pieces).Select(piece => piece.Id)
                .Concat(plan.Scabs.Select(scab => scab.Id)).Concat(plan.Nailers.Select(nailer => nailer.Id))
                .Select(id => new Stick($"S-{id}", "1x3", Mm(2400), "s", [new(id, Mm(900))], Length.Zero)),
        ],
        [.. pieces.Select(piece => new CutSheet($"A-{piece.Id}", Mm(1200), Mm(2400), "b", [], []))],
        Mm(3),
        Mm(3),
        []);

    private static JoistPlan DrawJoists() => new(
        [.. Enumerable.Range(1, 4).Select(number => new JoistMember($"J{number}", "f", Mm(number * 400), Mm(38), At(0, number * 400), At(9600, number * 400), null))],
        []);

    private static List<WallLine> DrawWalls(List<Course> courses) =>
    [
        new("near-wall", 0, At(0, 0), At(9600, 0), Mm(9600)),
        new("far-wall", 2, new(Mm(9600), courses[^1].To), new(Mm(0), courses[^1].To), Mm(9600)),
    ];

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    private static Point At(decimal x, decimal y) => new(Mm(x), Mm(y));
}
