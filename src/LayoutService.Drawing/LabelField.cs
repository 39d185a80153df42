namespace LayoutService.Drawing;

/// <summary>
/// Where labels stand, so that no two overlap and none runs off the paper. Greedy: the first label asked for has the first choice, and each takes the
/// first of its places that is free; holes and seams are kept clear too where some place allows it. Places are kept in square cells, so that asking costs no more on a large plan.
/// </summary>
public sealed class LabelField(Box paper)
{
    private const double Cell = 64;
    private readonly Dictionary<(int, int), List<Box>> _cells = [];
    private readonly Dictionary<(int, int), List<Box>> _shunned = [];

    /// <summary>Labels that found no place.</summary>
    public int LeftOut { get; private set; }

    /// <summary>Takes places for the lines of one label, all or none; clear ones lie off holes and seams as well.</summary>
    public bool Take(bool clear, params ReadOnlySpan<Box> lines)
    {
        foreach (var line in lines)
        {
            if (!paper.Holds(line) || !Free(_cells, line) || (clear && !Free(_shunned, line)))
            {
                return false;
            }
        }

        foreach (var line in lines)
        {
            Keep(line);
        }

        return true;
    }

    /// <summary>Nothing is written there.</summary>
    public void Keep(Box box) => Add(_cells, box);

    /// <summary>Something is written there only where no other place is free.</summary>
    public void Shun(Box box) => Add(_shunned, box);

    /// <summary>The same along a line that lies square on the paper.</summary>
    public void Shun(Spot from, Spot to)
    {
        var box = new Box(Math.Min(from.X, to.X), Math.Min(from.Y, to.Y), Math.Max(from.X, to.X), Math.Max(from.Y, to.Y));
        if (Math.Min(box.Width, box.Height) < 1)
        {
            Shun(box.Grown(1.5));
        }
    }

    public void Miss() => LeftOut++;

    private static void Add(Dictionary<(int, int), List<Box>> cells, Box box)
    {
        foreach (var cell in CellsOf(box))
        {
            if (!cells.TryGetValue(cell, out var there))
            {
                cells[cell] = there = [];
            }

            there.Add(box);
        }
    }

    private static bool Free(Dictionary<(int, int), List<Box>> cells, Box box)
    {
        foreach (var cell in CellsOf(box))
        {
            if (cells.TryGetValue(cell, out var there) && there.Exists(b => b.Meets(box)))
            {
                return false;
            }
        }

        return true;
    }

    private static IEnumerable<(int X, int Y)> CellsOf(Box box)
    {
        for (var x = (int)Math.Floor(box.Left / Cell); x <= (int)Math.Floor(box.Right / Cell); x++)
        {
            for (var y = (int)Math.Floor(box.Top / Cell); y <= (int)Math.Floor(box.Bottom / Cell); y++)
            {
                yield return (x, y);
            }
        }
    }
}
