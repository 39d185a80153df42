using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Drawing;

/// <summary>Joists as light dashed double lines, as wide as their nailing face, as far as the room reaches.</summary>
internal static class JoistLayer
{
    public static void Draw(SvgInk ink, JoistPlan joists, IReadOnlyList<Point> outline, PlanView view)
    {
        var ring = outline.Select(p => view[p]).ToList();
        ink.Group("joists", null, ("stroke", "#8a8a8a"), ("stroke-width", "0.8"), ("stroke-dasharray", "7 3"));
        foreach (var joist in joists.Members)
        {
            ink.Group(null, joist.Id);
            var (from, to) = (view[joist.From], view[joist.To]);
            foreach (var (start, end) in Within(ring, from, to, view.Size(joist.Face)))
            {
                ink.Ring(Bars.Of(Between(from, to, start), Between(from, to, end), view.Size(joist.Face)));
            }

            ink.EndGroup();
        }

        ink.EndGroup();
    }

    // the parts of a joist, as shares of its length, that have room below some of their face
    private static List<(double From, double To)> Within(List<Spot> ring, Spot from, Spot to, double face)
    {
        var bar = Bars.Of(from, to, face * 0.9);
        var cuts = new SortedSet<double> { 0, 1 };
        (Spot From, Spot To)[] lines = [(bar[0], bar[1]), (from, to), (bar[3], bar[2])];
        foreach (var (a, b) in lines)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                if (Crossing(a, b, ring[i], ring[(i + 1) % ring.Count]) is { } share)
                {
                    cuts.Add(share);
                }
            }
        }

        var found = new List<(double From, double To)>();
        foreach (var (start, end) in cuts.Zip(cuts.Skip(1)))
        {
            if (!lines.Any(l => Holds(ring, Between(l.From, l.To, (start + end) / 2))))
            {
                continue;
            }

            if (found.Count > 0 && found[^1].To == start)
            {
                found[^1] = (found[^1].From, end);
            }
            else
            {
                found.Add((start, end));
            }
        }

        return found;
    }

    private static Spot Between(Spot from, Spot to, double share) => new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));

    // where a line crosses an edge, as a share of the line
    private static double? Crossing(Spot from, Spot to, Spot a, Spot b)
    {
        var (x, y, ex, ey) = (to.X - from.X, to.Y - from.Y, b.X - a.X, b.Y - a.Y);
        var turn = (x * ey) - (y * ex);
        if (Math.Abs(turn) < 1e-9)
        {
            return null;
        }

        var share = (((a.X - from.X) * ey) - ((a.Y - from.Y) * ex)) / turn;
        var onEdge = (((a.X - from.X) * y) - ((a.Y - from.Y) * x)) / turn;
        return share is > 0 and < 1 && onEdge is >= 0 and <= 1 ? share : null;
    }

    private static bool Holds(List<Spot> ring, Spot at)
    {
        var inside = false;
        for (int i = 0, j = ring.Count - 1; i < ring.Count; j = i++)
        {
            if (ring[i].Y > at.Y != ring[j].Y > at.Y && at.X < ring[i].X + ((ring[j].X - ring[i].X) * (at.Y - ring[i].Y) / (ring[j].Y - ring[i].Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}

/// <summary>A straight piece of wood as its four corners.</summary>
internal static class Bars
{
    public static Spot[] Of(Spot from, Spot to, double face)
    {
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var size = Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
        var (halfX, halfY) = (-y / size * face / 2, x / size * face / 2);
        return
        [
            new(from.X + halfX, from.Y + halfY), new(to.X + halfX, to.Y + halfY),
            new(to.X - halfX, to.Y - halfY), new(from.X - halfX, from.Y - halfY),
        ];
    }
}
