namespace LayoutService.Engine.Cutting;

/// <summary>
/// Finds a set of pieces by its counts, written as one number in mixed radix: an array while few numbers are possible,
/// a dictionary after that. Removing a piece subtracts its stride.
/// </summary>
internal sealed class SheetSetIndex
{
    private const double MostCodes = 4e18;

    private readonly int[]? places;
    private readonly Dictionary<long, int>? map;

    public readonly long[] Stride;

    /// <summary>All types have a place in the code; otherwise the last ones were left out (their cap is 0 now).</summary>
    public bool Whole { get; } = true;

    public SheetSetIndex(int[] cap, int expected)
    {
        Stride = new long[cap.Length];
        var total = 1L;
        for (var j = 0; j < cap.Length; j++)
        {
            if ((double)total * (cap[j] + 1) > MostCodes)
            {
                cap[j] = 0;
                Whole = false;
            }

            Stride[j] = total;
            total *= cap[j] + 1;
        }

        if (total <= 8L * Math.Max(expected, 64))
        {
            places = new int[total];
        }
        else
        {
            map = [];
        }
    }

    /// <summary>Place of the set, or −1.</summary>
    public int this[long code] => places is not null ? places[code] - 1 : map!.TryGetValue(code, out var place) ? place : -1;

    public void Add(long code, int place)
    {
        if (places is not null)
        {
            places[code] = place + 1;
        }
        else
        {
            map![code] = place;
        }
    }
}
