using System.Text.Json;
using LayoutService.Auditor.Likeness;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Plans a room and the same room moved or listed otherwise, and compares the two plans.</summary>
internal static class MovedRooms
{
    public static TheoryData<string> Changes => ["mirror in x", "mirror in y", "quarter turn", "shift", "renumber", "reverse", "close", "texts"];

    public static async Task<IEnumerable<string>> DifferencesAsync(Service service, string request, string change, int seed, bool mayBeRefused = false)
    {
        var (changed, motion) = Change(request, change, seed);
        var first = await service.PostAsync("/v1/plans", request);
        var second = await service.PostAsync("/v1/plans", changed);
        if (mayBeRefused && (first.Status, second.Status) == (422, 422))
        {
            return [];
        }

        Assert.True((first.Status, second.Status) == (200, 200), $"seed {seed}: {first.Status}, {second.Status} {second.Text}");
        var unit = JsonDocument.Parse(request).RootElement.GetProperty("units").GetString() == "imperial" ? 25.4 : 1;
        var moved = Symmetry.Of(changed)
            .Select(m => Comparison.Geometry(first.Json, second.Json, motion.Then(m), unit, unit))
            .MinBy(faults => faults.Count)!;
        return Comparison.Counts(first.Json, second.Json).Concat(moved).Select(f => $"seed {seed}: {f}");
    }

    private static (string Request, Motion Motion) Change(string request, string change, int seed) => change switch
    {
        "mirror in x" => (Metamorphic.Moved(request, Motion.MirrorX), Motion.MirrorX),
        "mirror in y" => (Metamorphic.Moved(request, Motion.MirrorY), Motion.MirrorY),
        "quarter turn" => (Metamorphic.Moved(request, Motion.QuarterTurn), Motion.QuarterTurn),
        "shift" => (Metamorphic.Moved(request, Motion.Shift(254m * seed, -508m)), Motion.Shift(254m * seed, -508m)),
        "renumber" => (Metamorphic.Renumbered(request, 1 + (seed % 3)), Motion.Still),
        "reverse" => (Metamorphic.Reversed(request), Motion.Still),
        "close" => (Metamorphic.Closed(request), Motion.Still),
        _ => (Metamorphic.AsMillimetreTexts(request), Motion.Still),
    };
}
