using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Along every line of constant across: the first and last strap tight to walls square to the joists, neighbours at
/// most maxSpacing on centre, none so close that a seam falls on two straps side by side. Lines are taken in the middle
/// of each band between corners and strap ends, where nothing changes, and near the band's ends for oblique walls.
/// Cost: bands × (walls + pieces).
/// </summary>
internal static class RowSpacing
{
    private const double Close = 0.05;

    /// <summary>A strap's face stands within this of framing, and clear of the next strap by it, mm.</summary>
    private const double Gap = 13;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var room = plan.Room;
        var butts = plan.Seams.Where(s => s.Run == SeamRun.Butt).ToList();
        var trims = HoleTrims.Of(plan).ToList();
        var seen = new HashSet<string>();
        foreach (var v in Lines(plan))
        {
            // where a row is trimmed round a hole, headers stand in for it
            var straps = plan.Pieces.Where(p => p.Reach.From < v && v < p.Reach.To)
                .Concat(trims.Where(t => t.Low.High.V < v && v < t.High.Low.V).Select(t => t.Low)).OrderBy(p => p.U).ToList();
            foreach (var passage in room.Border.AlongAt(v, ring => !room.NeedsNoRow(ring) || !room.StandsFree(ring)))
            {
                var inside = straps.Where(p => p.U > passage.From && p.U < passage.To).ToList();
                if (inside.Count == 0)
                {
                    // in the point of an oblique wall a bevelled strap may lie with its face alone
                    inside = [.. plan.Pieces.Where(p => p.Touches(v, passage, room.Strapping.Face / 2)).OrderBy(p => p.U)];
                }

                foreach (var fault in Faults(inside, passage, v, room, butts).Where(f => seen.Add(f.Rule + f.Where)))
                {
                    if (fault.Rule.EndsWith("-at-post", StringComparison.Ordinal))
                    {
                        // the row is there on both sides of the post: the board spans past it
                        report.Note(fault.Rule, fault.Where, $"{fault.Text}");
                        continue;
                    }

                    report.FaultUnlessDeclared(fault.Rule.Split('.')[1].Split('-')[0], fault.Rule, fault.Where, $"{fault.Text}");
                }
            }
        }
    }

    private static IEnumerable<double> Lines(GivenPlan plan)
    {
        var border = plan.Room.Border;
        var oblique = border.Walls.Any(w => !w.IsSquare && !w.IsAlong);
        var bands = border.Walls.Select(w => w.A.V)
            .Concat(plan.Pieces.SelectMany(p => new[] { p.Reach.From, p.Reach.To })).Order().ToList();
        for (var i = 0; i + 1 < bands.Count; i++)
        {
            var (from, to) = (bands[i], bands[i + 1]);
            if (to - from > 2)
            {
                yield return (from + to) / 2;
                if (oblique)
                {
                    yield return from + 0.5;
                    yield return to - 0.5;
                }
            }
        }
    }

    private static IEnumerable<Fault> Faults(
        List<GivenPiece> straps, Passage line, double v, AskedRoom room, List<BoardSeam> butts)
    {
        var face = room.Strapping.Face;
        if (line.Length < face)
        {
            yield break;
        }

        if (straps.Count == 0)
        {
            if (line.FromWall.IsSquare || line.ToWall.IsSquare || line.Length > room.Strapping.MaxSpacing + (face / 2))
            {
                yield return new Fault("rows.tight", Place(line.From), Text($"no strap between the walls at across {v:F1}"));
            }

            yield break;
        }

        if (line.Length > (2 * face) + Gap)
        {
            foreach (var fault in AtWalls(straps, line, v, room))
            {
                yield return fault;
            }
        }

        for (var i = 1; i < straps.Count; i++)
        {
            var (a, b) = (straps[i - 1], straps[i]);
            var apart = b.U - a.U;
            if (apart > room.Strapping.MaxSpacing + Close)
            {
                yield return new Fault(AtPost("rows.spacing", a.U, b.U, v, room), b.RowId, Text($"{apart:F2} mm from {a.RowId} at across {v:F1}, at most {room.Strapping.MaxSpacing:F2}"));
            }

            if (apart < face + Gap - Close && a.RowId != b.RowId && butts.Any(s => s.Stretch.From < v && v < s.Stretch.To
                && s.At > a.U + (face / 2) - 25 && s.At < b.U - (face / 2) + 25))
            {
                yield return new Fault("rows.clear-gap", b.RowId, Text($"{apart - face:F2} mm clear of {a.RowId} with a seam at the gap"));
            }
        }
    }

    private static IEnumerable<Fault> AtWalls(List<GivenPiece> straps, Passage line, double v, AskedRoom room)
    {
        var (first, last, half) = (straps[0], straps[^1], room.Strapping.Face / 2);
        var oblique = room.Strapping.MaxSpacing + half + Close;
        // a narrow post's edge beside a bulkhead needs no row of its own
        bool Asks(Wall wall) => wall.IsSquare && !(room.NeedsNoRow(wall.Ring) && !room.StandsFree(wall.Ring)) && !IsTip(wall, room);
        var start = Asks(line.FromWall) ? Served(line.FromWall, room) + Gap + half + Close : line.From + oblique;
        var end = Asks(line.ToWall) ? Served(line.ToWall, room) - Gap - half - Close : line.To - oblique;
        if (first.U > start)
        {
            yield return new Fault(AtPost("rows.tight", line.From, first.U, v, room), first.RowId, Text($"first strap's centre {first.U - line.From:F2} mm from the wall at across {v:F1}"));
        }

        if (last.U < end)
        {
            yield return new Fault(AtPost("rows.tight", last.U, line.To, v, room), last.RowId, Text($"last strap's centre {line.To - last.U:F2} mm from the wall at across {v:F1}"));
        }
    }

    /// <summary>What a bulkhead leaves of a wall between itself and an oblique one, shorter than the narrowest strap: board spans it as it does the oblique wall.</summary>
    private static bool IsTip(Wall wall, AskedRoom room) => wall.Vs.Length < room.Strapping.Face
        && room.Border.Walls.Any(w => w.Ring is < 0 and > AskedRoom.FirstPartition && (w.A == wall.B || w.B == wall.A))
        && room.Border.Walls.Any(w => !w.IsSquare && !w.IsAlong && (w.A == wall.B || w.B == wall.A));

    /// <summary>A rule by its own name where the gap is one that a narrow post broke a row in.</summary>
    private static string AtPost(string rule, double from, double to, double v, AskedRoom room) =>
        room.Openings.Any(o => room.NeedsNoRow(o.Ring) && o.Vs.From < v && v < o.Vs.To && o.Us.From < to && o.Us.To > from)
            ? rule + "-at-post" : rule;

    /// <summary>
    /// Where the strap of this wall may start: at the wall, or, past a jog smaller than a face and its gap, at the
    /// neighbouring stretch of the same border that stands further into the room.
    /// </summary>
    private static double Served(Wall wall, AskedRoom room)
    {
        var jog = room.Strapping.Face + Gap - Close;

        // a wall is one wall on both sides of a partition
        var thick = room.Standing.Select(p => p.Thickness).DefaultIfEmpty().Max();
        var reach = room.Border.Walls.Where(w => thick > 0 && w.Ring == wall.Ring && w.IsSquare && w.IsLow == wall.IsLow && Math.Abs(w.A.U - wall.A.U) < Close
            && Math.Max(w.Vs.From, wall.Vs.From) - Math.Min(w.Vs.To, wall.Vs.To) <= thick + 1).Append(wall).ToList();
        var near = room.Border.Walls.Where(w => (w.Ring == wall.Ring || w.Ring < 0 || wall.Ring < 0) && w.IsSquare && w.IsLow == wall.IsLow
            && (wall.IsLow ? w.A.U - wall.A.U : wall.A.U - w.A.U) is var further && further >= -Close && further < jog
            && reach.Exists(r => Math.Max(w.Vs.From, r.Vs.From) - Math.Min(w.Vs.To, r.Vs.To) < room.Strapping.MaxSpacing)).Select(w => w.A.U);
        return wall.IsLow ? near.Max() : near.Min();
    }

    private static string Place(double along) => Text($"along {along:F1}");

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
