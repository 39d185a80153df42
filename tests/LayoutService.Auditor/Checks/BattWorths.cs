using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Resistance and mass from the batts' own figures: 0.2 N/m² a mm (CWC Wood Design Manual), joists 0.85 RSI and open bays
/// 0.16 RSI (National Building Code's note A-9.36.2.4, from memory), all by parallel paths.
/// </summary>
internal static class BattWorths
{
    public static void Check(GivenPlan plan, AskedBatts asked, GivenBatts given, AuditReport report)
    {
        foreach (var fill in given.Fills)
        {
            if (Math.Abs(fill.Area - fill.Drawn) > 50 + (fill.Drawn * 1e-5))
            {
                report.Fault("batts.area", fill.Id, $"{fill.Area:F0} mm² said, {fill.Drawn:F0} drawn");
            }

            if (asked.Listed && asked.Batts.FirstOrDefault(b => b.Id == fill.Batt) is { } batt)
            {
                Worth(fill, batt, report);
            }
        }

        foreach (var open in given.Open.Where(o => o.Reasons == 0 || Math.Abs(o.Area - Math.Abs(Border.SignedArea(o.Ring))) > 50 + (o.Area * 1e-5)))
        {
            report.Fault("batts.area", open.Bay, $"an open part of {open.Area:F0} mm² with {open.Reasons} reasons");
        }

        var (filled, left) = (given.Fills.Sum(f => f.Drawn), given.Open.Where(o => !o.Wood).Sum(o => o.Area));
        var joists = Math.Max(0, given.Area - filled - left);
        var wood = 8.5 * plan.Room.Joists.Free.Min() / 1000;
        var flow = given.Fills.Sum(f => f.Drawn / f.Rsi) + (joists / wood) + (left / 0.16);
        if (Math.Abs(given.AreaRsi - (given.Area / flow)) > 0.002 + (given.AreaRsi * 0.002) || Math.Abs(given.Framing - (joists / given.Area)) > 1e-4)
        {
            report.Fault("batts.r", "areaR", $"RSI {given.AreaRsi:F4} and framing {given.Framing:F4}, recomputed {given.Area / flow:F4} and {joists / given.Area:F4}");
        }
    }

    private static void Worth(GivenFill fill, AskedBatt batt, AuditReport report)
    {
        var loose = fill.Split ? batt.Thickness / 2 : batt.Thickness;
        var whole = (batt.Rsi ?? (0.022 * batt.Thickness)) * (fill.Split ? 0.5 : 1);
        var squeezed = fill.Thickness < loose - 0.05;
        if (fill.Rsi > whole + 0.002 || fill.Rsi < (whole * fill.Thickness / loose) - 0.002 || (!squeezed && fill.Rsi < whole - 0.002))
        {
            report.Fault("batts.r", fill.Id, $"RSI {fill.Rsi:F3} of {whole:F3}, {fill.Thickness:F1} mm of {loose:F1}");
        }

        var mass = fill.Drawn / 1e6 * loose * 0.2 / 9.80665;
        if (Math.Abs(fill.Mass - mass) > 0.002 + (mass * 0.001))
        {
            report.Fault("batts.mass", fill.Id, $"{fill.Mass:F3} kg, recomputed {mass:F3}");
        }
    }
}
