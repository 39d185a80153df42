using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// How much sheet a division uses if lengths could be cut without waste: full courses and rips wider than half a sheet use
/// the whole width, narrower rips half of it (a sheet gives two field rips, since it has two tapered edges), and what a
/// wide rip leaves may serve a narrow one. Cost: courses × trapezoids².
/// </summary>
internal sealed class CourseUse(FramedRoom room)
{
    private readonly List<(Cell Cell, Span Across, int Group)> _parts = [];
    private readonly List<(long Width, double Length)> _wide = [];
    private readonly List<(long Width, double Length)> _narrow = [];

    /// <summary>What a division costs if lengths could be cut without waste, in the objective's unit, its seams included.</summary>
    public double Cost(CourseDivision division, StockPrices prices) =>
        (Of(division.Lines, division.SheetWidth) * prices.Rate(division.SheetWidth)) + prices.SeamCost(room, division);

    /// <summary>Length of whole sheet width that is used, in units of length.</summary>
    public double Of(IReadOnlyList<long> lines, long width)
    {
        _wide.Clear();
        _narrow.Clear();
        var used = 0.0;
        for (var c = 0; c + 1 < lines.Count; c++)
        {
            Group(new Span(lines[c], lines[c + 1]));
            for (var g = 0; g < _parts.Count; g++)
            {
                var (low, high, area) = (long.MaxValue, long.MinValue, 0.0);
                foreach (var part in _parts)
                {
                    if (part.Group == g)
                    {
                        (low, high) = (Math.Min(low, part.Across.Lo), Math.Max(high, part.Across.Hi));
                        area += Area(part.Cell, part.Across);
                    }
                }

                if (high > low)
                {
                    used += Use(low, high, area / (high - low), lines[c], lines[c + 1], width);
                }
            }
        }

        _wide.Sort(static (a, b) => b.Width.CompareTo(a.Width));
        _narrow.Sort(static (a, b) => b.Width.CompareTo(a.Width));
        foreach (var (wide, length) in _wide)
        {
            var left = length;
            for (var i = 0; i < _narrow.Count && left > 0; i++)
            {
                if (_narrow[i].Width <= width - wide)
                {
                    var part = Math.Min(left, _narrow[i].Length);
                    left -= part;
                    _narrow[i] = (_narrow[i].Width, _narrow[i].Length - part);
                }
            }
        }

        foreach (var (_, length) in _narrow)
        {
            used += length / 2;
        }

        return used;
    }

    private double Use(long low, long high, double length, long strip, long stripEnd, long width)
    {
        var seams = (low == strip && low > room.Board.LowV ? 1 : 0) + (high == stripEnd && high < room.Board.HighV ? 1 : 0);
        var cut = high - low == width ? width : high - low - ((2 - seams) * room.Survey.Sheets.CutAllowance.Units);
        if (seams == 0)
        {
            return length * cut / width;
        }

        if (2 * cut <= width)
        {
            _narrow.Add((cut, length));
            return 0;
        }

        _wide.Add((cut, length));
        return length;
    }

    private static double Area(Cell cell, Span across)
    {
        double Length(long v) => (cell.R0 - cell.L0) + ((double)(cell.R1 - cell.R0 - cell.L1 + cell.L0) * (v - cell.V0) / (cell.V1 - cell.V0));
        return across.Size * (Length(across.Lo) + Length(across.Hi)) / 2;
    }

    private void Group(Span strip)
    {
        _parts.Clear();
        foreach (var cell in room.Board.Cells)
        {
            var across = strip.Meet(new Span(cell.V0, cell.V1));
            if (across.Size > 0)
            {
                _parts.Add((cell, across, _parts.Count));
            }
        }

        for (var i = 0; i < _parts.Count; i++)
        {
            for (var j = 0; j < _parts.Count; j++)
            {
                var (a, b) = (_parts[i], _parts[j]);
                if (a.Across.Hi == b.Across.Lo && a.Group != b.Group
                    && new Span(a.Cell.L1, a.Cell.R1).Overlaps(new Span(b.Cell.L0, b.Cell.R0)))
                {
                    for (var k = 0; k < _parts.Count; k++)
                    {
                        _parts[k] = _parts[k].Group == b.Group ? _parts[k] with { Group = a.Group } : _parts[k];
                    }
                }
            }
        }
    }
}
