using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The wood of a ceiling without straps: what the board's edges, partitions and mounts ask for beside the joists.</summary>
internal static class DirectLumber
{
    /// <summary>Board is not left without a joist further than this: 1220 mm (48 in). Common practice, no source.</summary>
    private const long WidestBay = 48 * Length.PerInch;

    public static (CutLumber? Cut, Finding? Obstacle) Of(FramedRoom room)
    {
        if (Bare(room) is { } bare)
        {
            return (null, bare);
        }

        var found = EdgeNailers.Of(room).ToList();
        var unheld = found.Where(n => n.Role == NailerRole.Ledger && room.HoldsNothing(n.Source))
            .Select(n => n.Source).Distinct().Order().SelectMany(room.WallIds).ToList();
        if (unheld.Count > 0)
        {
            return (null, Findings.NothingToFastenTo(unheld));
        }

        found.AddRange(MountBlocks.Of(room));
        found.AddRange(PartitionBlocks.Of(room, found).ToList());
        var longest = LedgerStock.Longest(room.Survey.Units) - room.Survey.Strapping.EndTrim.Units;
        List<NailerLine> nailers = [.. found.SelectMany(n => NailerLines.InLengths(n, longest))];
        var (sticks, result) = new LumberCut(room).Ledgers(nailers);
        return (new CutLumber([], [], nailers, [], sticks, null, result), null);
    }

    /// <summary>Ledgers along the joists as lines that board is screwed to, in the room turned over: 19 mm in from the edge.</summary>
    public static IReadOnlyList<BearingLine> Ledgers(FramedRoom room, IReadOnlyList<NailerLine> nailers) =>
        [.. nailers.Where(n => n.Role == NailerRole.Ledger && n.From.V == n.To.V).Select(n =>
        {
            var along = new Span(Math.Min(n.From.U, n.To.U), Math.Max(n.From.U, n.To.U));
            var above = room.Board.AcrossAt(along.Middle, 0).Any(s => s.Lo == n.From.V);
            return new BearingLine(n.From.V + ((above ? 19 : -19) * Length.PerMillimetre), [along], false);
        })];

    // a part of the board over which no joist runs; looked for midway between the corners along the joists
    private static Finding? Bare(FramedRoom room)
    {
        foreach (var zone in room.Joists.Zones)
        {
            var stops = room.Board.Edges.SelectMany(e => new[] { e.From.U, e.To.U }).Where(u => zone.Along.Lo < u && u < zone.Along.Hi)
                .Append(zone.Along.Lo).Append(zone.Along.Hi).Distinct().Order().ToList();
            for (var i = 0; i + 1 < stops.Count; i++)
            {
                var u = (stops[i] + stops[i + 1]) / 2;
                foreach (var across in room.Board.AcrossAt(u, 0))
                {
                    if (WithoutJoist(room, u, across) is { } gap)
                    {
                        var (a, b) = (room.Frame.AcrossIn(gap.Lo), room.Frame.AcrossIn(gap.Hi));
                        return Findings.NoJoistsOverBoard(["joistFields"], room.Say(Math.Min(a, b)), room.Say(Math.Max(a, b)));
                    }
                }
            }
        }

        return null;
    }

    private static Span? WithoutJoist(FramedRoom room, long u, Span across)
    {
        var at = across.Lo;
        foreach (var support in room.Joists.At(u))
        {
            if (support.Hi > across.Lo && support.Lo < across.Hi)
            {
                if (support.Lo - at > WidestBay)
                {
                    return new Span(at, support.Lo);
                }

                at = Math.Max(at, support.Hi);
            }
        }

        return across.Hi - at > WidestBay ? new Span(at, across.Hi) : null;
    }
}
