using LayoutService.Engine.Ceilings;

namespace LayoutService.Drawing;

/// <summary>Joists as light dashed double lines, as wide as their nailing face.</summary>
internal static class JoistLayer
{
    public static void Draw(SvgInk ink, JoistPlan joists, PlanView view)
    {
        ink.Group("joists", null, ("stroke", "#8a8a8a"), ("stroke-width", "0.8"), ("stroke-dasharray", "7 3"));
        foreach (var joist in joists.Members)
        {
            ink.Group(null, joist.Id);
            ink.Ring(Bars.Of(view[joist.From], view[joist.To], view.Size(joist.Face)));
            ink.EndGroup();
        }

        ink.EndGroup();
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
