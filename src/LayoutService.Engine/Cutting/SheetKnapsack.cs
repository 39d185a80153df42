namespace LayoutService.Engine.Cutting;

/// <summary>
/// The most worth of items whose sizes fit a room (bounded knapsack): depth first by worth per size, pruned by filling
/// the rest fractionally. Exponential at worst, so under a node limit, past which the root's fractional bound is
/// answered instead: never less than the true most.
/// At most <paramref name="edgeItems"/> items that need a factory edge are taken.
/// </summary>
internal sealed class SheetKnapsack(int edgeItems, int nodeLimit)
{
    private readonly List<(long Size, double Worth, int Most, bool Edge, int Name)> items = [];
    private int[] take = [];

    /// <summary>Smallest size of this item and all after it.</summary>
    private long[] least = [];
    private int nodes;
    private double best;

    /// <summary>Nodes spent so far.</summary>
    public int Nodes { get; private set; }

    /// <summary>How often each item, by name, is in the best filling found.</summary>
    public int[] Best { get; private set; } = [];

    public void Clear() => items.Clear();

    public void Add(long size, double worth, int most, bool edge, int name)
    {
        if (worth > 0 && most > 0)
        {
            items.Add((size, worth, most, edge, name));
        }
    }

    /// <summary>Call after the last <see cref="Add"/>.</summary>
    public void Sort(int names)
    {
        items.Sort((a, b) =>
        {
            var order = (b.Worth * a.Size).CompareTo(a.Worth * b.Size);
            return order != 0 ? order : a.Name.CompareTo(b.Name);
        });
        least = new long[items.Count];
        for (var i = items.Count - 1; i >= 0; i--)
        {
            least[i] = i == items.Count - 1 ? items[i].Size : Math.Min(items[i].Size, least[i + 1]);
        }

        take = new int[names];
        Best = new int[names];
    }

    /// <summary>The most worth in the room, or more when the nodes ran out.</summary>
    public double Most(long room)
    {
        Array.Clear(take);
        Array.Clear(Best);
        best = 0;
        nodes = nodeLimit;
        var bound = Fractional(0, room);
        Fill(0, room, edgeItems, 0);
        Nodes += nodeLimit - nodes;
        return nodes < 0 ? bound : best;
    }

    private double Fractional(int from, long room)
    {
        var worth = 0.0;
        for (var i = from; i < items.Count && room > 0; i++)
        {
            var copies = Math.Min(items[i].Most, (double)room / items[i].Size);
            worth += copies * items[i].Worth;
            room -= (long)Math.Min(room, copies * items[i].Size);
        }

        return worth * (1 + 1e-9);
    }

    private void Fill(int from, long room, int edgesLeft, double worth)
    {
        if (worth > best)
        {
            best = worth;
            take.CopyTo(Best, 0);
        }

        for (var i = from; i < items.Count; i++)
        {
            if (--nodes < 0 || room < least[i] || worth + Fractional(i, room) <= best)
            {
                return;
            }

            var item = items[i];
            var most = Math.Min(item.Most, room / item.Size);
            most = item.Edge ? Math.Min(most, edgesLeft) : most;
            for (var n = (int)most; n > 0 && nodes >= 0; n--)
            {
                take[item.Name] = n;
                Fill(i + 1, room - n * item.Size, item.Edge ? edgesLeft - n : edgesLeft, worth + n * item.Worth);
            }

            take[item.Name] = 0;
        }
    }
}
