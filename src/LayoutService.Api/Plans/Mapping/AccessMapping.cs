using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>Way in and crew; nothing said stands for nothing that limits.</summary>
internal static class AccessMapping
{
    public static WayIn? Of(AccessRequest? access, bool imperial) => access is null or { Passages: null or [], Turn: null }
        ? null
        : new(
            [.. (access.Passages ?? []).Select(p => Opening(p, imperial))],
            access.Turn is { } turn ? new(turn.WidthBefore!.Value.In(imperial), turn.WidthAfter!.Value.In(imperial), turn.Height?.In(imperial)) : null,
            access.Window is { } window ? Opening(window, imperial) : null);

    public static Crew? Of(CrewRequest? crew, Assumptions assumed)
    {
        if (crew is null)
        {
            return null;
        }

        if (crew.People is null)
        {
            assumed.Note("#/crew/people", "2", "How many lift was not given; two people are taken.");
        }

        if (crew.Lift is null)
        {
            assumed.Note("#/crew/lift", "true", "Whether there is a board lift was not given; one is taken.");
        }

        return new(crew.People ?? 2, crew.Lift ?? true, assumed.Imperial ? crew.MassLimit * Figures.KilogramsPerPound : crew.MassLimit);
    }

    private static ClearOpening Opening(PassageRequest passage, bool imperial) => new(passage.Width!.Value.In(imperial), passage.Height!.Value.In(imperial));
}
