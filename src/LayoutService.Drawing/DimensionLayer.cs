using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Drawing;

/// <summary>The length of each wall, written outside of it where there is room, and the wall's id.</summary>
internal static class DimensionLayer
{
    public static void Draw(SvgInk ink, IReadOnlyList<WallLine> walls, IReadOnlyList<Point> outline, PlanView view, LabelField labels, TapeInk say)
    {
        ink.Group("dimensions", null);
        var turn = Turn(outline.Select(p => view[p]).ToList());
        foreach (var wall in walls.OrderByDescending(w => w.Length.Units).ThenBy(w => w.Edge))
        {
            var (from, to) = (view[wall.From], view[wall.To]);
            var text = say.Mark(wall.Length);
            var (x, y) = (to.X - from.X, to.Y - from.Y);
            var size = Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
            var (outX, outY) = (turn * y / size, turn * -x / size);
            var upward = Math.Abs(y) > Math.Abs(x) * 2;
            var reach = upward || Math.Abs(outX) < 0.3 ? 12 : 12 + (Lettering.Width(text, Lettering.Size) * Math.Abs(outX) / 2);
            var places = new List<Spot>();
            foreach (var away in new[] { reach, reach + 14, -reach, -reach - 14 })
            {
                foreach (var along in new[] { 0.5, 0.35, 0.65, 0.2, 0.8 })
                {
                    places.Add(new(from.X + (x * along) + (outX * away), from.Y + (y * along) + (outY * away)));
                }
            }

            if (!Label.Write(ink, labels, text, Lettering.Size, places, null, upward))
            {
                labels.Miss();
            }
        }

        ink.EndGroup();
    }

    // +1 where the outside lies to the left of each edge as it is drawn
    private static double Turn(List<Spot> ring)
    {
        double twice = 0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            twice += (a.X * b.Y) - (b.X * a.Y);
        }

        return twice > 0 ? 1 : -1;
    }
}
