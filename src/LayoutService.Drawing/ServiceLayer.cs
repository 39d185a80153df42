using LayoutService.Engine.Ceilings;

namespace LayoutService.Drawing;

/// <summary>Ducts, pipes and the like as dash-dotted outlines with their ids.</summary>
internal static class ServiceLayer
{
    public static void Draw(SvgInk ink, IReadOnlyList<Service> services, PlanView view, LabelField labels)
    {
        ink.Group("services", null, ("stroke", "#4a4a4a"), ("stroke-width", "1"), ("stroke-dasharray", "9 3 2 3"));
        foreach (var service in services)
        {
            ink.Group(null, $"{service.Id}: {service.Kind.ToString().ToLowerInvariant()}");
            foreach (var ring in service.Rings())
            {
                ink.Ring(ring.Select(p => view[p]));
            }

            ink.EndGroup();
            var middle = view.BoxOf(service.Rings()[0]).Middle;
            Label.Write(ink, labels, service.Id, Lettering.Small, [middle, new(middle.X, middle.Y + 14), new(middle.X, middle.Y - 14)], null);
        }

        ink.EndGroup();
    }
}
