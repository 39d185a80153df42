using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>
/// Invented rooms for the cutting tests: a rectangle or an L, joists at irregular places 300 to 600 mm apart, some doubled,
/// strap rows 400 mm apart across them, a mix of stock lengths with prices out of proportion to length.
/// </summary>
internal static class SeededRooms
{
    private const long Mm = 8000;

    /// <summary>The room of a seed; across and along in mm bound the rectangle that holds it.</summary>
    public static BarProblem Make(int seed, double leastMetres = 3, double mostMetres = 9)
    {
        var random = new Random(seed);
        long across = Pick(random, leastMetres, mostMetres);
        long along = Pick(random, leastMetres, mostMetres);
        bool corner = random.Next(2) == 0;
        long armFrom = corner ? across * random.Next(30, 60) / 100 : 0;
        long armLength = corner ? along * random.Next(25, 60) / 100 : 0;
        (List<long> joists, List<int> grades) = Joists(random, across);
        List<StickKind> kinds = Kinds(random);
        long longest = kinds.Max(k => k.Length) - 3 * Mm;
        var whole = Piece(joists, grades, 0, across, longest);
        var arm = corner ? Piece(joists, grades, armFrom, across, longest) : whole;
        int rows = (int)Math.Ceiling((along - 64 * Mm) / (400.0 * Mm)) + 1;
        var bars = new List<Bar>();
        for (int row = 0; row < rows; row++)
        {
            long at = 32 * Mm + (along - 64 * Mm) * row / (rows - 1);
            (List<BarNode> nodes, List<BarPiece> pieces) = corner && at > along - armLength ? arm : whole;
            var near = new List<int>();
            if (row > 0)
            {
                near.Add(row - 1);
            }

            if (row < rows - 1)
            {
                near.Add(row + 1);
            }

            bars.Add(new Bar(nodes, pieces, near));
        }

        return new BarProblem(bars, Extras(random), kinds, 3 * Mm, 3 * Mm, 5);
    }

    private static long Pick(Random random, double least, double most) =>
        (long)((least + (most - least) * random.NextDouble()) * 200) * 5 * Mm;

    private static (List<long> Joists, List<int> Grades) Joists(Random random, long across)
    {
        var joists = new List<long>();
        var grades = new List<int>();
        bool regular = random.Next(4) == 0;
        long at = random.Next(20, 400) * Mm;
        while (at < across - 19 * Mm)
        {
            joists.Add(at);
            int kind = random.Next(20);
            grades.Add(kind == 0 ? 0 : kind == 1 ? 5 : 1);
            at += (regular ? 406 : random.Next(300, 600)) * Mm;
        }

        return (joists, grades);
    }

    private static (List<BarNode> Nodes, List<BarPiece> Pieces) Piece(List<long> joists, List<int> grades, long from, long to, long longest)
    {
        var at = new List<long> { from };
        var nodes = new List<BarNode> { new(-1, 0) };
        for (int j = 0; j < joists.Count; j++)
        {
            if (joists[j] > from + 19 * Mm && joists[j] < to - 19 * Mm)
            {
                at.Add(joists[j]);
                nodes.Add(new BarNode(j, grades[j]));
            }
        }

        at.Add(to);
        nodes.Add(new BarNode(-1, 0));
        var pieces = new List<BarPiece>();
        for (int i = 0; i < at.Count - 1; i++)
        {
            for (int j = i + 1; j < at.Count; j++)
            {
                int supports = j - i + 1 - (i == 0 ? 1 : 0) - (j == at.Count - 1 ? 1 : 0);
                long cut = at[j] - at[i] - (i == 0 ? 6 * Mm : 0) - (j == at.Count - 1 ? 6 * Mm : 0);
                if (supports >= 2 && cut >= 600 * Mm && cut <= longest)
                {
                    pieces.Add(new BarPiece(i, j, cut));
                }
            }
        }

        return (nodes, pieces);
    }

    private static List<StickKind> Kinds(Random random)
    {
        bool imperial = random.Next(2) == 0;
        double rate = imperial ? 45 + random.Next(30) : 1.4 + random.NextDouble();
        var kinds = new List<StickKind>();
        for (int k = 0; k < 5; k++)
        {
            long length = imperial ? (8 + 2 * k) * 12 * 203_200L : (2400 + 600 * k) * Mm;
            double fair = imperial ? (8 + 2 * k) * rate : (2400 + 600 * k) / 10.0 * rate;
            long cost = (long)(fair * (0.92 + 0.2 * random.NextDouble()));
            if (random.Next(4) != 0 || k == 4 || (k == 3 && kinds.Count == 0))
            {
                kinds.Add(new StickKind(length, cost));
            }
        }

        return kinds;
    }

    private static List<StickWanted> Extras(Random random)
    {
        var extras = new List<StickWanted>();
        if (random.Next(3) == 0)
        {
            extras.Add(new StickWanted(random.Next(300, 500) * Mm, random.Next(2, 9)));
        }

        return extras;
    }
}
