using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Where a row is trimmed round a hole: there is a hole to trim round, both ends stand at the faces of joists, and headers
/// run along those joists from row to row.
/// </summary>
internal static class HoleTrims
{
    private const double Close = 0.06;

    /// <summary>The trimmed stretches of every row, across.</summary>
    public static IEnumerable<(GivenPiece Low, GivenPiece High)> Of(GivenPlan plan)
    {
        foreach (var row in plan.Rows)
        {
            for (var i = 0; i + 1 < row.Pieces.Count; i++)
            {
                if (row.Pieces[i].HighJoint == "fixture" && row.Pieces[i + 1].LowJoint == "fixture")
                {
                    yield return (row.Pieces[i], row.Pieces[i + 1]);
                }
            }
        }
    }

    // pieces that touch are one strap
    private static bool Passes(GivenRow row, Stretch gap)
    {
        var reached = gap.From + Close;
        foreach (var piece in row.Pieces)
        {
            reached = piece.Reach.From <= reached ? Math.Max(reached, piece.Reach.To + Close) : reached;
        }

        return reached >= gap.To;
    }

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var ends = plan.Pieces.Sum(p => (p.LowJoint == "fixture" ? 1 : 0) + (p.HighJoint == "fixture" ? 1 : 0));
        var trims = Of(plan).ToList();
        if (ends != 2 * trims.Count)
        {
            report.Fault("trims.pairs", "strapping", $"{ends} ends at fixtures make {trims.Count} trimmed stretches");
        }

        if (trims.Count == 0)
        {
            return;
        }

        var asked = AskedFixture.Of(plan);
        var given = plan.Json.Member("fixtures").Items().Select(f => new GivenFixture(f, asked[f.Member("id").Text()!], plan.Room)).ToList();
        var half = plan.Room.Strapping.Face / 2;
        foreach (var (low, high) in trims)
        {
            var gap = new Stretch(low.High.V, high.Low.V);
            if (!given.Exists(f => f.Us.From - f.Asked.Clear < low.U + half && f.Us.To + f.Asked.Clear > low.U - half && f.Vs.From >= gap.From && f.Vs.To <= gap.To))
            {
                report.Fault("trims.hole", low.RowId, $"is trimmed from {gap.From:F1} to {gap.To:F1} across, where no hole is");
            }

            // straps past the whole of it on both sides, as near each other as rows may be, carry the board without headers
            var past = plan.Rows.Where(r => r.Id != low.RowId && Passes(r, gap)).Select(r => r.At).ToList();
            var (before, after) = (past.Where(u => u < low.U).DefaultIfEmpty(double.MinValue).Max(), past.Where(u => u > low.U).DefaultIfEmpty(double.MaxValue).Min());
            if (after - before <= plan.Room.Strapping.MaxSpacing + Close)
            {
                continue;
            }

            // else the headers stand as near each other, or the board spans too far and a check has to say so
            var headers = plan.Nailers.Where(n => Math.Abs(n.From.V - n.To.V) <= Close && n.From.V > gap.From - 400 && n.From.V < gap.To + 400
                && Math.Min(n.From.U, n.To.U) < after && Math.Max(n.From.U, n.To.U) > before).Select(n => n.From.V).Distinct().Order().ToList();
            var widest = headers.Count < 2 ? double.MaxValue : headers.Zip(headers.Skip(1), (a, b) => b - a).Max();
            if (Math.Min(widest, after - before) is var span && span > plan.Room.Strapping.MaxSpacing + Close
                && !(plan.Json.Member("checks").Items().Any(c => c.Member("rule").Text() == "row-spacing" && (c.Member("value").Length(plan.Room.Unit) ?? 0) >= span - 1)))
            {
                report.Fault("trims.span", low.RowId, $"board spans {span:F1} mm where it is trimmed, and row-spacing does not say so");
            }

            foreach (var joist in plan.Room.Joists.Supports(low.U).Where(s => Math.Abs(s.To - gap.From) <= Close || Math.Abs(s.From - gap.To) <= Close))
            {
                var at = (joist.From + joist.To) / 2;
                var beside = plan.Nailers.Where(n => Math.Abs(n.From.V - at) <= Close && Math.Abs(n.To.V - at) <= Close).ToList();
                if (!beside.Exists(n => Math.Abs(Math.Max(n.From.U, n.To.U) - (low.U - half)) <= Close) && !beside.Exists(n => Math.Abs(Math.Min(n.From.U, n.To.U) - (low.U + half)) <= Close))
                {
                    report.Fault("trims.header", low.RowId, $"has no header along the joist at {at:F1} across");
                }
            }

            if (plan.Room.Joists.Supports(low.U).All(s => Math.Abs(s.To - gap.From) > Close) || plan.Room.Joists.Supports(low.U).All(s => Math.Abs(s.From - gap.To) > Close))
            {
                report.Fault("trims.joist", low.RowId, $"ends beside a hole on no joist");
            }
        }
    }
}
