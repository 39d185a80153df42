using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the sheets.</summary>
internal static class SheetsWriting
{
    public static SheetsAnswer Of(SheetPlan plan, AnswerInk ink) => new()
    {
        Courses = [.. plan.Courses.Select(c => new CourseAnswer(c.Id, c.Layer, ink.Number(c.From), ink.Number(c.To)))],
        Pieces = [.. plan.Pieces.Select(p => Piece(p, ink))],
        Joints = [.. plan.Joints.Select(j => new BoardJointAnswer(
            Words.Text(j.Kind), j.PieceA, j.PieceB, ink.Place(j.From), ink.Place(j.To), ink.Number(j.Length)))],
        ButtJointLength = ink.Number(plan.ButtJointLength),
        TaperedJointLength = ink.Number(plan.TaperedJointLength),
        CutEdgeJointLength = ink.Number(plan.CutEdgeJointLength),
        ControlJointLength = plan.ControlJointLength == Engine.Measures.Length.Zero ? null : ink.Number(plan.ControlJointLength),
        PerimeterLength = ink.Number(plan.PerimeterLength),
        StartWalls = plan.StartWalls,
        WellBeads = plan.WellBeads.Count == 0 ? null : [.. plan.WellBeads.Select(b => new WellBeadAnswer(b.OpeningId, ink.Place(b.From), ink.Place(b.To), ink.Number(b.Length), ink.Cut(b.Length)))],
        EdgeBeads = plan.EdgeBeads.Count == 0 ? null : [.. plan.EdgeBeads.Select(b => new EdgeBeadAnswer(b.WallId, ink.Place(b.From), ink.Place(b.To), ink.Number(b.Length), ink.Cut(b.Length)))],
    };

    private static BoardPieceAnswer Piece(BoardPiece piece, AnswerInk ink) => new()
    {
        Id = piece.Id,
        Course = piece.Course,
        Layer = piece.Layer,
        Outline = ink.Ring(piece.Outline),
        Width = ink.Number(piece.Width),
        WidthText = ink.Cut(piece.Width),
        Length = ink.Number(piece.Length),
        LengthText = ink.Cut(piece.Length),
        Area = Figures.Area(piece.AreaSquareMetres, ink.Imperial),
        StockId = piece.StockId,
        Ends = [.. piece.Ends.Select(e => new ButtEndAnswer(ink.Number(e.At), ink.Mark(e.At), ink.Number(e.From), ink.Number(e.To), e.Backing))],
        Cutouts = Cutouts(piece.Cutouts, ink),
        MeasureInPlace = piece.MeasureInPlace ? true : null,
        Notes = [.. piece.Notes.Select(AnswerInk.Say)],
        Screws = piece.Screws,
    };

    /// <summary>Holes as marked.</summary>
    public static IReadOnlyList<CutoutAnswer> Cutouts(IReadOnlyList<BoardCutout> cutouts, AnswerInk ink) => [.. cutouts.Select(c => new CutoutAnswer(
        c.FixtureId, ink.Place(c.Corner), ink.Place(c.Centre),
        c.Size.Round ? new(ink.Number(c.Size.Width), null, null) : new(null, ink.Number(c.Size.Width), ink.Number(c.Size.Height)), c.Mark.Text))];
}
