using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>How straps are fastened, in words. Common practice, no source.</summary>
internal static class StrapFastening
{
    public static IReadOnlyList<Sentence> Usual { get; } =
    [
        Sentence.Of("two_per_crossing", "Two fasteners where a strap crosses a joist.", ("count", "2")),
        Sentence.Of("four_per_joint", "Four fasteners where two strap ends meet on a joist, two in each end.", ("count", "4")),
        Sentence.Of("fastener_choice", "Screw #8 × 2 in, or ring nail 2-1/4 in (57 mm)."),
    ];

    /// <summary>How board is fastened that lies on no straps.</summary>
    public static IReadOnlyList<Sentence> Direct { get; } =
    [
        Sentence.Of("board_to_joists", "Board screws into every joist, 300 mm (12 in) apart at most; at a butt into the joist's middle from both sheets."),
    ];
}
