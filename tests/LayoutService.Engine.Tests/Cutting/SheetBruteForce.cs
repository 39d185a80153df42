using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>
/// Least cost of tiny problems by trying every edge-to-edge cut at every whole unit, and every way to share the pieces
/// among sheets. Shares nothing with the solver.
/// </summary>
internal sealed class SheetBruteForce(SheetProblem problem)
{
    private readonly Dictionary<(long Width, long Length, bool Low, bool High, int Set), bool> known = [];

    /// <summary>Null when the pieces cannot all be cut.</summary>
    public long? LeastCost()
    {
        var all = (1 << problem.Wanted.Count) - 1;
        var costs = new Dictionary<(int, string), long?>();
        return Serve(all, [.. problem.Stock.Select(s => s.Quantity ?? 99)], costs);
    }

    private long? Serve(int set, int[] left, Dictionary<(int, string), long?> costs)
    {
        if (set == 0)
        {
            return 0;
        }

        var key = (set, string.Join(',', left));
        if (costs.TryGetValue(key, out var answer))
        {
            return answer;
        }

        var first = set & -set;
        for (var part = set; part > 0; part = (part - 1) & set)
        {
            for (var k = 0; k < left.Length && (part & first) != 0; k++)
            {
                var kind = problem.Stock[k];
                var factory = problem.EdgeTrim == 0;
                if (left[k] == 0 || !Cuts(kind.Width - 2 * problem.EdgeTrim, kind.Length - 2 * problem.EndTrim, factory, factory, part))
                {
                    continue;
                }

                left[k]--;
                var rest = Serve(set & ~part, left, costs);
                left[k]++;
                answer = rest + kind.Cost < (answer ?? long.MaxValue) ? rest + kind.Cost : answer;
            }
        }

        return costs[key] = answer;
    }

    /// <summary>The panel, whose long edges are or are not factory edges, gives all pieces of the set.</summary>
    private bool Cuts(long width, long length, bool low, bool high, int set)
    {
        if (width <= 0 || length <= 0)
        {
            return set == 0;
        }

        if ((set & (set - 1)) == 0)
        {
            return set == 0 || IsHeld(width, length, low, high, problem.Wanted[int.TrailingZeroCount(set)]);
        }

        var key = (width, length, low, high, set);
        if (known.TryGetValue(key, out var answer))
        {
            return answer;
        }

        for (var part = (set - 1) & set; part > 0 && !answer; part = (part - 1) & set)
        {
            for (long x = 1; x < length && !answer; x++)
            {
                answer = Cuts(width, x, low, high, part) && Cuts(width, length - x - problem.Kerf, low, high, set & ~part);
            }

            for (long y = 1; y < width && !answer; y++)
            {
                answer = Cuts(y, length, low, false, part) && Cuts(width - y - problem.Kerf, length, false, high, set & ~part);
            }
        }

        return known[key] = answer;
    }

    private static bool IsHeld(long width, long length, bool low, bool high, SheetWanted piece) =>
        (piece.MayTurn && piece.Edges == FactoryEdges.None && piece.Length <= width && piece.Width <= length)
        || (piece.Length <= length && piece.Edges switch
        {
            FactoryEdges.None => piece.Width <= width,
            FactoryEdges.One => piece.Width <= width && (low || high),
            _ => piece.Width == width && low && high,
        });
}
