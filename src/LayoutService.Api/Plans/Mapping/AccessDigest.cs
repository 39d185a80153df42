using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>Way in and crew in the digest; what is not given is not written.</summary>
internal static class AccessDigest
{
    public static void Add(WayIn? way, Crew? crew, Action<string, object?> add)
    {
        if (way is not null)
        {
            foreach (var passage in way.Passages)
            {
                add("passage", passage.Width);
                add("height", passage.Height);
            }

            add("turnBefore", way.Turn?.WidthBefore);
            add("turnAfter", way.Turn?.WidthAfter);
            add("turnHeight", way.Turn?.Height);
            add("window", way.Window?.Width);
            add("windowHeight", way.Window?.Height);
        }

        if (crew is not null)
        {
            add("people", crew.People);
            add("lift", crew.Lift);
            add("massLimit", crew.MassLimit is { } limit ? Figures.Plain(limit, 12) : null);
        }
    }
}
