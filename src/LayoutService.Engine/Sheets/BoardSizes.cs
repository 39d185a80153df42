using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Sheets;

/// <summary>What is cut for a drawn piece: less the allowance at each wall, unless a whole sheet fits as it comes.</summary>
public sealed class BoardSizes
{
    private readonly FramedRoom _room;
    private readonly CourseDivision _division;
    private readonly long[] _lengths;
    private readonly long _allowance;

    public BoardSizes(FramedRoom room, CourseDivision division)
    {
        (_room, _division, _allowance) = (room, division, room.Survey.Sheets.CutAllowance.Units);
        _lengths = [.. room.Survey.Sheets.Stock.Where(s => s.Width.Units == division.SheetWidth).Select(s => s.Length.Units)];
    }

    /// <summary>Cut width of a piece of a run that reaches over this extent across.</summary>
    public long Width(CourseRun run, Span across)
    {
        var sides = (SeamLow(run, across) ? 0 : 1) + (SeamHigh(run, across) ? 0 : 1);
        return across.Size == _division.SheetWidth ? across.Size : Math.Max(1, across.Size - (sides * _allowance));
    }

    /// <summary>Cut length of a piece with so many ends at walls.</summary>
    public long Length(long drawn, int ends) =>
        Array.IndexOf(_lengths, drawn) >= 0 ? drawn : Math.Max(1, drawn - (ends * _allowance));

    /// <summary>True when the low long edge of a part meets the course before.</summary>
    public bool SeamLow(CourseRun run, Span across) => across.Lo == run.Strip.Lo && across.Lo > _room.Board.LowV;

    /// <summary>True when the high long edge of a part meets the course after.</summary>
    public bool SeamHigh(CourseRun run, Span across) => across.Hi == run.Strip.Hi && across.Hi < _room.Board.HighV;
}
