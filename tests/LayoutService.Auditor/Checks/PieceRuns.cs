using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Pieces lie on their row's line, are as long as drawn, and run from wall to wall without a hole: an end is at a wall,
/// at the next piece, or free on a joist or a block, as a short strap's is. None is shorter than minPiece unless it
/// fills its whole segment.
/// </summary>
internal static class PieceRuns
{
    private const double Close = 0.05;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        bool Carried(string joint, Uv end) => joint is "joist" or "fixture" || (joint == "block" && Blocked(plan, end));
        foreach (var row in plan.Rows)
        {
            for (var i = 0; i < row.Pieces.Count; i++)
            {
                var piece = row.Pieces[i];
                var before = i > 0 ? row.Pieces[i - 1] : null;
                var after = i + 1 < row.Pieces.Count ? row.Pieces[i + 1] : null;
                Drawn(piece, report);
                var lowFree = End(plan.Room, piece, piece.Low, piece.LowEnd, piece.LowJoint, before is not null && Meets(before, piece), report);
                var highFree = End(plan.Room, piece, piece.High, piece.HighEnd, piece.HighJoint, after is not null && Meets(piece, after), report);
                var whole = !Joined(before, piece) && !Joined(piece, after);
                if ((lowFree && !Carried(piece.LowJoint, piece.Low)) || (highFree && !Carried(piece.HighJoint, piece.High)))
                {
                    report.Fault("pieces.run", piece.Id, $"stops at across {(lowFree ? piece.Low.V : piece.High.V):F1}, at no wall, piece or joist");
                }

                if (piece.Length < plan.Room.Strapping.MinPiece - Close && !whole)
                {
                    report.Fault("pieces.shortest", piece.Id, $"{piece.Length:F1} mm long, at least {plan.Room.Strapping.MinPiece:F1}");
                }
            }
        }
    }

    /// <summary>A block under a free end lies across its bay in line with the strap.</summary>
    private static bool Blocked(GivenPlan plan, Uv end) => plan.Nailers.Any(n => Math.Abs(n.From.U - end.U) < Close && Math.Abs(n.To.U - end.U) < Close
        && Math.Min(n.From.V, n.To.V) < end.V + Close && Math.Max(n.From.V, n.To.V) > end.V - Close);

    private static bool Joined(GivenPiece? a, GivenPiece? b) => a is not null && b is not null && Meets(a, b);

    /// <summary>End on end, or lapped side by side.</summary>
    private static bool Meets(GivenPiece low, GivenPiece high) => Math.Abs(high.Low.V - low.High.V) <= Close
        || (low.HighJoint == "lap" && high.LowJoint == "lap" && high.Low.V < low.High.V);

    private static void Drawn(GivenPiece piece, AuditReport report)
    {
        var drawn = piece.High.V - piece.Low.V;
        if (Math.Abs(piece.High.U - piece.Low.U) > Close || (Math.Abs(piece.U - piece.RowAt) > Close && piece.LowJoint != "lap" && piece.HighJoint != "lap"))
        {
            report.Fault("pieces.line", piece.Id, $"is off the line of {piece.RowId}");
        }

        if (Math.Abs(drawn - piece.Length) > 0.02)
        {
            report.Fault("pieces.length", piece.Id, $"says {piece.Length:F3}, drawn {drawn:F3} mm");
        }
    }

    /// <summary>Compares an end's word with what is there; true when nothing is.</summary>
    private static bool End(AskedRoom room, GivenPiece piece, Uv at, StrapEnd end, string joint, bool meets, AuditReport report)
    {
        var atWall = end.Wall is { Ring: 0 or <= AskedRoom.FirstPartition };
        var atOpening = end.Wall is { Ring: > 0 };
        var atBulkhead = end.Wall is { Ring: < 0 and > AskedRoom.FirstPartition };
        var agrees = joint switch
        {
            "wall" => atWall || Meets(ring => ring == 0),
            "opening" => atOpening || Meets(ring => ring > 0),
            "bulkhead" => atBulkhead || Meets(ring => ring < 0),
            "lap" or "scab" => meets,
            "joist" or "block" => true,
            "fixture" => end.Wall is null && !meets,
            _ => true,
        };
        if (!agrees || (meets && joint is "wall" or "opening" or "bulkhead"))
        {
            report.Fault("pieces.end", piece.Id, $"says {joint}, stands at {(atWall ? "a wall" : atOpening ? "an opening" : atBulkhead ? "a bulkhead" : meets ? "a piece" : "nothing")}");
        }

        return !meets && end.Wall is null;

        bool Meets(Func<int, bool> ofRing) => end.Wall is not null && StrapEnd.Meets(room, at.U, at.V, ofRing);
    }
}
