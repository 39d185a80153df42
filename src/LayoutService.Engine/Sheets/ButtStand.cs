using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// Where the butts of one run may stand: on a row that backs the whole butt, or clear of every strap, where a short strap
/// can be put behind it. What is found is still checked over the finished straps (see <see cref="CourseOptions.Backs"/>).
/// </summary>
public sealed class ButtStand
{
    private readonly FramedRoom _room;
    private readonly long _gap;
    private readonly List<(long At, bool Backed)> _wood = [];
    private readonly List<long> _through = [];

    /// <param name="room">The framed room.</param>
    /// <param name="lines">The straps that lie there, rising.</param>
    /// <param name="strip">The run's strip across the joists.</param>
    /// <param name="backed">For each line, whether it backs a butt of the run.</param>
    /// <param name="gap">Least distance on centre of straps side by side.</param>
    public ButtStand(FramedRoom room, IReadOnlyList<BearingLine> lines, Span strip, ReadOnlySpan<bool> backed, long gap)
    {
        (_room, _gap) = (room, gap);
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].Through)
            {
                _through.Add(lines[i].At);
            }

            if (backed[i] || Crosses(lines[i], strip))
            {
                _wood.Add((lines[i].At, backed[i]));
            }
        }
    }

    /// <summary>The farthest place at or below one where a butt may stand; below every strap it may be long.MinValue.</summary>
    public long Down(long place, bool onRows)
    {
        place = _room.SnapDown(place);
        var i = First(place + 1) - 1;
        while (!onRows)
        {
            if (i >= 0 && place - _wood[i].At < _gap)
            {
                if (_wood[i].Backed)
                {
                    return _wood[i].At;
                }

                place = _room.SnapDown(_wood[i].At - _gap);
            }
            else if (i + 1 < _wood.Count && _wood[i + 1].At - place < _gap)
            {
                place = _room.SnapDown(_wood[i + 1].At - _gap);
            }
            else
            {
                return place;
            }

            while (i >= 0 && _wood[i].At > place)
            {
                i--;
            }
        }

        while (i >= 0 && !_wood[i].Backed)
        {
            i--;
        }

        return i < 0 ? long.MinValue : _wood[i].At;
    }

    /// <summary>The nearest place at or above one where a butt may stand.</summary>
    public long Up(long place, bool onRows)
    {
        place = _room.SnapUp(place);
        var i = First(place);
        while (!onRows)
        {
            if (i < _wood.Count && _wood[i].At - place < _gap)
            {
                if (_wood[i].Backed)
                {
                    return _wood[i].At;
                }

                place = _room.SnapUp(_wood[i].At + _gap);
            }
            else if (i > 0 && place - _wood[i - 1].At < _gap)
            {
                place = _room.SnapUp(_wood[i - 1].At + _gap);
            }
            else
            {
                return place;
            }

            while (i < _wood.Count && _wood[i].At < place)
            {
                i++;
            }
        }

        while (i < _wood.Count && !_wood[i].Backed)
        {
            i++;
        }

        return i == _wood.Count ? long.MaxValue : _wood[i].At;
    }

    /// <summary>True when a row stands at this place and backs the run.</summary>
    public bool OnRow(long at)
    {
        for (var i = First(at); i < _wood.Count && _wood[i].At == at; i++)
        {
            if (_wood[i].Backed)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A butt at this place.</summary>
    public Butt At(long at)
    {
        var found = _through.BinarySearch(at);
        return new Butt(at, found >= 0 ? found + 1 : ~found, found >= 0);
    }

    // the first strap at or past a place; they rise
    private int First(long place)
    {
        var (low, high) = (0, _wood.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _wood[middle].At < place ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private static bool Crosses(BearingLine line, Span strip)
    {
        foreach (var wood in line.Stretches)
        {
            if (wood.Overlaps(strip))
            {
                return true;
            }
        }

        return false;
    }
}
