using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to the order of work.</summary>
internal static class StepDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("hang a course before the rows", "steps.order", a => Swap(a, "fasten-row", ["hang-course", "measure-and-hang"])),
        new("close before the rows are up", "steps.order", a => Swap(a, "fasten-row", ["inspect-before-closing"])),
        new("tape before the board is up", "steps.order", a => Swap(a, "hang-course", ["tape-and-finish"])),
        new("cut after the rows", "steps.order", a => Swap(a, "cut-lumber", ["check-plane"])),
        new("leave a course out of the steps", "steps.once", a => First(a, "hang-course") is { } s && StrapDamages.Set(s, "touches", new JsonArray())),
        new("fasten a row twice", "steps.once", a => First(a, "fasten-row") is { } s && Again(a, s)),
        new("hang what is not there", "steps.stray", a => First(a, "hang-course") is { } s && Stray(s)),
        new("leave a nailer out of the steps", "steps.once", a => a.List("steps").FirstOrDefault(s => s["code"]!.GetValue<string>() is "fasten-ledgers" or "fasten-blocks") is { } s
            && StrapDamages.Set(s, "touches", new JsonArray())),
    ];

    private static JsonObject? First(JsonNode answer, string code) => answer.List("steps").FirstOrDefault(s => s["code"]!.GetValue<string>() == code);

    private static bool Swap(JsonNode answer, string code, string[] others)
    {
        var steps = answer["steps"]!.AsArray();
        var (a, b) = (First(answer, code), answer.List("steps").FirstOrDefault(s => others.Contains(s["code"]!.GetValue<string>())));
        if (a is null || b is null)
        {
            return false;
        }

        var (i, j) = (steps.IndexOf(a), steps.IndexOf(b));
        var (first, second) = (a.DeepClone(), b.DeepClone());
        (steps[i], steps[j]) = (second, first);
        return true;
    }

    private static bool Again(JsonNode answer, JsonObject step)
    {
        answer["steps"]!.AsArray().Add(step.DeepClone());
        return true;
    }

    private static bool Stray(JsonObject step)
    {
        step["touches"]!.AsArray().Add(new JsonObject { ["kind"] = "board-piece", ["id"] = "S-none" });
        return true;
    }
}
