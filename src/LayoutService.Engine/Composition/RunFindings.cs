using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>Why a room whose joists run more than one way cannot be planned as one, and what a person could change.</summary>
internal static class RunFindings
{
    private static readonly Sentence RoomsOfTheirOwn = Sentence.Of("plan_parts_apart", "Plan the parts whose joists run another way as rooms of their own.");

    public static Finding FieldsOverlap(IReadOnlyList<string> fields) => new(
        Sentence.Of("fields_overlap", "Joist fields that run different ways lie over one another: over part of the room it is not said which way the joists run."),
        fields,
        [Sentence.Of("part_fields", "Let the regions of these fields meet along a line, and give each what lies on its side of it.")]);

    public static Finding NotCovered(IReadOnlyList<string> fields) => new(
        Sentence.Of("fields_do_not_cover", "Where joist fields run different ways they must cover the room between them: over part of it no field lies."),
        fields,
        [Sentence.Of("widen_fields", "Let the regions reach the walls and each other; give the joists over what is left as a field of their own.")]);

    public static Finding FieldIsRing(IReadOnlyList<string> fields) => new(
        Sentence.Of("field_round_another", "A joist field lies all round another that runs another way; such a part is not divided into parts that can be strapped one by one."),
        fields,
        [
            Sentence.Of("give_opening", "If what lies inside is a well, give it as an opening."),
            RoomsOfTheirOwn,
        ]);

    /// <summary>Something that would have to be built across the line.</summary>
    public static Finding Crosses(string kind, string id, IReadOnlyList<string> breaks) => new(
        Sentence.Of(
            "crosses_run_break",
            $"The {kind} {id} reaches the line where the joists change direction: what carries it on one side does not go on past it.",
            ("kind", kind), ("id", id), ("lines", string.Join(", ", breaks))),
        [id, .. breaks],
        [
            Sentence.Of("end_at_break", $"End the {kind} clear of the line, or give it in two, one on each side and clear of it."),
            RoomsOfTheirOwn,
        ]);
}
