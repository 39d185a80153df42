using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Every butt end lies within half a face less 19 mm of the centre of a strap that runs behind its whole width, and the
/// ids that the plan lists behind it exist and are those straps.
/// </summary>
internal static class ButtBacking
{
    private const double Close = 0.05;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        foreach (var butt in plan.Seams.Where(s => s.Run == SeamRun.Butt))
        {
            var covers = Behind(plan, butt.At).ToList();
            if (!Covered(butt.Stretch, covers.Select(c => c.Reach)))
            {
                report.Fault("butts.backing", butt.Board.Id,
                    $"butt at along {butt.At:F2}, across {butt.Stretch.From:F1} to {butt.Stretch.To:F1}, has no strap behind all of it");
            }

            Listed(plan, butt, covers, report);
        }
    }

    private static IEnumerable<(string[] Ids, Stretch Reach)> Behind(GivenPlan plan, double at)
    {
        var reach = plan.Room.Strapping.ButtReach + Close;
        foreach (var piece in plan.Pieces.Where(p => Math.Abs(p.U - at) <= reach))
        {
            yield return ([piece.RowId, piece.Id], piece.Reach);
        }

        foreach (var nailer in plan.Nailers.Where(n => Math.Abs(n.From.U - n.To.U) < 1 && Math.Abs(n.From.U - at) <= 19))
        {
            yield return ([nailer.Id],
                new Stretch(Math.Min(nailer.From.V, nailer.To.V), Math.Max(nailer.From.V, nailer.To.V)));
        }
    }

    private static void Listed(GivenPlan plan, BoardSeam butt, List<(string[] Ids, Stretch Reach)> covers,
        AuditReport report)
    {
        var ends = butt.Board.Ends.Where(e => Math.Abs(e.At - butt.At) <= Close && e.Vs.Overlaps(butt.Stretch, 0)).ToList();
        if (ends.Count == 0)
        {
            report.Fault("butts.listed", butt.Board.Id, $"the butt at along {butt.At:F2} is not among its ends");
            return;
        }

        var listed = ends.SelectMany(e => e.Backing).ToHashSet();
        if (!Covered(butt.Stretch, covers.Where(c => c.Ids.Any(listed.Contains)).Select(c => c.Reach)))
        {
            report.Fault("butts.listed", butt.Board.Id,
                $"behind the butt at along {butt.At:F2} it lists [{string.Join(' ', listed)}], which do not back all of it");
        }
    }

    /// <summary>True when the stretches together cover the whole, abutting ends counting as joined.</summary>
    public static bool Covered(Stretch whole, IEnumerable<Stretch> parts)
    {
        var at = whole.From + Close;
        foreach (var part in parts.OrderBy(p => p.From))
        {
            if (part.From > at + Close)
            {
                break;
            }

            at = Math.Max(at, part.To);
        }

        return at >= whole.To - Close;
    }
}
