using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Checks;

/// <summary>What hangs below the straps is inside a bulkhead, and that is deep enough for it. Common practice.</summary>
internal static class ServiceChecks
{
    public static IEnumerable<Check> Of(CheckBench bench) => bench.Facts.Covers.Select(cover => bench.Lengths(
        "service-covered",
        CheckComparison.AtMost,
        cover.SticksOut,
        new(Length.Zero, bench.Book.Limit("service-covered").Source),
        [cover.ServiceId, .. cover.Bulkheads],
        cover.Bare
            ? Sentence.Of(
                "box_in_service", $"{cover.ServiceId} hangs {bench.Text(cover.SticksOut)} below the {(bench.Facts.Straps is null ? "joists" : "straps")} outside of any bulkhead: hide it in one, or move it.",
                ("service", cover.ServiceId), ("length", bench.Text(cover.SticksOut)))
            : Sentence.Of(
                "deeper_bulkhead", $"{cover.ServiceId} comes {bench.Text(cover.SticksOut)} lower than the bulkhead's clear space: make its drop that much greater.",
                ("service", cover.ServiceId), ("length", bench.Text(cover.SticksOut)))));
}
