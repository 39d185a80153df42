using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>Invented seeded problems: the board of a rectangular ceiling, and rectangles of all sizes.</summary>
internal static class SheetScenes
{
    public const long Inch = Length.PerInch;

    private static readonly int[] StockFeet = [8, 9, 10, 12, 14, 16];

    /// <summary>Courses of 48 in board over a room, joints on a 16 in grid, a rip at one or both walls.</summary>
    /// <param name="seed">Of the scene.</param>
    /// <param name="longestFeet">The room's sides are between 9 ft and this.</param>
    /// <param name="mixedWidths">54 in sheets can be had as well.</param>
    public static SheetProblem Ceiling(int seed, int longestFeet = 28, bool mixedWidths = false)
    {
        var random = new Random(seed);
        var run = random.Next(9 * 192, longestFeet * 192) * Length.PerSixteenth;
        var across = random.Next(9 * 192, longestFeet * 192) * Length.PerSixteenth;
        var kinds = StockFeet.Where(_ => random.Next(3) > 0).DefaultIfEmpty(12).ToArray();
        var longest = kinds.Max() * 12 * Inch;
        var stock = kinds.Select(f => new SheetKind(48 * Inch, f * 12 * Inch, f * 100 + random.Next(-20, 60))).ToList();
        stock.AddRange(mixedWidths ? kinds.Select(f => new SheetKind(54 * Inch, f * 12 * Inch, f * 113 + random.Next(-20, 60))) : []);
        var wanted = new List<SheetWanted>();
        var full = across / (48 * Inch);
        var rest = across - full * 48 * Inch;
        var widths = Enumerable.Repeat((Width: 48 * Inch, Edges: FactoryEdges.Both), (int)full).ToList();
        if (rest > 0 && random.Next(2) == 0 && full > 0)
        {
            var both = rest + 48 * Inch;
            widths[0] = (both / 2, FactoryEdges.One);
            widths.Add((both - both / 2, FactoryEdges.One));
        }
        else if (rest > 0)
        {
            widths.Add((rest, FactoryEdges.One));
        }

        foreach (var (width, edges) in widths)
        {
            var left = run;
            var first = random.Next(2, 8) * 16 * Inch - random.Next(0, 16) / 8 * Inch;
            while (left > 0)
            {
                var length = left == run ? Math.Min(first, left) : Math.Min(left, random.Next(3, 12) * 16 * Inch);
                length = left - length is > 0 and < 24 * Inch ? left : length;
                length = length > longest ? longest / (16 * Inch) * 16 * Inch : length;
                wanted.Add(new SheetWanted(width, length, edges));
                left -= length;
            }
        }

        return new SheetProblem { Wanted = wanted, Stock = stock };
    }

    /// <summary>Rectangles that may turn, several sheet sizes, kerf and trims: what the cutting call alone can be asked.</summary>
    public static SheetProblem Rectangles(int seed, int most = 25)
    {
        var random = new Random(seed);
        var stock = Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
        {
            var width = random.Next(20, 60) * Inch;
            var length = random.Next(40, 120) * Inch;
            return new SheetKind(width, length, width / Inch * (length / Inch) + random.Next(200), random.Next(4) == 0 ? random.Next(1, 9) : null);
        }).ToList();
        var wanted = Enumerable.Range(0, random.Next(1, most)).Select(_ =>
        {
            var edges = random.Next(5) == 0 ? FactoryEdges.One : FactoryEdges.None;
            return new SheetWanted(random.Next(4, 40) * Inch / 2, random.Next(8, 60) * Inch, edges, random.Next(2) == 0);
        }).ToList();
        return new SheetProblem
        {
            Wanted = wanted,
            Stock = stock,
            Kerf = random.Next(3) * Length.PerSixteenth,
            EndTrim = random.Next(2) * Inch / 4,
            EdgeTrim = random.Next(4) == 0 ? Inch / 4 : 0,
        };
    }
}
