using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>No wood beside the rows goes through an opening, and none lies where another lies already.</summary>
internal static class NailerClearance
{
    private const double Close = 0.06;
    private const int Places = 40;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var rings = plan.Room.Json.Member("room").Member("openings").Items().Select(o => new Border([o.GetProperty("outline").Ring(plan.Room.Unit).Select(p => plan.Room.Frame.At(p.X, p.Y)).ToList()])).ToList();
        foreach (var nailer in plan.Nailers)
        {
            for (var i = 1; i < Places; i++)
            {
                var share = (double)i / Places;
                var at = new Uv(nailer.From.U + ((nailer.To.U - nailer.From.U) * share), nailer.From.V + ((nailer.To.V - nailer.From.V) * share));
                if (rings.Exists(ring => ring.AcrossAt(at.U).Any(p => p.From < at.V && at.V < p.To) && ring.Walls.Min(w => w.Distance(at)) > Close))
                {
                    report.Fault("nailers.opening", nailer.Id, $"goes through an opening at along {at.U:F1}, across {at.V:F1}");
                    break;
                }
            }
        }

        // ledgers and blocks lie between the joists, the others in the plane of the straps below them
        var low = plan.Json.Member("strapping").Member("nailers").Items().ToLookup(n => n.Member("id").Text() ?? "", n => n.Member("role").Text() is "wall-nailer" or "header");
        foreach (var plane in plan.Nailers.GroupBy(n => low[n.Id].First()))
        {
            Twice([.. plane.OrderBy(n => n.From.U)], report);
        }
    }

    private static void Twice(List<GivenNailer> lying, AuditReport report)
    {
        for (var i = 0; i < lying.Count; i++)
        {
            for (var j = i + 1; j < lying.Count && lying[j].From.U - lying[i].From.U < Close; j++)
            {
                if (Near(lying[i].From, lying[j].From) && Near(lying[i].To, lying[j].To))
                {
                    report.Fault("nailers.twice", lying[j].Id, $"lies where {lying[i].Id} lies");
                }
            }
        }
    }

    private static bool Near(Uv a, Uv b) => Math.Abs(a.U - b.U) < Close && Math.Abs(a.V - b.V) < Close;
}
