using System.Numerics;
using System.Runtime.InteropServices;

namespace LayoutService.Engine.Cutting;

/// <summary>The one inner loop of the simplex method, several numbers at a time.</summary>
internal static class LengthVector
{
    /// <summary>target −= factor × source, element by element.</summary>
    public static void Subtract(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        Span<Vector<double>> to = MemoryMarshal.Cast<double, Vector<double>>(target);
        ReadOnlySpan<Vector<double>> from = MemoryMarshal.Cast<double, Vector<double>>(source);
        var by = new Vector<double>(factor);
        for (int k = 0; k < to.Length; k++)
        {
            to[k] -= by * from[k];
        }

        for (int k = to.Length * Vector<double>.Count; k < target.Length; k++)
        {
            target[k] -= factor * source[k];
        }
    }
}
