using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Each strap is fastened wherever it bears: one crossing per row and support, two fasteners in it, four at a joint. A
/// crossing lies on its row; none is listed twice.
/// </summary>
internal static class Crossings
{
    private const double Close = 0.1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Json.Member("strapping").Member("crossings") is not { ValueKind: System.Text.Json.JsonValueKind.Array } list)
        {
            return;
        }

        var rows = plan.Rows.ById(r => r.Id);
        var at = new Dictionary<string, List<double>>();
        var seen = new HashSet<(string, string?, long)>();
        foreach (var crossing in list.EnumerateArray())
        {
            var rowId = crossing.Member("rowId").Text() ?? "";
            var (x, y) = crossing.GetProperty("at").Point(plan.Room.Unit);
            var place = plan.Room.Frame.At(x, y);
            if (!rows.TryGetValue(rowId, out var row) || Math.Abs(place.U - row.At) > Close
                || !row.Pieces.Any(p => place.V > p.Low.V - 20 && place.V < p.High.V + 20))
            {
                report.Fault("takeoff.crossings", rowId, $"a crossing at along {place.U:F2}, across {place.V:F2} is off its row");
                continue;
            }

            if (!seen.Add((rowId, crossing.Member("supportId").Text(), (long)Math.Round(place.V))))
            {
                report.Fault("takeoff.crossings", rowId, $"the crossing at across {place.V:F2} is listed twice");
            }

            (at.TryGetValue(rowId, out var places) ? places : at[rowId] = []).Add(place.V);
            var due = crossing.Member("kind").Text() == "joint" ? 4 : 2;
            if (crossing.Member("fasteners").Decimal() is { } fasteners && fasteners != due)
            {
                report.Fault("takeoff.crossings", rowId, $"{fasteners} fasteners at across {place.V:F2}, {due} due");
            }
        }

        foreach (var piece in plan.Pieces)
        {
            foreach (var support in PieceBearing.Supports(piece, plan.Room).Where(s =>
                !(at.GetValueOrDefault(piece.RowId)?.Any(v => v > s.From - Close && v < s.To + Close) ?? false)))
            {
                report.Fault("takeoff.crossings", piece.Id, $"is not fastened where it bears, across {support.From:F1} to {support.To:F1}");
            }
        }
    }
}
