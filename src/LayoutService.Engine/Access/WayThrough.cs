using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Access;

/// <summary>
/// Problem: does a stiff flat piece (length, width, thickness) get into a room? Each question is one of plane geometry and is
/// answered by its closed condition; no tolerance for hands is added, because the caller gives clear sizes.
/// <list type="bullet">
/// <item>Through an opening, end first: its cross-section must fit in the opening, straight or tilted. A rectangle p × q
/// (p ≥ q) fits in a × b (a ≥ b) when p ≤ a and q ≤ b, or p &gt; a and
/// b ≥ (2pqa + (p² − q²)√(p² + q² − a²)) / (p² + q²): W. Carver, American Mathematical Monthly 64 (1957), 114 to 116; from
/// memory.</item>
/// <item>Round a square turn between passages a and b wide, lying level, c thick in plan: its length is at most the least of
/// (a sin θ + b cos θ − c) / (sin θ cos θ) over all angles. For c = 0 that is the ladder problem, (a^⅔ + b^⅔)^1½. Derived:
/// the inner corner stays c or more from the line between the piece's ends.</item>
/// <item>With height to spare the piece is tilted in its own plane, which shortens it in plan: on edge and tilted by φ it is
/// L cos φ + w sin φ long in plan and L sin φ + w cos φ high. The steepest tilt under the height is tried, and standing on
/// end. Ways that twist the piece about two axes at once are not tried: what is said to get in does, and some that does not
/// by this might.</item>
/// </list>
/// </summary>
public static class WayThrough
{
    private const int Angles = 2000;
    private const int Refinements = 60;

    /// <summary>True when the piece gets through every passage and round the turn, or through the window.</summary>
    public static bool Admits(WayIn way, Length length, Length width, Length thickness) =>
        (way.Passages.All(passage => Through(passage, width, thickness)) && (way.Turn is not { } turn || Round(turn, length, width, thickness)))
        || (way.Window is { } window && Through(window, width, thickness));

    /// <summary>True when a piece of this cross-section goes through the opening end first.</summary>
    public static bool Through(ClearOpening opening, Length width, Length thickness)
    {
        var (a, b) = Sorted(opening.Width, opening.Height);
        var (p, q) = Sorted(width, thickness);
        return (p <= a && q <= b)
            || (p > a && (p * p) + (q * q) >= a * a && b >= ((2 * p * q * a) + (((p * p) - (q * q)) * Math.Sqrt((p * p) + (q * q) - (a * a)))) / ((p * p) + (q * q)));
    }

    /// <summary>True when the piece gets round the turn: flat, or on edge, level, tilted or standing.</summary>
    public static bool Round(SquareTurn turn, Length length, Length width, Length thickness)
    {
        double l = length.Units, w = width.Units, t = thickness.Units;
        var height = turn.Height?.Units ?? double.PositiveInfinity;
        if (t <= height && l <= LongestLevel(turn, w))
        {
            return true;
        }

        var longest = LongestLevel(turn, t);
        if (w <= height && l <= longest)
        {
            return true;
        }

        return (l <= height && w <= longest) || (w <= height && double.IsFinite(height) && Tilted(l, w, height) <= longest);
    }

    /// <summary>The longest level piece, <paramref name="thick"/> in plan, that gets round; 0 when none does.</summary>
    public static double LongestLevel(SquareTurn turn, double thick)
    {
        double a = turn.WidthBefore.Units, b = turn.WidthAfter.Units;
        if (thick >= Math.Min(a, b))
        {
            return 0;
        }

        var best = 1;
        for (var i = 2; i < Angles; i++)
        {
            if (At(i) < At(best))
            {
                best = i;
            }
        }

        double low = best - 1, high = best + 1;
        for (var i = 0; i < Refinements; i++)
        {
            var (left, right) = (low + ((high - low) / 3), high - ((high - low) / 3));
            (low, high) = At(left) < At(right) ? (low, right) : (left, high);
        }

        return At((low + high) / 2);

        double At(double step)
        {
            var (sine, cosine) = Math.SinCos(Math.Clamp(step, 0.5, Angles - 0.5) * Math.PI / 2 / Angles);
            return ((a * sine) + (b * cosine) - thick) / (sine * cosine);
        }
    }

    // plan length on edge at the steepest tilt whose height L sin φ + w cos φ stays under the clear height
    private static double Tilted(double l, double w, double height)
    {
        var diagonal = Math.Sqrt((l * l) + (w * w));
        if (height >= diagonal)
        {
            return w;
        }

        var tilt = Math.Asin(height / diagonal) - Math.Atan2(w, l);
        return tilt <= 0 ? l : (l * Math.Cos(tilt)) + (w * Math.Sin(tilt));
    }

    private static (double Larger, double Smaller) Sorted(Length a, Length b) =>
        a >= b ? (a.Units, b.Units) : (b.Units, a.Units);
}
