using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>What no plan can get round: a room narrower than a strap, or a part of it without joists.</summary>
public static class SurveyObstacles
{
    /// <summary>Straps are not carried further than this from support to support: 1220 mm (48 in). Common practice, no source.</summary>
    private const long WidestSupport = 48 * Length.PerInch;

    public static Finding? Find(FramedRoom room)
    {
        if (room.Board.Area == 0 && room.Solids.Count > 0)
        {
            return Findings.NothingLeftToBoard([.. room.Solids.Select(s => s.Id)]);
        }

        var face = room.Survey.Strapping.Face.Units;
        return room.Straps.HighU - room.Straps.LowU < face || room.Straps.HighV - room.Straps.LowV < face
            ? Findings.RoomTooSmall(room.Say(face))
            : null;
    }

    public static Finding? Find(FramedRoom room, IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs)
    {
        if (room.Survey.Room.Walls.Count > 0 && Unheld(room, lines, runs) is { Count: > 0 } unheld)
        {
            return Findings.NothingToFastenTo(unheld);
        }

        foreach (var run in runs)
        {
            var across = lines[run.Line].Stretches[run.Stretch].Across;
            var at = across.Lo;
            foreach (var support in run.Supports)
            {
                if (support.Lo - at > WidestSupport)
                {
                    return Gap(at, support.Lo);
                }

                at = support.Hi;
            }

            if (across.Hi - at > WidestSupport)
            {
                return Gap(at, across.Hi);
            }
        }

        return null;

        Finding Gap(long lo, long hi)
        {
            var (a, b) = (room.Frame.AcrossIn(lo), room.Frame.AcrossIn(hi));
            return Findings.NoJoists(["joistFields"], room.Say(Math.Min(a, b)), room.Say(Math.Max(a, b)));
        }
    }

    // walls framed after the ceiling, and edges without one, at which a ledger or a nailer would be fastened
    private static List<string> Unheld(FramedRoom room, IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs)
    {
        var ends = runs.SelectMany(run =>
        {
            var stretch = lines[run.Line].Stretches[run.Stretch];
            return new[] { run.LedgerLow ? stretch.LowSource : -1, run.LedgerHigh ? stretch.HighSource : -1 };
        });
        var oblique = room.Straps.Edges.Where(e => !e.Parallel && !WallRows.IsSquare(e)).Select(e => e.Source);
        return [.. ends.Concat(oblique).Where(room.HoldsNothing).Distinct().Order().SelectMany(room.WallIds)];
    }
}
