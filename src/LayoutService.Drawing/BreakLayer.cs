using LayoutService.Engine.Ceilings;

namespace LayoutService.Drawing;

/// <summary>Lines where the joists change direction, each with its id.</summary>
internal static class BreakLayer
{
    public static (string, string)[] Marks { get; } = [("stroke-width", "2"), ("stroke-dasharray", "14 3 2 3 2 3")];

    public static void Draw(SvgInk ink, IReadOnlyList<RunBreak> breaks, PlanView view, LabelField labels)
    {
        if (breaks.Count == 0)
        {
            return;
        }

        ink.Group("run-breaks", "Joists change direction here");
        foreach (var line in breaks)
        {
            var (from, to) = (view[line.From], view[line.To]);
            ink.Line(from, to, Marks);
            Spot Along(double share, double off) => new(from.X + ((to.X - from.X) * share) + off, from.Y + ((to.Y - from.Y) * share) - off);
            Label.Write(ink, labels, line.Id, Lettering.Size, [.. new[] { 0.5, 0.35, 0.65, 0.2, 0.8 }.SelectMany(s => new[] { Along(s, 16), Along(s, -16) })], null, false, true);
        }

        ink.EndGroup();
    }
}
