namespace LayoutService.Engine.Checks;

/// <summary>
/// A strap under an even load, in its widest bay. Problem: greatest moment and sag of a beam of one span, or of two unequal
/// ones. Method: the three-moment equation (closed form; no iteration). Its two cases are the usual handbook ones: one span
/// wL²/8 and 5wL⁴/384EI; two equal spans wL²/8 over the middle support and wL⁴/185EI. Lengths mm, load N/mm, stiffness N·mm².
/// </summary>
public static class StrapBeam
{
    // Places along the span at which the sag of a two-span beam is read: its greatest lies between 0.42 and 0.5 of the span.
    private const int Steps = 200;

    /// <summary>Greatest moment, N·mm: over the middle support or in the bay. A neighbour of null means one span.</summary>
    public static double Moment(double load, double span, double? next)
    {
        var over = OverSupport(load, span, next);
        var reaction = (load * span / 2) - (over / span);
        return Math.Max(over, reaction * reaction / (2 * load));
    }

    /// <summary>Greatest sag within the widest bay, mm.</summary>
    public static double Sag(double load, double span, double? next, double stiffness)
    {
        var over = OverSupport(load, span, next);
        double most = 0;
        for (var i = 1; i < Steps; i++)
        {
            var x = span * i / Steps;
            var even = load * x * ((span * span * span) - (2 * span * x * x) + (x * x * x)) / 24;
            var lifted = over * x * ((span * span) - (x * x)) / (6 * span);
            most = Math.Max(most, (even - lifted) / stiffness);
        }

        return most;
    }

    // Three-moment equation for a load that is even over both spans: 2M(L + l) = w(L³ + l³)/4.
    private static double OverSupport(double load, double span, double? next) =>
        next is { } other ? load * ((span * span * span) + (other * other * other)) / (8 * (span + other)) : 0;
}
