namespace LayoutService.Drawing;

/// <summary>
/// Where labels stand, so that no two overlap and none runs off the paper. Greedy: the first label asked for has the first choice, and each takes the
/// first of its places that is free. Places are kept in square cells, so that asking costs no more on a large plan.
/// </summary>
public sealed class LabelField(Box paper)
{
    private const double Cell = 64;
    private readonly Dictionary<(int, int), List<Box>> _cells = [];

    /// <summary>Labels that found no place.</summary>
    public int LeftOut { get; private set; }

    /// <summary>Takes the first free place; null when all are taken.</summary>
    public Box? Take(params ReadOnlySpan<Box> places)
    {
        foreach (var place in places)
        {
            if (paper.Holds(place) && Free(place))
            {
                Keep(place);
                return place;
            }
        }

        return null;
    }

    public void Keep(Box box)
    {
        foreach (var cell in CellsOf(box))
        {
            if (!_cells.TryGetValue(cell, out var there))
            {
                _cells[cell] = there = [];
            }

            there.Add(box);
        }
    }

    public void Miss() => LeftOut++;

    private bool Free(Box box)
    {
        foreach (var cell in CellsOf(box))
        {
            if (_cells.TryGetValue(cell, out var there) && there.Exists(b => b.Meets(box)))
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
