namespace LayoutService.Engine.Fixtures;

/// <summary>
/// Lines of lights for a number of them in a rectangle. A grid is regular when one spacing is at most twice the other
/// (common practice, no source); a single line may be longer than the room is wide. The least number from the one asked for
/// that gives such a grid is taken, with the spacings nearest to each other. Cost: factor pairs of a few numbers.
/// </summary>
public static class RegularGrid
{
    private const double MostUneven = 2;

    public static (int Along, int Across) Of(int lights, long along, long across)
    {
        for (var total = lights; total <= (2 * lights) + 3; total++)
        {
            var (found, uneven) = Best(total, along, across);
            if (uneven <= MostUneven)
            {
                return found;
            }
        }

        return Best(lights, along, across).Grid;
    }

    private static ((int Along, int Across) Grid, double Uneven) Best(int total, long along, long across)
    {
        var (best, least) = ((1, total), double.MaxValue);
        for (var a = 1; a <= total; a++)
        {
            if (total % a == 0 && Uneven(a, total / a, along, across) is var uneven && uneven < least)
            {
                (best, least) = ((a, total / a), uneven);
            }
        }

        return (best, least);
    }

    // one spacing over the other, whichever is more; a direction with one light has no spacing to be too small
    private static double Uneven(int a, int b, long along, long across)
    {
        var (u, v) = ((double)along / a, (double)across / b);
        return Math.Max(1, Math.Max(b > 1 ? u / v : 0, a > 1 ? v / u : 0));
    }
}
