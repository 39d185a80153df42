namespace LayoutService.Engine.Cutting;

/// <summary>
/// The problem with equal pieces counted together, and every size grown by one kerf (pieces and sheets alike), so that
/// cutting costs nothing: a piece of length l plus its kerf fits in what is left of a grown sheet exactly when l alone
/// fits in the real one.
/// </summary>
internal sealed class SheetTypes
{
    public readonly int Count;
    public readonly long[] Width;
    public readonly long[] Length;
    public readonly byte[] Need;
    public readonly bool[] Turn;
    public readonly int[] Demand;

    /// <summary>Wanted indices of type t are <c>Order[First[t]..First[t + 1]]</c>.</summary>
    public readonly int[] Order;
    public readonly int[] First;

    public readonly int Kinds;
    public readonly long[] KindWidth;
    public readonly long[] KindLength;

    /// <summary>
    /// Above 0: when some sheets are free, every cost counts <see cref="CostScale"/> times and a free sheet 1, which is
    /// too little to outweigh any price, for no plan needs more sheets than pieces.
    /// </summary>
    public readonly long[] KindCost;
    public readonly long CostScale = 1;
    public readonly int[] KindLimit;

    public readonly bool FactoryEdgesLeft;
    public readonly bool Limited;

    public SheetTypes(SheetProblem problem)
    {
        var wanted = problem.Wanted;
        var kerf = problem.Kerf;
        FactoryEdgesLeft = problem.EdgeTrim == 0;
        Order = new int[wanted.Count];
        for (var i = 0; i < Order.Length; i++)
        {
            Order[i] = i;
        }

        Array.Sort(Order, (a, b) => Compare(wanted[a], wanted[b], a, b));
        var count = 0;
        for (var i = 0; i < Order.Length; i++)
        {
            count += i == 0 || !Same(wanted[Order[i]], wanted[Order[i - 1]]) ? 1 : 0;
        }

        Count = count;
        Width = new long[count];
        Length = new long[count];
        Need = new byte[count];
        Turn = new bool[count];
        Demand = new int[count];
        First = new int[count + 1];
        var type = -1;
        for (var i = 0; i < Order.Length; i++)
        {
            var piece = wanted[Order[i]];
            if (i == 0 || !Same(piece, wanted[Order[i - 1]]))
            {
                type++;
                First[type] = i;
                Width[type] = piece.Width + kerf;
                Length[type] = piece.Length + kerf;
                Need[type] = (byte)piece.Edges;
                Turn[type] = Turns(piece);
            }

            Demand[type]++;
        }

        First[count] = Order.Length;
        Kinds = problem.Stock.Count;
        KindWidth = new long[Kinds];
        KindLength = new long[Kinds];
        KindCost = new long[Kinds];
        KindLimit = new int[Kinds];
        foreach (var kind in problem.Stock)
        {
            CostScale = kind.Cost == 0 ? wanted.Count + 1 : CostScale;
        }

        for (var k = 0; k < Kinds; k++)
        {
            var kind = problem.Stock[k];
            KindWidth[k] = kind.Width - 2 * problem.EdgeTrim + kerf;
            KindLength[k] = kind.Length - 2 * problem.EndTrim + kerf;
            KindCost[k] = Math.Max(1, kind.Cost * CostScale);
            KindLimit[k] = kind.Quantity ?? int.MaxValue;
            Limited |= kind.Quantity is not null;
        }
    }

    /// <summary>The type fits a sheet of this width, not turned.</summary>
    public bool LiesStraight(int type, long width) => Need[type] switch
    {
        0 => Width[type] <= width,
        1 => FactoryEdgesLeft && Width[type] <= width,
        _ => FactoryEdgesLeft && Width[type] == width,
    };

    /// <summary>The type fits a panel of this size some way.</summary>
    public bool Fits(int type, long width, long length) =>
        (LiesStraight(type, width) && Length[type] <= length)
        || (Turn[type] && Length[type] <= width && Width[type] <= length);

    /// <summary>The least extent across the sheet that any piece can have.</summary>
    public long LeastWidth(ReadOnlySpan<int> demand)
    {
        var least = long.MaxValue;
        for (var t = 0; t < Count; t++)
        {
            if (demand[t] > 0)
            {
                least = Math.Min(least, Turn[t] ? Math.Min(Width[t], Length[t]) : Width[t]);
            }
        }

        return least;
    }

    /// <summary>
    /// The type can only lie straight in a sheet of this width, and then nothing fits beside it: it takes its length of
    /// the whole sheet, as in one-dimensional cutting.
    /// </summary>
    public bool TakesWholeWidth(int type, long width, long leastWidth) =>
        LiesStraight(type, width) && width - Width[type] < leastWidth && !(Turn[type] && Length[type] <= width);

    private static bool Turns(SheetWanted piece) =>
        piece.MayTurn && piece.Edges == FactoryEdges.None && piece.Width != piece.Length;

    private static bool Same(SheetWanted a, SheetWanted b) =>
        a.Width == b.Width && a.Length == b.Length && a.Edges == b.Edges && Turns(a) == Turns(b);

    /// <summary>Widest first, then longest: the order in which pieces are hard to place.</summary>
    private static int Compare(SheetWanted a, SheetWanted b, int ia, int ib)
    {
        var order = b.Width.CompareTo(a.Width);
        order = order != 0 ? order : b.Length.CompareTo(a.Length);
        order = order != 0 ? order : b.Edges.CompareTo(a.Edges);
        order = order != 0 ? order : Turns(a).CompareTo(Turns(b));
        return order != 0 ? order : ia.CompareTo(ib);
    }
}
