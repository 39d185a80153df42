using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Steps;

/// <summary>Marking, cutting and hanging the wood.</summary>
internal static class StrapSteps
{
    public static void Write(StepList list, StrappingPlan plan, CutPlan cut, TradeText trade, IReadOnlyList<PlannedPartition> partitions, bool oneWay)
    {
        List<StrapRow> rows = oneWay ? [.. plan.Rows.OrderBy(row => row.At)] : [.. plan.Rows];
        Mark(list, rows, trade, oneWay);
        Cut(list, plan, cut, trade);
        foreach (var role in plan.Nailers.Where(nailer => nailer.Role != NailerRole.Header).GroupBy(nailer => nailer.Role).OrderBy(group => group.Key))
        {
            Nail(list, role.Key, [.. role], plan.Plane is not null, trade.Direct);
        }

        PartitionSteps.Before(list, partitions, trade.Direct);
        var scabs = plan.Scabs.ToLookup(scab => scab.RowId);
        foreach (var row in rows)
        {
            PackingSteps.Write(list, plan, row, trade);
            Fasten(list, plan, row, trade);
            Scab(list, row, [.. scabs[row.Id]]);
        }

        var headers = plan.Nailers.Where(nailer => nailer.Role == NailerRole.Header).ToList();
        if (headers.Count > 0)
        {
            Nail(list, NailerRole.Header, headers);
        }

        if (rows.Count > 0)
        {
            var plane = trade.Of(0.125m, 3);
            list.Add(
                Sentence.Of(
                    "check-plane",
                    $"Hold a long straightedge across the straps, row after row; pack or plane whatever is more than {plane} off.",
                    ("tolerance", plane)),
                rows.Select(Row));
        }
    }

    // where joists run more than one way each run has its own corner
    private static void Mark(StepList list, List<StrapRow> rows, TradeText trade, bool oneWay)
    {
        var hooked = oneWay ? "at the measuring corner" : "at the measuring corner of its own joists and drawn along them";
        foreach (var row in rows)
        {
            var marks = row.Marks.Select(mark => (mark.End, Text: trade.Of(mark.NearEdge), mark.Side)).ToList();
            var same = marks.Count > 0 && marks.All(mark => mark.Text == marks[0].Text && mark.Side == marks[0].Side);
            var said = marks.Count == 0 ? $"centre at {trade.Of(row.At)} at both ends"
                : same ? $"{marks[0].Text} {(row.Short ? "where it begins and where it ends" : "at both ends")}, strap on the {marks[0].Side} side of the mark"
                : string.Join("; ", marks.Select(mark => $"{mark.End} end {mark.Text}, strap on the {mark.Side} side"));
            list.Add(
                Sentence.Of(
                    "mark-row",
                    $"Row {row.Id}: with the tape hooked {hooked}, mark {said}.",
                    ("row", row.Id),
                    ("marks", said)),
                [Row(row)]);
        }
    }

    private static void Cut(StepList list, StrappingPlan plan, CutPlan cut, TradeText trade)
    {
        if (cut.Sticks.Count > 0)
        {
            list.Add(
                Sentence.Of(
                    "cut-lumber",
                    $"Look down every stick and lay the worst aside as culls. Cut {StepList.Number(cut.Sticks.Count)} lengths by the cut "
                    + $"plan, in its order, and write on each piece its id. The plan counts {trade.Of(cut.Kerf)} for each saw cut.",
                    ("sticks", StepList.Number(cut.Sticks.Count)),
                    ("kerf", trade.Of(cut.Kerf))),
                cut.Sticks.Select(stick => new Touch(TouchKinds.Stock, stick.Id)));
        }

        var rows = plan.Rows.Select(row => row.Id).ToHashSet();
        foreach (var spacer in plan.Spacers)
        {
            var length = trade.Of(spacer.Length);
            list.Add(
                Sentence.Of(
                    "cut-spacer",
                    $"Cut two spacer blocks {length} long and write the length on them.",
                    ("length", length)),
                spacer.Between.Where(rows.Contains).Select(row => new Touch(TouchKinds.Row, row)));
        }
    }

    private static void Nail(StepList list, NailerRole role, List<Nailer> nailers, bool packed = false, bool direct = false)
    {
        var names = StepList.Names(nailers.Select(nailer => nailer.Id));
        var (code, text) = role switch
        {
            NailerRole.Ledger => (
                "fasten-ledgers",
                $"Fasten ledgers {names} along their walls, undersides {(packed ? "to the string of the plane" : "in line with the joists")}: they carry the {(direct ? "board's edge" : "strap ends")}."),
            NailerRole.WallNailer => (
                "fasten-wall-nailers",
                $"Fasten nailers {names} along the oblique walls, faces in the plane of the straps: they carry the sheet edges."),
            NailerRole.Header => (
                "fasten-headers",
                $"Fasten headers {names} along the joists beside the holes, faces in the plane of the straps: they carry the board where a row is trimmed."),
            NailerRole.Sister => (
                "fasten-sisters",
                $"Fasten sisters {names} beside their joists, lower edges to the string of the plane: those joists are too high to pack."),
            _ => ("fasten-blocks", Blocks(nailers)),
        };
        list.Add(
            Sentence.Of(code, text, ("nailers", names)),
            nailers.Select(nailer => new Touch(TouchKinds.Nailer, nailer.Id)));
    }

    // those along an opening need the two beside it first
    private static string Blocks(List<Nailer> blocks)
    {
        string[] after = ["block_to_opening", "block_along_opening"];
        List<string> parts =
        [
            .. Said(blocks.Where(b => !b.Reasons.Any(r => after.Contains(r.Code))), "between their joists"),
            .. Said(blocks.Where(b => b.Reasons.Any(r => r.Code == after[0])), "from the joist to what trims the opening"),
            .. Said(blocks.Where(b => b.Reasons.Any(r => r.Code == after[1])), "between the two blocks beside the opening"),
        ];
        return $"Fix blocks {string.Join(", then ", parts)}, undersides flush.";

        static IEnumerable<string> Said(IEnumerable<Nailer> some, string where) =>
            some.Select(b => b.Id).ToList() is { Count: > 0 } ids ? [$"{StepList.Names(ids)} {where}"] : [];
    }

    private static void Fasten(StepList list, StrappingPlan plan, StrapRow row, TradeText trade)
    {
        var pieces = row.Short ? Reaches(plan, row) : StepList.Names(row.Pieces.Select(piece => piece.Id));
        var place = Place(plan, row, trade);
        list.Add(
            Sentence.Of(
                "fasten-row",
                $"Row {row.Id}: hang {pieces} {place}. Two fasteners at every joist, four where two ends meet. Snap or sight the row "
                + $"straight before the second fastener goes in.{BattSteps.Loose(row)}",
                ("row", row.Id),
                ("pieces", pieces),
                ("place", place)),
            row.Pieces.Select(piece => new Touch(TouchKinds.Piece, piece.Id)).Prepend(Row(row)));
    }

    // a short row may begin and end in the open: the wood that carries it says where
    private static string Reaches(StrappingPlan plan, StrapRow row)
    {
        var crossings = plan.Crossings.Where(c => c.RowId == row.Id).ToList();
        return string.Join(", ", row.Pieces.Select(piece =>
        {
            var (x, y) = (piece.To.X.Units - piece.From.X.Units, piece.To.Y.Units - piece.From.Y.Units);
            var over = crossings
                .Select(c => (c.SupportId, At: ((double)x * (c.At.X.Units - piece.From.X.Units)) + ((double)y * (c.At.Y.Units - piece.From.Y.Units))))
                .Where(c => c.At >= 0 && c.At <= ((double)x * x) + ((double)y * y))
                .OrderBy(c => c.At)
                .Select(c => c.SupportId)
                .ToList();
            return over.Count < 2 ? piece.Id : $"{piece.Id} (from {over[0]} to {over[^1]})";
        }));
    }

    /// <summary>
    /// Where the row goes: off the row before with its block when the plan has a block of that clear gap. The strap's face
    /// is twice the way from the mark to the centre.
    /// </summary>
    private static string Place(StrappingPlan plan, StrapRow row, TradeText trade)
    {
        if (row.SpacingBefore is { } spacing && row.Marks.Count > 0)
        {
            var gap = spacing - ((row.At - row.Marks[0].NearEdge) * 2);
            if (plan.Spacers.Any(spacer => spacer.Length == gap && spacer.Between.Contains(row.Id)))
            {
                return $"on its marks, held off the row before by the {trade.Of(gap)} block";
            }
        }

        return "on its marks";
    }

    private static void Scab(StepList list, StrapRow row, List<Scab> scabs)
    {
        if (scabs.Count == 0)
        {
            return;
        }

        var names = StepList.Names(scabs.Select(scab => scab.Id));
        list.Add(
            Sentence.Of(
                "fasten-scabs",
                $"Row {row.Id}: glue {names} on top of the strap, centred over the joint, and screw from below, two screws each side.",
                ("row", row.Id),
                ("scabs", names)),
            scabs.Select(scab => new Touch(TouchKinds.Scab, scab.Id)).Prepend(Row(row)));
    }

    private static Touch Row(StrapRow row) => new(TouchKinds.Row, row.Id);
}
