using System.Text.Json;
using LayoutService.Auditor.Likeness;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Plans a room and the same room moved or listed otherwise, and compares the two plans.</summary>
internal static class MovedRooms
{
    public static TheoryData<string> Changes => ["mirror in x", "mirror in y", "quarter turn", "shift", "renumber", "reverse", "close", "texts"];

    /// <summary>Asserts that each room's plan moves with it; a seed without a room is passed over, and where it may be, a room refused both ways.</summary>
    public static async Task AssertSameAsync(Service service, string change, int seeds, Func<int, string?> room, bool mayBeRefused = false)
    {
        var found = new List<string>();
        for (var seed = 1; seed <= seeds; seed++)
        {
            if (room(seed) is { } request)
            {
                found.AddRange(await DifferencesAsync(service, request, change, seed, mayBeRefused));
            }
        }

        Assert.True(found.Count == 0, $"{found.Count} differences: {string.Join("\n", found.Take(10))}");
    }

    private static async Task<IEnumerable<string>> DifferencesAsync(Service service, string request, string change, int seed, bool mayBeRefused)
    {
        var (changed, motion) = Change(request, change, seed);
        var first = await service.PostAsync("/v1/plans", request);
        var second = await service.PostAsync("/v1/plans", changed);
        if (mayBeRefused && (first.Status, second.Status) == (422, 422))
        {
            return [];
        }

        if ((first.Status, second.Status) != (200, 200))
        {
            return [$"seed {seed}: {first.Status}, {second.Status} {second.Text}"];
        }

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
