using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Fixtures;

/// <summary>
/// A way for the cable from light to light. Problem: a short open path through all places, measured along and across the
/// joists, as a cable lies in bays and in the gap. Method: nearest neighbour from the lowest place, then turning stretches
/// round while that shortens it (2-opt), at most <see cref="MostPasses"/> passes. No bound is claimed: it is an estimate.
/// Cost: lights² a pass.
/// </summary>
public static class CablePaths
{
    private const int MostPasses = 20;

    /// <summary>At each light for the drop and the connection: 300 mm. Common practice, no source.</summary>
    public const long AtEachLight = 300 * Length.PerMillimetre;

    /// <summary>Order of the places, and the length from first to last.</summary>
    public static (int[] Order, long OnPlan) Of(IReadOnlyList<Uv> places)
    {
        var left = Enumerable.Range(0, places.Count).OrderBy(i => places[i].U + places[i].V).ThenBy(i => places[i].U).ThenBy(i => places[i].V).ToList();
        var order = new List<int>(places.Count);
        while (left.Count > 0)
        {
            var next = order.Count == 0 ? left[0] : left.MinBy(i => Between(places[order[^1]], places[i]));
            order.Add(next);
            left.Remove(next);
        }

        var path = order.ToArray();
        for (var (pass, better) = (0, true); better && pass < MostPasses; pass++)
        {
            better = Turn(places, path);
        }

        return (path, Enumerable.Range(0, Math.Max(0, path.Length - 1)).Sum(i => Between(places[path[i]], places[path[i + 1]])));
    }

    /// <summary>A tenth more, and the slack at each light.</summary>
    public static long WithSlack(long onPlan, int lights) => onPlan + (onPlan / 10) + (lights * AtEachLight);

    private static bool Turn(IReadOnlyList<Uv> places, int[] path)
    {
        var better = false;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            for (var j = i + 1; j < path.Length; j++)
            {
                var before = Step(i - 1, i) + Step(j, j + 1);
                var after = (i > 0 ? Between(places[path[i - 1]], places[path[j]]) : 0) + (j + 1 < path.Length ? Between(places[path[i]], places[path[j + 1]]) : 0);
                if (after < before)
                {
                    Array.Reverse(path, i, j - i + 1);
                    better = true;
                }
            }
        }

        return better;

        long Step(int a, int b) => a < 0 || b >= path.Length ? 0 : Between(places[path[a]], places[path[b]]);
    }

    private static long Between(Uv a, Uv b) => Math.Abs(a.U - b.U) + Math.Abs(a.V - b.V);
}
