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
}
