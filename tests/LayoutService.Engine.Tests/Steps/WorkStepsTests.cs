using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Steps;
using LayoutService.Engine.Tests.Takeoff;

namespace LayoutService.Engine.Tests.Steps;

public class WorkStepsTests
{
    private static readonly string[] Codes =
    [
        "find-hidden-lines", "check-joists", "mark-row", "cut-lumber", "cut-spacer", "fasten-ledgers", "fasten-wall-nailers", "fasten-blocks",
        "fasten-row", "fasten-scabs", "check-plane", "inspect-before-closing", "mark-centres", "check-sheets", "hang-course", "measure-and-hang",
        "screw-board", "tape-and-finish",
    ];

    [Fact]
    public void Every_row_piece_nailer_scab_and_board_piece_is_put_up_exactly_once() => ForEachCeiling((ceiling, steps) =>
    {
        Assert.Equal(Sorted(ceiling.Strapping.Rows.Select(row => row.Id)), Sorted(PutUp(steps, "row", "fasten-row")));
        Assert.Equal(
            Sorted(ceiling.Strapping.Rows.SelectMany(row => row.Pieces).Select(piece => piece.Id)),
            Sorted(PutUp(steps, "piece", "fasten-row")));
        Assert.Equal(
            Sorted(ceiling.Strapping.Nailers.Select(nailer => nailer.Id)),
            Sorted(PutUp(steps, "nailer", "fasten-ledgers", "fasten-wall-nailers", "fasten-blocks")));
        Assert.Equal(Sorted(ceiling.Strapping.Scabs.Select(scab => scab.Id)), Sorted(PutUp(steps, "scab", "fasten-scabs")));
        Assert.Equal(
            Sorted(ceiling.Sheets.Pieces.Select(piece => piece.Id)),
            Sorted(PutUp(steps, "board-piece", "hang-course", "measure-and-hang")));
    });

    [Fact]
    public void Every_row_is_marked_before_it_is_fastened_and_cut_before_that() => ForEachCeiling((ceiling, steps) =>
    {
        var cut = Only(steps, "cut-lumber");
        foreach (var row in ceiling.Strapping.Rows)
        {
            var fastened = When(steps, "row", row.Id, "fasten-row");
            Assert.True(When(steps, "row", row.Id, "mark-row") < fastened);
            Assert.True(cut < fastened);
        }

        Assert.All(ceiling.Strapping.Scabs, scab =>
            Assert.True(When(steps, "row", scab.RowId, "fasten-row") < When(steps, "scab", scab.Id, "fasten-scabs")));
    });

    [Fact]
    public void Nailers_are_cut_and_hang_before_the_first_row() => ForEachCeiling((ceiling, steps) =>
    {
        var firstRow = steps.FindIndex(step => step.Sentence.Code == "fasten-row");
        Assert.All(ceiling.Strapping.Nailers, nailer =>
            Assert.InRange(steps.FindIndex(step => step.Touches.Contains(new Touch("nailer", nailer.Id))), Only(steps, "cut-lumber") + 1, firstRow - 1));
    });

    [Fact]
    public void A_board_piece_goes_up_only_after_the_rows_behind_its_ends_and_the_inspection() => ForEachCeiling((ceiling, steps) =>
    {
        var inspected = Only(steps, "inspect-before-closing");
        foreach (var piece in ceiling.Sheets.Pieces)
        {
            var hung = When(steps, "board-piece", piece.Id, "hang-course", "measure-and-hang");
            Assert.True(inspected < hung);
            Assert.All(piece.Ends.SelectMany(end => end.Backing), row => Assert.True(When(steps, "row", row, "fasten-row") < hung));
        }
    });

    [Fact]
    public void Courses_start_at_the_start_wall_full_pieces_first_and_the_first_layer_before_the_second() => ForEachCeiling((ceiling, steps) =>
    {
        var order = steps.Where(step => step.Sentence.Code is "hang-course" or "measure-and-hang")
            .SelectMany(step => step.Touches)
            .Select(touch => ceiling.Sheets.Pieces.Single(piece => piece.Id == touch.Id))
            .ToList();
        var expected = ceiling.Sheets.Pieces
            .OrderBy(piece => piece.Layer)
            .ThenByDescending(piece => piece.Outline[0].Y) // the start wall is the far one
            .ThenBy(piece => piece.MeasureInPlace)
            .ThenBy(piece => piece.Outline[0].X);
        Assert.Equal(expected.Select(piece => piece.Id), order.Select(piece => piece.Id));
    });

    [Fact]
    public void Rows_are_fastened_in_order_from_the_measuring_corner() => ForEachCeiling((ceiling, steps) =>
        Assert.Equal(
            ceiling.Strapping.Rows.OrderBy(row => row.At).Select(row => row.Id),
            PutUp(steps, "row", "fasten-row")));

    [Fact]
    public void Work_stops_twice_before_the_first_fastener_and_before_the_board() => ForEachCeiling((_, steps) =>
    {
        Assert.Equal(["find-hidden-lines", "inspect-before-closing"], steps.Where(step => step.Hold).Select(step => step.Sentence.Code));
        Assert.Equal(0, Only(steps, "find-hidden-lines"));
        Assert.Equal("tape-and-finish", steps[^1].Sentence.Code);
    });

    [Fact]
    public void Steps_have_ids_of_their_own_known_codes_and_touch_only_what_is_in_the_plan() => ForEachCeiling((ceiling, steps) =>
    {
        Assert.Equal(Enumerable.Range(1, steps.Count).Select(number => $"step-{number}"), steps.Select(step => step.Id));
        Assert.All(steps, step => Assert.Contains(step.Sentence.Code, Codes));
        var known = ceiling.Joists.Members.Select(joist => ("joist", joist.Id))
            .Concat(ceiling.Strapping.Rows.Select(row => ("row", row.Id)))
            .Concat(ceiling.Strapping.Rows.SelectMany(row => row.Pieces).Select(piece => ("piece", piece.Id)))
            .Concat(ceiling.Strapping.Nailers.Select(nailer => ("nailer", nailer.Id)))
            .Concat(ceiling.Strapping.Scabs.Select(scab => ("scab", scab.Id)))
            .Concat(ceiling.Cut.Sticks.Select(stick => ("stock", stick.Id)))
            .Concat(ceiling.Cut.Sheets.Select(sheet => ("sheet-stock", sheet.Id)))
            .Concat(ceiling.Sheets.Pieces.Select(piece => ("board-piece", piece.Id)))
            .ToHashSet();
        Assert.All(steps.SelectMany(step => step.Touches), touch => Assert.Contains((touch.Kind, touch.Id), known));
    });

    [Fact]
    public void The_texts_of_the_small_ceiling_read_as_a_person_would_say_them()
    {
        var facts = SmallCeiling.Facts();
        var steps = WorkSteps.Write(
            facts.Strapping, facts.Sheets, facts.CutPlan, new JoistPlan([], []), UnitSystem.Imperial, facts.TapeText);

        Assert.Equal(
            "Row R2: with the tape hooked at the measuring corner, mark 46.75 in at both ends, strap on the far side of the mark.",
            steps.Where(step => step.Sentence.Code == "mark-row").ElementAt(1).Sentence.Text);
        Assert.Equal(
            "Row R2: hang P2, P3 on its marks, held off the row before by the 44.25 in block. Two fasteners at every joist, four where two "
            + "ends meet. Snap or sight the row straight before the second fastener goes in.",
            steps.Where(step => step.Sentence.Code == "fasten-row").ElementAt(1).Sentence.Text);
        Assert.Equal(
            "Course K2: measure the place of B2 at both edges, about 48 in × 96 in, cut it to that and hang it.",
            steps.Single(step => step.Sentence.Code == "measure-and-hang").Sentence.Text);
        Assert.Contains("at most 12 in apart along each strap, 0.375 in or more from", steps.Single(step => step.Sentence.Code == "screw-board").Sentence.Text);
    }

    [Fact]
    public void Who_hangs_the_board_is_who_the_caller_said_and_two_at_least()
    {
        var facts = SmallCeiling.Facts();
        Crew?[] crews = [null, new(1, true, null), new(2, false, null), new(4, true, 30)];
        var said = crews.Select(crew => WorkSteps.Write(
                facts.Strapping, facts.Sheets, facts.CutPlan, new JoistPlan([], []), UnitSystem.Imperial, facts.TapeText, crew: crew)
            .First(step => step.Sentence.Code == "hang-course").Sentence.Text);
        Assert.Equal(
            ["Two people and a lift", "Two people and a lift", "Two people", "4 people and a lift"],
            said.Select(text => text[(text.LastIndexOf(". ", StringComparison.Ordinal) + 2)..text.IndexOf("; edges touch", StringComparison.Ordinal)]));
    }

    [Fact]
    public void Figures_of_practice_are_whole_in_the_callers_units()
    {
        var facts = SmallCeiling.Facts();
        var steps = WorkSteps.Write(
            facts.Strapping, facts.Sheets, facts.CutPlan, new JoistPlan([], []), UnitSystem.Metric, length => $"{length.Millimetres:0.#} mm");

        Assert.Contains("at most 300 mm apart along each strap, 10 mm or more from", steps.Single(step => step.Sentence.Code == "screw-board").Sentence.Text);
        Assert.Contains("within 32 mm of a strap", steps.Single(step => step.Sentence.Code == "inspect-before-closing").Sentence.Text);
    }

    private static void ForEachCeiling(Action<MadeUpCeiling, List<WorkStep>> holds)
    {
        for (var seed = 1; seed <= 200; seed++)
        {
            var ceiling = MadeUpCeiling.Of(seed);
            List<WorkStep> steps =
            [
                .. WorkSteps.Write(
                    ceiling.Strapping, ceiling.Sheets, ceiling.Cut, ceiling.Joists, UnitSystem.Metric, length => length.ToString(), ceiling.Walls),
            ];
            try
            {
                holds(ceiling, steps);
            }
            catch (Xunit.Sdk.XunitException fault)
            {
                throw new InvalidOperationException($"seed {seed}", fault);
            }
        }
    }

    private static IEnumerable<string> PutUp(List<WorkStep> steps, string kind, params string[] codes) =>
        steps.Where(step => codes.Contains(step.Sentence.Code)).SelectMany(step => step.Touches).Where(touch => touch.Kind == kind).Select(touch => touch.Id);

    private static int When(List<WorkStep> steps, string kind, string id, params string[] codes)
    {
        var at = steps.FindIndex(step => codes.Contains(step.Sentence.Code) && step.Touches.Contains(new Touch(kind, id)));
        Assert.True(at >= 0, $"{kind} {id} is never touched by {string.Join(", ", codes)}");
        return at;
    }

    private static int Only(List<WorkStep> steps, string code) => steps.IndexOf(steps.Single(step => step.Sentence.Code == code));

    private static IEnumerable<string> Sorted(IEnumerable<string> ids) => ids.Order(StringComparer.Ordinal);
}
