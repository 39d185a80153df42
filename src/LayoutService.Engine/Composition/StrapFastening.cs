using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>How straps are fastened, in words. Common practice, no source.</summary>
internal static class StrapFastening
{
    /// <summary>The screw is the one that the takeoff counts for a crossing without packing.</summary>
    public static IReadOnlyList<Sentence> Of(FramedRoom room)
    {
        var (grip, through) = (RuleAllowances.Of(room.Survey).StrapScrewGrip, room.Survey.Strapping.Thickness + room.Survey.Room.Through);
        var screw = room.Say(ScrewLengths.ForStrap(through, grip).Length.Units);
        // NBC 2020, Table 9.23.3.4; it holds where it reaches as far as the screw has to
        var ringNail = new RuleBook(PublishedTables.Current, room.Survey.Ruleset, room.Survey.RuleOverrides).Limit("strap-nail-default", room.Survey.Units == UnitSystem.Imperial).Value.Length;
        var nail = through + grip <= ringNail ? $", or ring nail {room.Say(ringNail.Units)}" : string.Empty;
        return
        [
            Sentence.Of("two_per_crossing", "Two fasteners where a strap crosses a joist.", ("count", "2")),
            Sentence.Of("four_per_joint", "Four fasteners where two strap ends meet on a joist, two in each end.", ("count", "4")),
            Sentence.Of("fastener_choice", $"Screw #8 × {screw}{nail}: {room.Say(grip.Units)} in the joist; a longer screw where a strap is packed out, as the takeoff counts them.", ("screw", screw)),
        ];
    }

    /// <summary>How board is fastened that lies on no straps.</summary>
    public static IReadOnlyList<Sentence> Direct { get; } =
    [
        Sentence.Of("board_to_joists", "Board screws into every joist, 300 mm (12 in) apart at most; at a butt into the joist's middle from both sheets."),
    ];
}
