using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The straps are packed to the level of the lowest crossing where a step between neighbours is more than 1/8 in: each crossing to
/// the nearest sixteenth or millimetre; past 19 mm (3/4 in) a sister lies there instead; screws reach through the packing.
/// </summary>
internal static class Packing
{
    private const double From = 3.175;
    private const double Close = 0.002;
    private const double SisterReach = 38;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var strapping = plan.Json.Member("strapping");
        if (plan.Room.Levels is not { } levels || strapping.Member("crossings") is null)
        {
            if (strapping.Member("shims").Items().Any())
            {
                report.Fault("packing", "shims", $"there, though no underside was read");
            }

            return;
        }

        var rows = plan.Rows.ById(r => r.Id);
        var nailers = plan.Nailers.Select(n => n.Id).ToHashSet();
        var crossings = strapping.Member("crossings").Items().Where(c => !nailers.Contains(c.Member("supportId").Text()!)).Select(c =>
        {
            var at = plan.Room.Place(c.GetProperty("at"));
            var u = rows[c.Member("rowId").Text()!].At;
            var support = plan.Room.Joists.Supports(u).MinBy(s => Math.Max(0, Math.Max(s.From - at.V, at.V - s.To)));
            return (Row: c.Member("rowId").Text()!, Joist: c.Member("supportId").Text()!, U: u, at.V, Support: support, Level: levels.Of(support, u), Joint: c.Member("kind").Text() == "joint", Fasteners: c.Member("fasteners").Decimal() ?? 0);
        }).ToList();
        if (crossings.Count == 0)
        {
            return;
        }

        var plane = crossings.Min(c => c.Level);
        if (Math.Abs(plane - (strapping.Member("plane").Member("level").Length(plan.Room.Unit) ?? double.NaN)) is not < Close)
        {
            report.Fault("packing", "plane", $"{strapping.Member("plane").Member("level").Text()} stated, the lowest crossing is at {plane:F3}");
        }

        var grain = plan.Room.Step;
        var most = plan.Room.Imperial ? 19.05 : 19;
        var shims = strapping.Member("shims").Items().ToLookup(s => (s.Member("rowId").Text()!, s.Member("supportId").Text()!));
        var packs = shims.Count > 0 || strapping.Member("nailers").Items().Any(n => n.Member("role").Text() == "sister");
        var step = Steps(plan, crossings.Select(c => (c.Row, c.U, c.V, c.Support, c.Level)).ToList());
        if (packs != step > From && Math.Abs(step - From) > Close && !(step > From && crossings.All(c => c.Level - plane < 1.6 || c.Level - plane > SisterReach - 1)))
        {
            report.Fault("packing", "plane", $"packed {packs}, though the greatest step between neighbours is {step:F3} mm");
            return;
        }

        var due = new Dictionary<(string, string), double>();
        foreach (var crossing in crossings.Where(_ => packs))
        {
            var gap = crossing.Level - plane;
            var wanted = gap <= From / 2 || gap > SisterReach ? 0 : Math.Floor((gap / grain) + 0.5) * grain;
            var own = shims[(crossing.Row, crossing.Joist)].Where(s => Math.Abs(plan.Room.Place(s.GetProperty("at")).V - crossing.V) < 1).ToList();
            var given = own.Sum(s => s.Member("thickness").Length(plan.Room.Unit) ?? 0);
            // at the very middle between two steps, or at a limit, either is right
            if (Math.Abs(gap - (From / 2)) < Close || Math.Abs(gap - SisterReach) < Close || Math.Abs((gap / grain) + 0.5 - Math.Round((gap / grain) + 0.5)) < 0.002)
            {
                continue;
            }

            var sistered = wanted > most + Close;
            if (Math.Abs(given - (sistered ? 0 : wanted)) > Close)
            {
                report.Fault("packing", crossing.Row, $"{given:F3} mm at {crossing.Joist}, the joist is {gap:F3} off the plane");
            }

            if (sistered && !Sistered(plan, strapping, crossing.U, crossing.Support, crossing.Joint))
            {
                report.Fault("packing", crossing.Row, $"no sister at {crossing.Joist}, which is {gap:F3} off the plane");
            }

            if (given > 0 && own.Sum(s => s.Member("count").Decimal() ?? 0) != (crossing.Joint ? 2 : 1))
            {
                report.Fault("packing", crossing.Row, $"{own.Count} pieces at {crossing.Joist}");
            }
        }

        Counted(plan, strapping, report);
    }

    // every thickness is ordered as often as it is used, and screws that reach through it are there
    private static void Counted(GivenPlan plan, JsonElement? strapping, AuditReport report)
    {
        var lines = plan.Json.Member("takeoff").Member("lines").Items().ToList();
        var used = strapping.Member("shims").Items().Sum(s => s.Member("count").Decimal() ?? 0);
        var ordered = lines.Where(l => l.Member("code").Text() == "shim").Sum(l => l.Member("counted").Decimal() ?? 0);
        if (lines.Count > 0 && used != ordered)
        {
            report.Fault("takeoff.shims", "shims", $"{ordered} counted, {used} used");
        }

        var fasteners = strapping.Member("crossings").Items().ToLookup(c => (c.Member("rowId").Text(), c.Member("supportId").Text()), c => c.Member("fasteners").Decimal() ?? 0);
        var packed = strapping.Member("shims").Items().Select(s => (Thickness: s.Member("thickness").Length(plan.Room.Unit) ?? 0, Fasteners: fasteners[(s.Member("rowId").Text(), s.Member("supportId").Text())].Sum())).ToList();
        var screws = lines.Where(l => l.Member("code").Text() == "strap-screw").Select(l => (Length: LengthText.Millimetres(l.GetProperty("id"), 25.4), Counted: l.Member("counted").Decimal() ?? 0)).ToList();
        foreach (var thickness in packed.Select(p => p.Thickness).Distinct())
        {
            var reach = StrapThickness(plan.Room) + thickness + 31.75 - 0.1;
            if (screws.Count > 0 && screws.Where(s => s.Length >= reach).Sum(s => s.Counted) < packed.Where(p => p.Thickness >= thickness).Sum(p => p.Fasteners))
            {
                report.Fault("takeoff.screws", "strap-screw", $"too few reach {reach:F1} mm, through packing of {thickness:F2} mm");
            }
        }
    }

    private static double StrapThickness(AskedRoom room)
    {
        var size = room.Json.Member("strapping").Member("size");
        return size.Member("thickness").Length(room.Unit) ?? (size.Member("name").Text()?.StartsWith('2') == true ? 38 : 19);
    }

    private static bool Sistered(GivenPlan plan, JsonElement? strapping, double along, Stretch support, bool joint)
    {
        var beside = strapping.Member("nailers").Items().Where(n => n.Member("role").Text() == "sister")
            .Select(n => (From: plan.Room.Place(n.GetProperty("from")), To: plan.Room.Place(n.GetProperty("to"))))
            .Where(n => Math.Min(n.From.U, n.To.U) - 1 <= along && along <= Math.Max(n.From.U, n.To.U) + 1 && n.From.V > support.From - 40 && n.From.V < support.To + 40)
            .Select(n => n.From.V).Distinct().Count();
        return beside >= (joint ? 2 : 1);
    }

    // the greatest step between crossings next to each other in a stretch of row, or along a support
    private static double Steps(GivenPlan plan, List<(string Row, double U, double V, Stretch Support, double Level)> crossings)
    {
        var most = 0.0;
        var rows = plan.Rows.ById(r => r.Id);
        foreach (var row in crossings.GroupBy(c => c.Row))
        {
            var along = row.OrderBy(c => c.V).ToList();
            for (var i = 1; i < along.Count; i++)
            {
                var (from, to) = (along[i - 1].V, along[i].V);
                if (rows[row.Key].Pieces.Where(p => p.High.V > from && p.Low.V < to).Sum(p => Math.Min(to, p.High.V) - Math.Max(from, p.Low.V)) > to - from - 1)
                {
                    most = Math.Max(most, Math.Abs(along[i].Level - along[i - 1].Level));
                }
            }
        }

        foreach (var joist in crossings.GroupBy(c => c.Support))
        {
            var along = joist.OrderBy(c => c.U).ToList();
            for (var i = 1; i < along.Count; i++)
            {
                most = Math.Max(most, Math.Abs(along[i].Level - along[i - 1].Level));
            }
        }

        return most;
    }
}
