using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Steps;

/// <summary>Cutting and hanging the board, course by course from the start wall, then screws; taping comes last.</summary>
internal static class BoardSteps
{
    public static void Write(
        StepList list, SheetPlan sheets, CutPlan cut, IReadOnlyList<(Course Course, IReadOnlyList<BoardPiece> Pieces)> courses, TradeText trade)
    {
        if (sheets.Pieces.Count == 0)
        {
            return;
        }

        if (cut.Sheets.Count > 0)
        {
            list.Add(
                Sentence.Of(
                    "check-sheets",
                    $"Lay out {Counted.Of(cut.Sheets.Count, "sheet")} by the sheet cut plan. Cut each piece just before it is hung, face up; "
                    + "keep each offcut that the plan uses again and write its next piece on it. Sizes in these steps run to the walls; the cut plan's are less the gap left there.",
                    ("sheets", StepList.Number(cut.Sheets.Count))),
                cut.Sheets.Select(sheet => new Touch(TouchKinds.SheetStock, sheet.Id)));
        }

        var layers = sheets.Pieces.Max(piece => piece.Layer);
        foreach (var layer in courses.GroupBy(course => course.Course.Layer))
        {
            foreach (var (course, pieces) in layer)
            {
                Hang(list, course, pieces, trade);
            }

            Screw(list, [.. sheets.Pieces.Where(piece => piece.Layer == layer.Key)], layers == 1 ? string.Empty : $"Layer {StepList.Number(layer.Key)}: d", trade);
        }
    }

    // a course: what is cut by the plan first, with its holes; then what is measured in place
    private static void Hang(StepList list, Course course, IReadOnlyList<BoardPiece> pieces, TradeText trade)
    {
        var known = pieces.Where(piece => !piece.MeasureInPlace).ToList();
        FixtureSteps.CutHoles(list, course, known);
        HangKnown(list, course, known, trade);
        foreach (var piece in pieces.Where(piece => piece.MeasureInPlace))
        {
            if (piece.Cutouts.Count > 0)
            {
                // its holes are marked on the piece as it is, not as it was drawn
                Measure(list, course, piece, trade);
                FixtureSteps.CutHoles(list, course, [piece]);
            }

            MeasureAndHang(list, course, piece, trade);
        }
    }

    private static void HangKnown(StepList list, Course course, List<BoardPiece> pieces, TradeText trade)
    {
        if (pieces.Count == 0)
        {
            return;
        }

        var said = string.Join(", ", pieces.Select(piece => $"{piece.Id} ({trade.Cut(piece.Width)} × {trade.Cut(piece.Length)})"));
        list.Add(
            Sentence.Of(
                "hang-course",
                $"Course {course.Id}: hang {said}{(pieces.Count > 1 ? ", in this order" : string.Empty)}, long edges across the {trade.Carrier}s and butt ends on the middle of their {trade.Carrier}"
                + $"{Backing(pieces)}. {trade.Hands}; edges touch, none is forced.",
                ("course", course.Id),
                ("pieces", said)),
            pieces.Select(Touched));
    }

    private static void Measure(StepList list, Course course, BoardPiece piece, TradeText trade) => list.Add(
        Sentence.Of(
            "measure-and-cut",
            $"Course {course.Id}: measure the place of {piece.Id} at both edges, about {trade.Cut(piece.Width)} × {trade.Cut(piece.Length)}, and cut it to that "
            + "before its holes are marked.",
            ("course", course.Id),
            ("piece", piece.Id),
            ("width", trade.Cut(piece.Width)),
            ("length", trade.Cut(piece.Length))),
        [Touched(piece)]);

    private static void MeasureAndHang(StepList list, Course course, BoardPiece piece, TradeText trade)
    {
        // one with holes was measured and cut before they were marked
        var notes = string.Concat(piece.Notes.Where(note => piece.Cutouts.Count == 0 || note.Code != "measure_shape").Select(note => $" {note.Text}"));
        var measure = piece.Cutouts.Count > 0 ? $"hold {piece.Id} up to its place" : $"measure the place of {piece.Id} at both edges, about {trade.Cut(piece.Width)} × {trade.Cut(piece.Length)}, cut it to that";
        list.Add(
            Sentence.Of(
                "measure-and-hang",
                $"Course {course.Id}: {measure} and hang it{Backing([piece])}.{notes}",
                ("course", course.Id),
                ("piece", piece.Id),
                ("width", trade.Cut(piece.Width)),
                ("length", trade.Cut(piece.Length))),
            [Touched(piece)]);
    }

    private static string Backing(List<BoardPiece> pieces)
    {
        var rows = pieces.SelectMany(piece => piece.Ends).SelectMany(end => end.Backing).Distinct().ToList();
        return rows.Count == 0 ? string.Empty : $" ({StepList.Names(rows)})";
    }

    private static void Screw(StepList list, List<BoardPiece> pieces, string layer, TradeText trade)
    {
        var screws = pieces.Sum(piece => piece.Screws);

        // 12 in and 3/8 in: Gypsum Association's guide and trade guides; 300 mm and 10 mm: NBC subsection 9.29.5.
        var (field, edge) = (trade.Of(12, 300), trade.Of(0.375m, 10));
        list.Add(
            Sentence.Of(
                "screw-board",
                $"{(layer.Length == 0 ? "D" : layer)}rive the rest of the ceiling's {StepList.Number(screws)} screws into the {trade.Carrier}s: at most {field} apart along each {trade.Carrier}, {edge} or more from "
                + "every edge, heads just below the paper. Work from the middle of a sheet to its edges.",
                ("screws", StepList.Number(screws)),
                ("spacing", field),
                ("edge", edge)),
            pieces.Select(Touched));
    }

    /// <summary>Taping, once the ceiling and its bulkheads are boarded.</summary>
    public static void Finish(StepList list, SheetPlan sheets, BulkheadPlan bulkheads, TradeText trade)
    {
        if (sheets.Pieces.Count == 0)
        {
            return;
        }

        foreach (var well in sheets.WellBeads.GroupBy(bead => bead.OpeningId))
        {
            list.Add(
                Sentence.Of(
                    "bead-well",
                    $"Bead the edge of {well.Key}: {StepList.Number(well.Count())} lengths, {trade.Of(well.Aggregate(Length.Zero, (sum, bead) => sum + bead.Length))} in all, fastened every {trade.Of(12, 300)}.",
                    ("opening", well.Key),
                    ("length", trade.Of(well.Aggregate(Length.Zero, (sum, bead) => sum + bead.Length)))),
                sheets.Pieces.Where(piece => piece.Layer == sheets.Pieces.Max(p => p.Layer)).Select(Touched));
        }

        if (sheets.EdgeBeads.Count > 0)
        {
            var (edges, run) = (StepList.Names(sheets.EdgeBeads.Select(b => b.WallId).Distinct()), trade.Of(sheets.EdgeBeadLength));
            list.Add(
                Sentence.Of(
                    "bead-open-edges",
                    $"Bead the edges without a wall, {edges}: {run} in all, to the snapped line and fastened every {trade.Of(12, 300)}.",
                    ("edges", edges),
                    ("length", run)),
                sheets.Pieces.Where(piece => piece.Layer == sheets.Pieces.Max(p => p.Layer)).Select(Touched));
        }

        var along = sheets.TaperedJointLength + sheets.CutEdgeJointLength;
        var (butt, tapered) = (trade.Of(sheets.ButtJointLength), trade.Of(along));
        var face = sheets.Pieces.Max(piece => piece.Layer);
        list.Add(
            Sentence.Of(
                "tape-and-finish",
                // 10 °C for 48 h: NBC subsection 9.29.5.
                "Keep the room at 10 °C (50 °F) or warmer from 48 hours before taping to 48 hours after. Tape "
                + (sheets.ButtJointLength > Length.Zero ? $"the butt joints ({butt}), " : string.Empty)
                + (along > Length.Zero ? $"the joints {(trade.Direct ? "across" : "along")} the joists ({tapered}), " : string.Empty)
                + $"the angle at the walls{(bulkheads.Bulkheads.Count > 0 ? " and the joints and inside corners of the bulkheads" : string.Empty)}; each coat dries before the next.",
                ("butt", butt),
                ("along", tapered)),
            [.. sheets.Pieces.Where(piece => piece.Layer == face).Select(Touched),
             .. bulkheads.Bulkheads.SelectMany(b => b.Boards).Select(board => new Touch(TouchKinds.BoardPiece, board.Id))]);
    }

    private static Touch Touched(BoardPiece piece) => new(TouchKinds.BoardPiece, piece.Id);
}
