using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the bulkheads.</summary>
internal static class BulkheadsWriting
{
    public static IReadOnlyList<BulkheadAnswer> Of(BulkheadPlan plan, AnswerInk ink) => [.. plan.Bulkheads.Select(b => Box(b, ink))];

    public static IReadOnlyList<AccessPanelAnswer> Panels(BulkheadPlan plan, AnswerInk ink) =>
        [.. plan.AccessPanels.Select(p => new AccessPanelAnswer(p.Id, p.ServiceId, p.BulkheadId, ink.Place(p.At), ink.Number(p.Size)))];

    private static BulkheadAnswer Box(Bulkhead box, AnswerInk ink) => new()
    {
        Id = box.Id,
        Footprint = ink.Ring(OneRing(box.Parts)),
        Parts = [.. box.Parts.Select(p => (IReadOnlyList<IReadOnlyList<PointAnswer>>)[.. p.Select(ink.Ring)])],
        Drop = ink.Number(box.Drop),
        DropText = ink.Mark(box.Drop),
        Top = ink.Number(box.Top),
        FrameBottom = ink.Number(box.FrameBottom),
        Underside = ink.Number(box.Underside),
        UndersideHeight = ink.Number(box.UndersideAboveFloor),
        BoardedAbove = box.BoardedAbove,
        Joins = box.Joins,
        Members = [.. box.Members.Select(m => new BulkheadMemberAnswer(
            m.Id, Words.Text(m.Role), box.FrameSize, ink.Number(m.Length), ink.Number(m.CutLength), ink.Cut(m.CutLength),
            ink.Place(m.From), ink.Place(m.To), ink.Number(m.Top), ink.Number(m.Bottom), m.StockId))],
        Boards = [.. box.Boards.Select(b => new BulkheadBoardAnswer(
            b.Id, Words.Text(b.Face), ink.Ring(b.Outline), ink.Number(b.Width), ink.Number(b.Length),
            Figures.Area(b.AreaSquareMetres, ink.Imperial), b.StockId, b.Screws, SheetsWriting.Cutouts(b.Cutouts, ink)))],
        Beads = Trims(box.Beads, ink),
        BeadLength = Sum(box.Beads, ink),
        InsideCorners = Trims(box.InsideCorners, ink),
        InsideCornerLength = Sum(box.InsideCorners, ink),
        Backing = [.. box.Backing.Select(b => new BackingAnswer(b.MemberId, b.Kind, b.Of))],
        Fireblocking = Trims(box.Fireblocking, ink),
    };

    private static List<Point> OneRing(IReadOnlyList<IReadOnlyList<IReadOnlyList<Point>>> parts)
    {
        var ring = new List<Point>();
        foreach (var loop in parts.SelectMany(p => p))
        {
            ring.AddRange(loop);
            if (ring.Count > loop.Count)
            {
                // back over the same line to the first corner of all
                ring.Add(loop[0]);
                ring.Add(ring[0]);
            }
            else if (parts.Sum(p => p.Count) > 1)
            {
                ring.Add(loop[0]);
            }
        }

        return ring;
    }

    private static IReadOnlyList<TrimAnswer> Trims(IReadOnlyList<Trim> trims, AnswerInk ink) =>
        [.. trims.Select(t => new TrimAnswer(ink.Place(t.From), ink.Place(t.To), ink.Number(t.Length), t.Upright))];

    private static decimal Sum(IReadOnlyList<Trim> trims, AnswerInk ink) =>
        ink.Number(trims.Aggregate(Length.Zero, (sum, t) => sum + t.Length));
}
