using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Batts lie in their bays, side by side and never over each other; together with the parts that are said to be open they
/// cover every bay; nothing is thicker than the room it has, nearer to a service than its clearance, or in a return bay.
/// </summary>
internal static class BattFills
{
    private const double Close = 0.05;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var asked = new AskedBatts(plan.Room);
        if (plan.Json.Member("insulation") is not { } block)
        {
            if (asked.Wanted)
            {
                report.Fault("batts.missing", "insulation", $"batts were asked for and there is no block of them");
            }

            return;
        }

        if (!asked.Wanted)
        {
            report.Fault("batts.missing", "insulation", $"no batts were asked for");
        }

        var given = new GivenBatts(block, plan.Room);
        Coverage(plan, asked, given, report);
        foreach (var fill in given.Fills)
        {
            Depth(plan, fill, report);
            Size(asked, fill, report);
            Clear(asked, fill, report);
        }

        BattWorths.Check(plan, asked, given, report);
    }

    private static void Coverage(GivenPlan plan, AskedBatts asked, GivenBatts given, AuditReport report)
    {
        var bays = plan.Json.Member("joists").Member("bays").Items().ToList();
        var known = bays.Select(b => b.Member("id").Text()).ToHashSet();
        var rings = plan.Room.Rings.Append(asked.Region ?? []).Where(r => r.Count > 0).ToList();
        var levels = Shapes.Levels(rings);
        foreach (var stray in given.Fills.Select(f => f.Bay).Concat(given.Open.Select(o => o.Bay)).Where(b => !known.Contains(b)).Distinct())
        {
            report.Fault("batts.bay", stray, $"no bay has this id");
        }

        foreach (var bay in bays)
        {
            var id = bay.Member("id").Text()!;
            var across = new Stretch(bay.Member("from").Length(plan.Room.Unit) ?? 0, bay.Member("to").Length(plan.Room.Unit) ?? 0);
            List<IReadOnlyList<Uv>> own = [.. given.Fills.Where(f => f.Bay == id).Select(f => f.Ring), .. given.Open.Where(o => o.Bay == id).Select(o => o.Ring)];
            foreach (var ring in own.Where(r => r.Min(p => p.V) < across.From - Close || r.Max(p => p.V) > across.To + Close))
            {
                report.Fault("batts.bay", id, $"a ring reaches from {ring.Min(p => p.V):F2} to {ring.Max(p => p.V):F2} mm across; the bay from {across.From:F2} to {across.To:F2}");
            }

            var along = new Stretch(bay.Member("alongFrom").Length(plan.Room.Unit) ?? -1e9, bay.Member("alongTo").Length(plan.Room.Unit) ?? 1e9);
            List<Stretch> Inside(double v) => Meet([.. plan.Room.Floor.AlongAt(v, _ => true).Select(p => new Stretch(p.From, p.To))], [along]);
            double Due(double v) => asked.Region is { } region ? Shapes.Shared(Inside(v), Shapes.At(region, v)) : Inside(v).Sum(s => s.Length);
            // where a wall crosses an end of the bay the width of the room inside it bends
            List<double> bends = [.. levels, .. rings.SelectMany(r => Crossings(r, along.From).Concat(Crossings(r, along.To)))];
            var due = Shapes.Integrate(across, bends, Due);
            var drawn = own.Sum(r => Math.Abs(Border.SignedArea(r)));
            var cut = bends.Concat(own.SelectMany(r => r.Select(p => p.V))).ToList();
            var covered = Shapes.Integrate(across, cut, v =>
                Shapes.Shared(Merged(own.SelectMany(r => Shapes.At(r, v))), asked.Region is { } region ? Meet(Inside(v), Shapes.At(region, v)) : Inside(v)));
            var tolerance = 60 + (due * 1e-5) + (own.Count * 2);
            if (Math.Abs(drawn - due) > tolerance || Math.Abs(covered - due) > tolerance)
            {
                report.Fault("batts.coverage", id, $"{drawn:F0} mm² drawn and {covered:F0} covered, the bay has {due:F0}");
            }
        }
    }

    private static IEnumerable<double> Crossings(IReadOnlyList<Uv> ring, double u)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.U < u != b.U < u)
            {
                yield return a.V + ((b.V - a.V) * (u - a.U) / (b.U - a.U));
            }
        }
    }

    private static List<Stretch> Meet(List<Stretch> some, List<Stretch> others) => [.. some
        .SelectMany(a => others.Select(b => new Stretch(Math.Max(a.From, b.From), Math.Min(a.To, b.To))))
        .Where(s => s.Length > 0)];

    private static List<Stretch> Merged(IEnumerable<Stretch> stretches)
    {
        var merged = new List<Stretch>();
        foreach (var one in stretches.OrderBy(s => s.From))
        {
            if (merged.Count > 0 && one.From <= merged[^1].To)
            {
                merged[^1] = new Stretch(merged[^1].From, Math.Max(merged[^1].To, one.To));
            }
            else
            {
                merged.Add(one);
            }
        }

        return merged;
    }

    private static void Depth(GivenPlan plan, GivenFill fill, AuditReport report)
    {
        var free = plan.Room.Joists.FreeAt((fill.Us.From + fill.Us.To) / 2, (fill.Vs.From + fill.Vs.To) / 2);
        if (fill.Thickness > fill.Depth + Close || Math.Abs(fill.Bottom - fill.Top - fill.Depth) > Close
            || fill.Top < -free - Close || fill.Bottom > Close)
        {
            report.Fault("batts.depth", fill.Id, $"{fill.Thickness:F2} mm thick in {fill.Depth:F2} from {fill.Top:F2} to {fill.Bottom:F2}; the bay is {free:F2} deep");
        }

        // nothing in the way: all of the depth is said to be free
        if (!fill.Codes.Contains("under_service") && !fill.Codes.Contains("over_service") && Math.Abs(fill.Depth - free) > Close)
        {
            report.Fault("batts.depth", fill.Id, $"{fill.Depth:F2} mm said to be free in an empty bay {free:F2} deep");
        }
    }

    private static void Size(AskedBatts asked, GivenFill fill, AuditReport report)
    {
        if (Math.Abs(fill.Length - fill.Us.Length) > Close || fill.Width < fill.Vs.Length - 6.1)
        {
            report.Fault("batts.size", fill.Id, $"{fill.Width:F2} × {fill.Length:F2} mm for a place of {fill.Vs.Length:F2} × {fill.Us.Length:F2}");
        }

        if (!asked.Listed)
        {
            return;
        }

        var batt = asked.Batts.FirstOrDefault(b => b.Id == fill.Batt);
        if (batt is null)
        {
            report.Fault("batts.batt", fill.Id, $"{fill.Batt} was not offered");
            return;
        }

        if (fill.Width > batt.Width + Close)
        {
            report.Fault("batts.size", fill.Id, $"{fill.Width:F2} mm wide from a batt of {batt.Width:F2}");
        }

        var loose = fill.Split ? batt.Thickness / 2 : batt.Thickness;
        var best = asked.Batts.SelectMany(b => b.Splittable ? new[] { b.Thickness, b.Thickness / 2 } : [b.Thickness])
            .Where(t => t - fill.Depth <= t * 0.125).Select(t => Math.Min(t, fill.Depth)).DefaultIfEmpty(0).Max();
        if ((fill.Split && !batt.Splittable) || fill.Thickness > loose + Close || loose - fill.Thickness > (loose * 0.125) + Close)
        {
            report.Fault("batts.squeeze", fill.Id, $"{fill.Thickness:F2} mm of a layer of {loose:F2}");
        }
        else if (fill.Thickness < best - Close)
        {
            report.Fault("batts.thickest", fill.Id, $"{fill.Thickness:F2} mm where {best:F2} would fit");
        }
    }

    private static void Clear(AskedBatts asked, GivenFill fill, AuditReport report)
    {
        foreach (var service in asked.Services)
        {
            foreach (var ring in service.Rings)
            {
                var over = new Stretch(Math.Max(ring.Min(p => p.V), fill.Vs.From), Math.Min(ring.Max(p => p.V), fill.Vs.To)).Length > 1
                    && Shapes.SharedArea(ring, fill.Ring) > 100;
                var near = over || (service.Clearance > 0 && Shapes.Distance(ring, fill.Ring) < service.Clearance - 0.1);
                var inDepth = Math.Min(fill.Bottom, service.Bottom + service.Clearance) - Math.Max(fill.Top, service.Top - service.Clearance) > Close;
                if (near && service.Top < 0 && (inDepth || service.Reach || service.Kind == "panned-return"))
                {
                    report.Fault("batts.clearance", fill.Id, $"too near to {service.Id}, {service.Kind} from {service.Top:F1} to {service.Bottom:F1} with {service.Clearance:F1} mm clear");
                }
            }
        }
    }
}
