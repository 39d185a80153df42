using LayoutService.Engine.Insulation;

namespace LayoutService.Drawing;

/// <summary>Batts as lightly hatched strips with id and thickness.</summary>
internal static class BattLayer
{
    public static void Draw(SvgInk ink, InsulationPlan plan, PlanView view, LabelField labels, TapeInk say)
    {
        ink.Group("insulation", null, ("stroke", "#8a8a8a"), ("stroke-width", "0.5"));
        foreach (var fill in plan.Fills)
        {
            List<Spot> ring = [.. fill.Outline.Select(p => view[p])];
            ink.Group(fill.Id, $"{fill.Id}: {fill.BattId}, {say.Mark(fill.Thickness)}");
            Hatch.Draw(ink, [ring], 24, rising: false);
            ink.Ring(ring, ("stroke-width", "1"));
            ink.EndGroup();
        }

        ink.EndGroup();
        foreach (var fill in plan.Fills)
        {
            var box = view.BoxOf(fill.Outline);
            var upward = box.Height > box.Width;
            List<Spot> places = [.. new[] { 0.5, 0.3, 0.7, 0.15, 0.85 }.Select(share => upward
                ? new Spot(box.Middle.X, box.Top + (share * box.Height))
                : new Spot(box.Left + (share * box.Width), box.Middle.Y))];
            if (!Label.Write(ink, labels, $"{fill.Id}  {say.Mark(fill.Thickness)}", Lettering.Small, places, box, upward)
                && !Label.Write(ink, labels, fill.Id, Lettering.Small, places, box, upward))
            {
                labels.Miss();
            }
        }
    }
}
