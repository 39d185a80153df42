using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// What the warm side of the floor decides about vapour and air barriers. It says where they belong and whose word counts; it
/// chooses no material.
/// </summary>
public static class WarmSide
{
    /// <summary>A vapour barrier lies on the warm side, close enough to it that no water condenses. Clauses from memory; numbers only.</summary>
    public static readonly Citation Source = new()
    {
        Document = "National Building Code of Canada, 9.25.3 and 9.25.4; International Residential Code, R702.7",
        Basis = Basis.Published, Confidence = Confidence.Low, Note = "Clause numbers from memory, not looked up for this edition.",
    };

    /// <summary>Null where it was not said whether the space above is heated. The space below is heated unless it was said that it is not.</summary>
    public static Sentence? Of(RoomSurvey room) => (room.Above?.Heated, room.Below?.Heated ?? true) switch
    {
        (null, _) => null,
        (true, true) => Sentence.Of(
            "both_sides_warm",
            "Both sides of this floor are heated: it needs no vapour barrier, and plastic sheeting in it would only hold water. Seal holes for sound and smoke."),
        (false, true) => Sentence.Of(
            "warm_side_below",
            "The room below is the warm side: the vapour barrier that the code asks for goes under the joists, before the straps, and the air barrier runs unbroken to the walls, sealed at every box and hole. Ask the building department which class and where."),
        (true, false) => Sentence.Of(
            "warm_side_above",
            "The space above is the warm side: no vapour barrier goes under the joists. The floor above is the vapour barrier's side, the board below keeps wind out of the batts, and the batts touch the floor. Ask the building department."),
        _ => Sentence.Of("both_sides_cold", "Neither side of this floor is heated: it parts nothing warm from cold, and needs no vapour barrier."),
    };
}
