namespace LayoutService.Engine.Geometry;

/// <summary>Finds the corners of a ring that the planning of a ceiling asks for.</summary>
internal static class RingCorners
{
    /// <summary>Corners where the room turns round a wall that stands into it.</summary>
    public static IEnumerable<Uv> Inside(IReadOnlyList<Uv> outline)
    {
        var sign = Rings.TwiceArea(outline) > 0 ? 1 : -1;
        for (var i = 0; i < outline.Count; i++)
        {
            var turn = Rings.Turn(outline[i], outline[(i + 1) % outline.Count], outline[(i + 2) % outline.Count]);
            if ((turn > 0 ? 1 : turn < 0 ? -1 : 0) == -sign)
            {
                yield return outline[(i + 1) % outline.Count];
            }
        }
    }

    /// <summary>Corners between oblique walls that end in a point along u; <c>sign</c> is 1 for a ring walked with its inside on the left, -1 else.</summary>
    public static IEnumerable<(long Along, bool HighEnd)> Tips(IReadOnlyList<Uv> outline, int sign)
    {
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b, c) = (outline[i], outline[(i + 1) % outline.Count], outline[(i + 2) % outline.Count]);
            var convex = Rings.Turn(a, b, c) > 0 == sign > 0;
            if (convex && ((a.U < b.U && c.U < b.U) || (a.U > b.U && c.U > b.U)))
            {
                yield return (b.U, a.U < b.U);
            }
        }
    }
}
