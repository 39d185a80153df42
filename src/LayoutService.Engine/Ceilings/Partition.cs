using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>What the top plate of a partition is fastened to, which says when it is framed.</summary>
public enum PartitionTop
{
    /// <summary>To the joists, before the straps: straps and board stop at it.</summary>
    Joists,

    /// <summary>To the straps, after them and before the board: straps run on above, the board stops at it.</summary>
    Straps,

    /// <summary>To the board, after it: straps and board run on above.</summary>
    Board,
}

/// <summary>A wall inside the room, by its centre line.</summary>
public sealed record PartitionWish(string Id, IReadOnlyList<Point> Line, Length Thickness, PartitionTop Top, bool Rated);

/// <summary>
/// A partition in the working frame with the floor that it stands on, inside the room and outside of its openings. An end that
/// stops short of a wall by 25 mm or less runs on to it: a plate is cut to the wall.
/// </summary>
public sealed record FramedPartition(PartitionWish Wish, IReadOnlyList<Uv> Line, Footprint Footprint)
{
    private const long Reach = 25 * Length.PerMillimetre;

    /// <summary>True when it stands before the straps.</summary>
    public bool Stands => Wish.Top == PartitionTop.Joists;

    /// <summary>True when it stands before the board, which stops at it.</summary>
    public bool StopsBoard => Wish.Top != PartitionTop.Board;

    public static IReadOnlyList<FramedPartition> Of(Survey survey, PlanFrame frame)
    {
        if (survey.Partitions.Count == 0)
        {
            return [];
        }

        Uv[] outline = [.. survey.Room.Outline.Select(frame.In)];
        var floor = Footprint.Of([outline]).Minus(Footprint.Of(survey.Room.Openings.Select(o => (IReadOnlyList<Uv>)[.. o.Outline.Select(frame.In)])));
        return [.. survey.Partitions.Select(wish =>
        {
            Uv[] line = [.. wish.Line.Select(frame.In)];
            (line[0], line[^1]) = (RunOn(line[1], line[0], outline), RunOn(line[^2], line[^1], outline));
            return new FramedPartition(wish, line, Footprint.Along([line], wish.Thickness.Units / 2).Meet(floor));
        })];
    }

    // twice the reach: what passes the wall is no floor
    private static Uv RunOn(Uv from, Uv end, Uv[] outline)
    {
        if (outline.Select((corner, i) => Rings.Distance(end, corner, outline[(i + 1) % outline.Length])).Min() > Reach)
        {
            return end;
        }

        var length = Rings.DistanceBetween(from, end);
        return new Uv(
            end.U + (long)Math.Round((end.U - from.U) / length * 2 * Reach),
            end.V + (long)Math.Round((end.V - from.V) / length * 2 * Reach));
    }
}

/// <summary>
/// A partition as planned: the rows that stop at it, or that its plate is screwed to through the board; the blocks that carry its
/// plate and those rows; its outline seen from above.
/// </summary>
public sealed record PlannedPartition(
    PartitionWish Wish, IReadOnlyList<IReadOnlyList<Point>> Outlines, IReadOnlyList<string> Rows, IReadOnlyList<string> Blocks, IReadOnlyList<Sentence> Notes)
{
    public string Id => Wish.Id;
}
