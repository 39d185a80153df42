using LayoutService.Engine.Measures;

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

    public readonly long[] Stretch;

    /// <summary>Set s is set <c>Parent[s]</c> (before it) with one more piece, number <c>Added[s]</c> of the types.</summary>
    public readonly int[] Parent;
    public readonly int[] Added;

    /// <summary>How many of that type the set holds.</summary>
    public readonly int[] AddedCount;
    public readonly int[] ShortestBox;

    /// <summary>Every set of rips that fits a sheet is here; otherwise the table leaves sets out.</summary>
    public readonly bool Complete;

    /// <summary>Steps spent.</summary>
    public readonly int Steps;

    private readonly List<Box> boxes = [];
    private readonly List<Box> front = [];
    private readonly List<int> start = [];
    private readonly List<long> codes = [];
    private readonly List<int> setCounts = [];
    private readonly List<int> parents = [];
    private readonly List<int> added = [];
    private readonly SheetTypes types;
    private readonly long width;
    private readonly long length;
    private readonly SheetSetIndex index;

    public Box this[int box] => boxes[box];

    public SheetRipTable(SheetTypes types, int[] ripTypes, long width, long length, int stepLimit, int setLimit)
    {
        (this.types, this.width, this.length, RipTypes) = (types, width, length, ripTypes);
        var n = ripTypes.Length;
        var cap = new int[n];
        for (var j = 0; j < n; j++)
        {
            cap[j] = (int)Math.Min(types.Demand[ripTypes[j]], MostInASheet(ripTypes[j]));
        }

        index = new SheetSetIndex(cap, setLimit);
        Complete = index.Whole;
        Steps = Grow(cap, stepLimit, setLimit, out var complete);
        Complete &= complete;

        var order = new int[codes.Count];
        var best = new int[codes.Count];
        best[0] = -1;
        for (var s = 0; s < order.Length; s++)
        {
            order[s] = s;
            for (var b = start[s]; s > 0 && b < start[s + 1]; b++)
            {
                best[s] = b == start[s] || boxes[b].Length < boxes[best[s]].Length ? b : best[s];
            }
        }

        long StretchOf(int s) => best[s] < 0 ? 0 : boxes[best[s]].Length;
        Array.Sort(order, (x, y) => StretchOf(x) != StretchOf(y) ? StretchOf(x).CompareTo(StretchOf(y)) : x.CompareTo(y));
        Sets = order.Length;
        Stretch = new long[Sets];
        Parent = new int[Sets];
        Added = new int[Sets];
        AddedCount = new int[Sets];
        var place = new int[Sets];
        ShortestBox = new int[Sets];
        for (var i = 0; i < Sets; i++)
        {
            Stretch[i] = StretchOf(order[i]);
            place[order[i]] = i;
            Added[i] = added[order[i]];
            Parent[i] = place[parents[order[i]]];
            ShortestBox[i] = best[order[i]];
            AddedCount[i] = order[i] == 0 ? 0 : setCounts[order[i] * n + added[order[i]]];
        }
    }

    private double MostInASheet(int type)
    {
        var most = Math.Floor((double)width * length / ((double)types.Width[type] * types.Length[type]) + 1e-9);
        return types.Need[type] == 1 ? Math.Min(most, 2 * (length / types.Length[type])) : most;
    }

    /// <summary>
    /// Sets by their number of pieces, each grown from the set without its last piece, so that cutting the work short
    /// leaves out the large sets only. Answers the steps spent.
    /// </summary>
    private int Grow(int[] cap, int stepLimit, int setLimit, out bool complete)
    {
        var n = cap.Length;
        var steps = 0;
        var area = (double)width * length * (1 + 1e-12);
        var s = new int[n];
        var part = new int[n];
        AddSet(0, s, 0, 0);
        complete = true;
        for (var from = 0; from < codes.Count; from++)
        {
            var last = Math.Max(0, n - 1);
            while (last > 0 && setCounts[from * n + last] == 0)
            {
                last--;
            }

            for (var j = last; j < n; j++)
            {
                setCounts.CopyTo(from * n, s, 0, n);
                if (s[j] >= cap[j])
                {
                    continue;
                }

                s[j]++;
                var code = codes[from] + index.Stride[j];
                if (!MayFit(s, code, area))
                {
                    continue;
                }

                if (steps > stepLimit || codes.Count >= setLimit)
                {
                    complete = false;
                    return steps;
                }

                WorkMeter.Spend(s.Length);
                front.Clear();
                if (from == 0)
                {
                    KeepPiece(RipTypes[j]);
                }
                else
                {
                    Array.Clear(part);
                    for (var first = NextPart(part, s, 0); first > 0 && first <= code - first; first = NextPart(part, s, first))
                    {
                        steps += JoinAll(index[first], index[code - first]);
                    }
                }

                if (front.Count > 0)
                {
                    AddSet(code, s, from, j);
                }
            }
        }

        return steps;
    }

    private void AddSet(long code, int[] s, int parent, int type)
    {
        parents.Add(parent);
        added.Add(type);
        index.Add(code, codes.Count);
        codes.Add(code);
        setCounts.AddRange(s);
        if (start.Count == 0)
        {
            start.Add(0);
        }

        boxes.AddRange(front);
        start.Add(boxes.Count);
    }

    /// <summary>Small enough, and fits whichever piece is taken away.</summary>
    private bool MayFit(int[] s, long code, double area)
    {
        var sum = 0.0;
        for (var j = 0; j < s.Length; j++)
        {
            if (s[j] > 0)
            {
                sum += (double)s[j] * types.Width[RipTypes[j]] * types.Length[RipTypes[j]];
                if (sum > area || index[code - index.Stride[j]] < 0)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private void KeepPiece(int t)
    {
        if (types.LiesStraight(t, width) && types.Length[t] <= length)
        {
            Keep(new Box(types.Width[t], types.Length[t], types.Need[t], Join.Piece, t, 0));
        }

        if (types.Turn[t] && types.Length[t] <= width && types.Width[t] <= length)
        {
            Keep(new Box(types.Length[t], types.Width[t], 0, Join.TurnedPiece, t, 0));
        }
    }

    /// <summary>The code of the next subset of s, in ascending order; 0 after the last.</summary>
    private long NextPart(int[] part, int[] s, long code)
    {
        for (var j = 0; j < part.Length; j++)
        {
            if (part[j] < s[j])
            {
                part[j]++;
                return code + index.Stride[j];
            }

            code -= part[j] * index.Stride[j];
            part[j] = 0;
        }

        return 0;
    }

    private int JoinAll(int first, int second)
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
                    Keep(new Box(Math.Max(a.Width, b.Width), along, Math.Max(a.Edges, b.Edges), Join.Along, i, j));
                }

                var beside = a.Width + b.Width;
                if (beside <= width && a.Edges < 2 && b.Edges < 2)
                {
                    var edges = (byte)(a.Edges + b.Edges);
                    Keep(new Box(edges == 2 ? width : beside, Math.Max(a.Length, b.Length), edges, Join.Beside, i, j));
                }
            }
        }

        return steps;
    }

    private void Keep(Box box)
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
