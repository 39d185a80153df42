using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Writes the bulkheads in the caller's coordinates, with ids: members <c>…-m1</c>, boards <c>…-b1</c>.</summary>
public sealed class BulkheadWriter(FramedRoom room, CutBulkheads cut, IReadOnlyList<PlacedFixture> placed)
{
    public static string MemberId(BulkheadSolid solid, int index) => $"{solid.Id}-m{index + 1}";

    /// <summary>Ids of all boards, in the order in which they are cut.</summary>
    public IReadOnlyList<string> BoardIds { get; } = [.. cut.Planned.SelectMany(p => p.Boards.Select((_, b) => $"{p.Solid.Id}-b{b + 1}"))];

    public IEnumerable<Ceilings.Stick> Sticks(int after) => cut.Sticks.Select((s, i) => new Ceilings.Stick(
        $"K{after + i + 1}",
        s.Size,
        s.Stock.Length,
        s.Stock.Id,
        [.. s.Cuts.Select(c => new StickCut(MemberId(cut.Planned[c.Bulkhead].Solid, c.Member), new Length(c.Length)))],
        new Length(s.Offcut)));

    /// <param name="rowIds">Id of each row.</param>
    /// <param name="stockOf">Stock of each board piece; the bulkheads' come after <paramref name="firstBoard"/>.</param>
    /// <param name="firstBoard">How many board pieces the ceiling has.</param>
    /// <param name="finished">Finished ceiling above the finished floor, or null.</param>
    public BulkheadPlan Write(string[] rowIds, IReadOnlyDictionary<int, SheetStock> stockOf, int firstBoard, Length? finished)
    {
        if (cut.Planned.Count == 0 && room.Survey.Services is not { Count: > 0 })
        {
            return BulkheadPlan.None;
        }

        var names = JoistWriter.Names(room);
        var stockOfMember = cut.Sticks.SelectMany(s => s.Cuts.Select(c => ((c.Bulkhead, c.Member), s.Stock.Id))).ToDictionary(x => x.Item1, x => x.Id);
        var written = new List<Bulkhead>();
        var board = firstBoard;
        for (var i = 0; i < cut.Planned.Count; i++)
        {
            var planned = cut.Planned[i];
            written.Add(Bulkhead(planned, i, board));
            board += planned.Boards.Count;
        }

        return new BulkheadPlan(written, [.. AccessPanels.Of(room, placed)]);

        Bulkhead Bulkhead(PlannedBulkhead planned, int index, int first)
        {
            var solid = planned.Solid;
            return new Bulkhead
            {
                Id = solid.Id,
                Parts = [.. solid.Footprint.Patches.Select(p => (IReadOnlyList<IReadOnlyList<Point>>)[.. p.Loops.Select(Ring)])],
                Drop = new Length(solid.Drop),
                Top = new Length(solid.Top),
                FrameBottom = new Length(solid.FrameBottom),
                Underside = new Length(solid.Underside),
                BoardedAbove = solid.Wish.BoardedAbove,
                FrameSize = solid.Wish.Frame.Size,
                FrameStock = solid.Wish.Frame.Stock,
                FrameThickness = solid.Wish.Frame.Thickness,
                FrameFace = solid.Wish.Frame.Face,
                Joins = [.. planned.Joins.Select(j => room.Solids[j].Id)],
                Members = [.. planned.Members.Select((m, n) => new BulkheadMember(
                    MemberId(solid, n), m.Role, room.Frame.Out(m.From), room.Frame.Out(m.To), new Length(m.Top), new Length(m.Bottom),
                    new Length(m.Length), new Length(m.Cut), stockOfMember[(index, n)]))],
                Boards = [.. planned.Boards.Select((b, n) => new BulkheadBoard
                {
                    Id = BoardIds[first - firstBoard + n],
                    Face = b.Face,
                    Outline = Ring(b.Outline),
                    Width = new Length(b.Width),
                    Length = new Length(b.Length),
                    AreaSquareMetres = b.Area / Math.Pow(1000.0 * Length.PerMillimetre, 2),
                    StockId = stockOf[first + n].Id,
                    Screws = b.Screws,
                    Cutouts = b.Face == BoardFace.Underside ? BoxCutouts.Of(room, b, placed.Where(p => p.Host == solid.Index)) : [],
                })],
                Beads = [.. planned.Beads.Select(Trim)],
                InsideCorners = [.. planned.InsideCorners.Select(Trim)],
                OnConcrete = Enumerable.Range(0, planned.Members.Count)
                    .Where(n => planned.Members[n].Held is { Kind: "wall" } held && held.Of.All(w => room.IsOf(w, WallKind.Concrete)))
                    .Select(n => MemberId(solid, n)).ToHashSet(StringComparer.Ordinal),
                JointLength = new Length(planned.Joints),
                Backing = [.. planned.Members.Select((m, n) => (m, n)).Where(x => x.m.Held is not null).Select(x => Backing(solid, x.m.Held!, x.n, rowIds, names))],
                Fireblocking = [.. planned.Fireblocking.Select(Trim)],
                UndersideAboveFloor = finished is { } height ? height - new Length(solid.Drop) : null,
            };
        }
    }

    private Backing Backing(BulkheadSolid solid, Held held, int member, string[] rowIds, string[] names) => new(
        MemberId(solid, member),
        held.Kind,
        held.Kind switch
        {
            "wall" => [.. held.Of.SelectMany(room.WallIds)],
            "row" => [.. held.Of.Select(r => rowIds[r])],
            "joist" => [.. held.Of.Select(s => names[room.Joists.Supports[s].FirstMember])],
            "bulkhead" => [.. held.Of.Select(b => room.Solids[b].Id)],
            _ => [.. held.Of.Distinct().Order().Select(n => MemberId(solid, n))],
        });

    private IReadOnlyList<Point> Ring(IReadOnlyList<Uv> ring) => [.. ring.Select(room.Frame.Out)];

    private Trim Trim(PlannedTrim trim) => new(room.Frame.Out(trim.From), room.Frame.Out(trim.To), new Length(trim.Length), trim.Upright);
}
