using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Writes the wood that is no row, in the caller's coordinates, with what it is for.</summary>
internal sealed class NailerWriter(FramedRoom room, CutLumber cut, IReadOnlyList<string> nailerIds, string[] rowIds)
{
    private readonly FramedRoom _room = room;
    private readonly CutLumber _cut = cut;
    private readonly IReadOnlyList<string> _nailerIds = nailerIds;
    private readonly string[] _rowIds = rowIds;

    public IReadOnlyList<Nailer> Write(IReadOnlyDictionary<(int Run, int Piece), CutStick> sticks) =>
        [.. _cut.Nailers.Select((nailer, i) => Nailer(nailer, i, sticks[(-1, i)]))];

    private Nailer Nailer(NailerLine nailer, int index, CutStick stick)
    {
        var serves = nailer.Lines.Select(l => _rowIds[l]).ToList();
        var reason = nailer.Role switch
        {
            NailerRole.Ledger or NailerRole.Block when _room.Survey.Strapping.Direct && nailer.For is null => new Reason(
                "sheet-edge", serves, "carries_board_edge", "Carries the board's edge where no joist is near enough."),
            NailerRole.Ledger => new Reason("row-ends", serves, "last_joist_too_far", "The last joist is too far from the wall to carry these rows' ends."),
            NailerRole.WallNailer when _room.IsWell(nailer.Source) => new Reason("sheet-edge", serves, "carries_well_edge", "Carries the board's edge and its bead along the well between rows; it is fastened to what trims the well."),
            NailerRole.WallNailer when _room.IsOpenEdge(nailer.Source) => new Reason("sheet-edge", serves, "carries_open_edge", "Carries the board's edge and its bead along the edge without a wall, between rows."),
            NailerRole.WallNailer => new Reason("sheet-edge", serves, "oblique_wall_edge", "Carries the board's edge along the oblique wall between rows."),
            NailerRole.Header => new Reason("row-trimmed", serves, "carries_board_at_hole", "Carries the board beside a hole that the row is trimmed round."),
            NailerRole.Sister => new Reason("level", serves, "joist_too_high", "The joist is too high over these rows to be packed: its lower edge is in the plane of the straps."),
            _ when nailer.CarriesJoint => new Reason("row-joint", serves, "carries_joint", "Carries a joint of this row between two joists."),
            _ when IsPartition(nailer) => new Reason("partition", nailer.For!, "carries_partition", "Carries the plate of a partition between two joists."),
            _ when nailer.For is not null => new Reason("mount", nailer.For, "carries_mount", "Carries what hangs between the joists."),
            _ when nailer.Held == BlockPlace.ToTrimmer => new Reason("row-ends", serves, "block_to_opening", "Carries these rows' ends where no joist is near: it goes from the joist to what trims the opening."),
            _ when nailer.Held == BlockPlace.AlongOpening => new Reason("row-ends", serves, "block_along_opening", "Carries these rows' ends at the opening: it goes between the two blocks beside it."),
            _ when nailer.Held == BlockPlace.BesideOpening => new Reason("row-ends", serves, "block_beside_opening", "Goes past the opening from joist to joist and carries an end of the block along it."),
            _ => new Reason("row-ends", serves, "no_support_at_end", "Carries these rows' ends where no joist is near."),
        };
        var where = nailer.For is { } cause ? new Reason(nailer.Role switch { NailerRole.Header => "fixture", NailerRole.Sister => "joist", _ when IsPartition(nailer) => "partition", _ => "mount" }, cause)
            : _room.BulkheadAt(nailer.Source) is { } bulkhead ? new Reason("bulkhead", [bulkhead.Id])
            : _room.PartitionAt(nailer.Source) is { } partition ? new Reason("partition", [partition.Wish.Id])
            : nailer.Source >= 0 ? new Reason("wall", [.. _room.WallIds(nailer.Source).Where(id => id.StartsWith('W'))])
            : new Reason("opening", [_room.Survey.Room.Openings[-nailer.Source - 1].Id]);
        return new Nailer(
            _nailerIds[index],
            nailer.Role,
            _room.Frame.Out(nailer.From),
            _room.Frame.Out(nailer.To),
            new Length(nailer.Length),
            stick.Stock.Id,
            new Length(stick.Cuts.First(c => c.Run == -1 && c.Piece == index).Length),
            nailer.CarriesJoint ? [reason] : [reason, .. where.Of.Count > 0 ? [where] : Array.Empty<Reason>(), .. AtLine(nailer)])
        {
            Masonry = nailer is { Role: NailerRole.Ledger or NailerRole.WallNailer, For: null }
                && _room.IsOf(nailer.Source, WallKind.Concrete),
        };
    }

    private IEnumerable<Reason> AtLine(NailerLine nailer) => nailer.For is null && _room.OnLine(nailer.Source)
        ? [new Reason("run-break", [.. _room.WallIds(nailer.Source).Where(id => !id.StartsWith('W'))], "at_run_break", "Along the line where the joists change direction: fastened there to what carries the joists that end at it.")]
        : [];

    private bool IsPartition(NailerLine nailer) => nailer is { Role: NailerRole.Block, For: { } cause } && _room.Partitions.Any(p => cause.Contains(p.Wish.Id));
}
