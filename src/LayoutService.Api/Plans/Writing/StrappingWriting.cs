using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Strapping;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the straps.</summary>
internal static class StrappingWriting
{
    public static StrappingAnswer Of(StrappingPlan plan, AnswerInk ink) => new()
    {
        Method = plan.Direct ? Words.Text(CeilingMethod.Direct) : null,
        Rows = [.. plan.Rows.Select(r => Row(r, ink))],
        Nailers = [.. plan.Nailers.Select(n => Nailer(n, ink))],
        Plane = plan.Plane is { } plane
            ? new StrapPlaneAnswer(
                ink.Number(plane.Level), plane.RowId, plane.SupportId, ink.Place(plane.At), ink.Number(plane.StepFound), ink.Number(plane.StepLeft), plane.StepRows, plane.Estimated)
            : null,
        Shims = [.. plan.Crossings.Where(c => c.Shims > 0).Select(c => new ShimAnswer(
            c.RowId, c.SupportId, ink.Place(c.At), ink.Number(c.Gap), ink.Number(c.Packing), ink.Mark(c.Packing), c.Shims))],
        Spacers = [.. plan.Spacers.Select(s => new SpacerAnswer(ink.Number(s.Length), ink.Cut(s.Length), s.Between))],
        Crossings = [.. plan.Crossings.Select(c => new CrossingAnswer(c.RowId, c.SupportId, ink.Place(c.At), Words.Text(c.Kind), c.Fasteners))],
        Scabs = [.. plan.Scabs.Select(s => new ScabAnswer(s.Id, s.RowId, ink.Place(s.At), ink.Number(s.Length), ink.Cut(s.Length), s.StockId))],
        Fastening = [.. plan.Fastening.Select(AnswerInk.Say)],
        WidestSpacing = ink.Number(plan.WidestSpacing),
        WidestSpacingText = ink.Mark(plan.WidestSpacing),
        WidestSpacingRows = plan.WidestSpacingRows,
    };

    public static IReadOnlyList<SlackAnswer> Slack(IReadOnlyList<RowSlack> rows, AnswerInk ink) => [.. rows.Select(r => new SlackAnswer(
        r.RowId, ink.Number(r.TowardsLow), ink.Cut(r.TowardsLow), r.HeldLow, ink.Number(r.TowardsHigh), ink.Cut(r.TowardsHigh), r.HeldHigh))];

    private static RowAnswer Row(StrapRow row, AnswerInk ink) => new()
    {
        Id = row.Id,
        At = ink.Number(row.At),
        AtText = ink.Mark(row.At),
        Short = row.Short ? true : null,
        Marks = [.. row.Marks.Select(m => new MarkAnswer
        {
            End = m.End,
            At = ink.Place(m.At),
            NearEdge = ink.Number(m.NearEdge),
            NearEdgeText = ink.Mark(m.NearEdge),
            Side = m.Side,
        })],
        SpacingBefore = ink.Number(row.SpacingBefore),
        SpacingBeforeText = ink.Mark(row.SpacingBefore),
        Reasons = AnswerInk.Why(row.Reasons),
        Pieces = [.. row.Pieces.Select(p => Piece(p, ink))],
    };

    private static PieceAnswer Piece(RowPiece piece, AnswerInk ink) => new()
    {
        Id = piece.Id,
        From = ink.Place(piece.From),
        To = ink.Place(piece.To),
        Length = ink.Number(piece.Length),
        LengthText = ink.Mark(piece.Length),
        CutLength = ink.Number(piece.CutLength),
        CutLengthText = ink.Cut(piece.CutLength),
        StockId = piece.StockId,
        StartJoint = Words.Text(piece.StartJoint),
        EndJoint = Words.Text(piece.EndJoint),
        Bevel = piece.StartBevel is null && piece.EndBevel is null
            ? null
            : new BevelsAnswer(BevelOf(piece.StartBevel, ink), BevelOf(piece.EndBevel, ink)),
        FastenAfter = piece.FastenAfter.Count == 0
            ? null
            : [.. piece.FastenAfter.Select(f => new FastenAfterAnswer(f.SupportId, f.Fills, f.Why.Code, f.Why.Text))],
    };

    private static BevelAnswer? BevelOf(Bevel? bevel, AnswerInk ink) => bevel is null
        ? null
        : new(Figures.Plain(bevel.Degrees, 2), ink.Number(bevel.LongPoint), ink.Mark(bevel.LongPoint), bevel.LongEdge);

    private static NailerAnswer Nailer(Nailer nailer, AnswerInk ink) => new()
    {
        Id = nailer.Id,
        Role = Words.Text(nailer.Role),
        From = ink.Place(nailer.From),
        To = ink.Place(nailer.To),
        Length = ink.Number(nailer.Length),
        LengthText = ink.Mark(nailer.Length),
        CutLength = ink.Number(nailer.CutLength),
        CutLengthText = ink.Cut(nailer.CutLength),
        StockId = nailer.StockId,
        Reasons = AnswerInk.Why(nailer.Reasons),
    };
}
