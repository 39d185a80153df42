namespace LayoutService.Engine.Cutting;

/// <summary>
/// The shortest stretch of a sheet that holds each set of rips, over all guillotine arrangements: an exact dynamic
/// program over sets of pieces that keeps, for every set, the smallest boxes that hold it (bottom-up joining of
/// rectangles, after P. Y. Wang 1983). Time: pairs of sets × boxes²; a step is one pair of boxes. Chosen because one
/// sheet holds few rips, and then exact answers cost less than bounding inexact ones.
/// A box remembers how many of the sheet's factory edges it must reach: 0, 1 (either: it can be mirrored) or 2.
/// </summary>
internal sealed class SheetRipTable
{
    public readonly record struct Box(long Width, long Length, byte Edges, Join Join, int A, int B);

    public enum Join : byte
    {
        Piece,
        TurnedPiece,
        Along,
        Beside,
    }

    /// <summary>The rip types; counts below are in this order.</summary>
    public readonly int[] RipTypes;

    /// <summary>Number of sets that fit some sheet, the empty one (index 0) included; ordered by shortest stretch.</summary>
    public readonly int Sets;

    /// <summary>Counts of set s are <c>Counts[s * RipTypes.Length ..]</c>.</summary>
    public readonly int[] Counts;

    public readonly long[] Stretch;
    public readonly int[] ShortestBox;

    /// <summary>Every set of rips that fits a sheet is here; otherwise the table leaves sets out.</summary>
    public readonly bool Complete = true;

    /// <summary>Steps spent.</summary>
    public readonly int Steps;

    private readonly List<Box> boxes = [];

    public Box this[int box] => boxes[box];

    public SheetRipTable(SheetTypes types, int[] ripTypes, long width, long length, int stepLimit, int setLimit)
    {
        RipTypes = ripTypes;
        var n = ripTypes.Length;
        var cap = new int[n];
        for (var j = 0; j < n; j++)
        {
            var t = ripTypes[j];
            var most = (double)width * length / ((double)types.Width[t] * types.Length[t]);
            if (types.Need[t] == 1)
            {
                most = Math.Min(most, 2 * (length / types.Length[t]));
            }

            cap[j] = (int)Math.Min(types.Demand[t], Math.Floor(most + 1e-9));
        }

        var stride = new int[n];
        long total = 1;
        for (var j = 0; j < n; j++)
        {
            while (total * (cap[j] + 1) > setLimit && cap[j] > 0)
            {
                cap[j]--;
                Complete = false;
            }

            stride[j] = (int)total;
            total *= cap[j] + 1;
        }

        var sets = (int)total;
        var start = new int[sets + 1];
        var front = new List<Box>();
        var s = new int[n];
        var a = new int[n];
        var found = new List<(long Stretch, int Set, int Box)> { (0, 0, -1) };
        var area = (double)width * length * (1 + 1e-12);
        for (var set = 1; set < sets; set++)
        {
            start[set] = boxes.Count;
            Increment(s, cap);
            if (Steps > stepLimit)
            {
                Complete = false;
                break;
            }

            var setArea = 0.0;
            var pieces = 0;
            var some = 0;
            var possible = true;
            for (var j = 0; j < n; j++)
            {
                if (s[j] > 0)
                {
                    setArea += (double)s[j] * types.Width[ripTypes[j]] * types.Length[ripTypes[j]];
                    pieces += s[j];
                    some = j;
                    var without = set - stride[j];
                    possible &= without == 0 || start[without] < start[without + 1];
                }
            }

            if (!possible || setArea > area)
            {
                start[set + 1] = boxes.Count;
                continue;
            }

            front.Clear();
            if (pieces == 1)
            {
                var t = ripTypes[some];
                if (types.LiesStraight(t, width) && types.Length[t] <= length)
                {
                    Keep(front, new Box(types.Width[t], types.Length[t], types.Need[t], Join.Piece, t, 0));
                }

                if (types.Turn[t] && types.Length[t] <= width && types.Width[t] <= length)
                {
                    Keep(front, new Box(types.Length[t], types.Width[t], 0, Join.TurnedPiece, t, 0));
                }
            }
            else
            {
                Array.Clear(a);
                for (var first = NextPart(a, s, stride, 0); first > 0 && first <= set - first; first = NextPart(a, s, stride, first))
                {
                    Steps += JoinAll(front, start, first, set - first, width, length);
                }
            }

            boxes.AddRange(front);
            start[set + 1] = boxes.Count;
            var best = -1;
            for (var b = start[set]; b < boxes.Count; b++)
            {
                best = best < 0 || boxes[b].Length < boxes[best].Length ? b : best;
            }

            if (best >= 0)
            {
                found.Add((boxes[best].Length, set, best));
            }
        }

        found.Sort((x, y) => x.Stretch != y.Stretch ? x.Stretch.CompareTo(y.Stretch) : x.Set.CompareTo(y.Set));
        Sets = found.Count;
        Counts = new int[Sets * n];
        Stretch = new long[Sets];
        ShortestBox = new int[Sets];
        for (var i = 0; i < Sets; i++)
        {
            var (stretch, set, box) = found[i];
            (Stretch[i], ShortestBox[i]) = (stretch, box);
            for (var j = n - 1; j >= 0; j--)
            {
                Counts[i * n + j] = set / stride[j];
                set %= stride[j];
            }
        }
    }

    /// <summary>Counts in mixed radix, the first the fastest: their order is the order of set numbers.</summary>
    private static void Increment(int[] counts, int[] cap)
    {
        for (var j = 0; j < counts.Length; j++)
        {
            if (counts[j] < cap[j])
            {
                counts[j]++;
                return;
            }

            counts[j] = 0;
        }
    }

    /// <summary>The next subset of s after the one numbered <paramref name="part"/>; its number, ascending.</summary>
    private static int NextPart(int[] a, int[] s, int[] stride, int part)
    {
        for (var j = 0; j < a.Length; j++)
        {
            if (a[j] < s[j])
            {
                a[j]++;
                return part + stride[j];
            }

            part -= a[j] * stride[j];
            a[j] = 0;
        }

        return 0;
    }

    private int JoinAll(List<Box> front, int[] start, int first, int second, long width, long length)
    {
        var steps = 1;
        for (var i = start[first]; i < start[first + 1]; i++)
        {
            var a = boxes[i];
            for (var j = start[second]; j < start[second + 1]; j++)
            {
                steps++;
                var b = boxes[j];
                var along = a.Length + b.Length;
                if (along <= length)
                {
                    Keep(front, new Box(Math.Max(a.Width, b.Width), along, Math.Max(a.Edges, b.Edges), Join.Along, i, j));
                }

                var beside = a.Width + b.Width;
                if (beside <= width && a.Edges < 2 && b.Edges < 2)
                {
                    var edges = (byte)(a.Edges + b.Edges);
                    Keep(front, new Box(edges == 2 ? width : beside, Math.Max(a.Length, b.Length), edges, Join.Beside, i, j));
                }
            }
        }

        return steps;
    }

    private static void Keep(List<Box> front, Box box)
    {
        for (var i = front.Count - 1; i >= 0; i--)
        {
            var other = front[i];
            if (other.Width <= box.Width && other.Length <= box.Length && other.Edges <= box.Edges)
            {
                return;
            }

            if (box.Width <= other.Width && box.Length <= other.Length && box.Edges <= other.Edges)
            {
                front[i] = front[^1];
                front.RemoveAt(front.Count - 1);
            }
        }

        front.Add(box);
    }
}
