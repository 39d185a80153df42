using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Geometry;

/// <summary>
/// A path with a width, as one four-cornered ring for each leg. Ends of the path are square; where two legs meet, each
/// reaches half the width past the corner, so that a square bend is filled to its outer corner. Corners fall on the nearest unit.
/// </summary>
public static class PathStrips
{
    public static IReadOnlyList<IReadOnlyList<Point>> Of(IReadOnlyList<Point> path, Length half)
    {
        var strips = new List<IReadOnlyList<Point>>(path.Count - 1);
        for (var i = 0; i + 1 < path.Count; i++)
        {
            if (path[i] != path[i + 1])
            {
                strips.Add(Strip(path[i], path[i + 1], half.Units, i > 0 ? half.Units : 0, i + 2 < path.Count ? half.Units : 0));
            }
        }

        return strips;
    }

    private static Point[] Strip(Point from, Point to, long half, long before, long after)
    {
        double x = (to.X - from.X).Units, y = (to.Y - from.Y).Units;
        var size = Math.Sqrt((x * x) + (y * y));
        var (alongX, alongY) = (x / size, y / size);
        return
        [
            Corner(from, -before, half), Corner(from, -before, -half), Corner(to, after, -half), Corner(to, after, half),
        ];

        Point Corner(Point end, long along, long left) => new(
            new Length(end.X.Units + (long)Math.Round((alongX * along) - (alongY * left))),
            new Length(end.Y.Units + (long)Math.Round((alongY * along) + (alongX * left))));
    }
}
