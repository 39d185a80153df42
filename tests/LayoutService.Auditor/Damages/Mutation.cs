using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>
/// One deliberate damage to a valid answer: its name, the rule that must notice it, and the act, which is false when the
/// answer has nothing of that kind to damage.
/// </summary>
public sealed record Mutation(string Name, string Rule, Func<JsonNode, bool> Apply);

/// <summary>A damage for every invariant: an auditor that notices all of them bites.</summary>
public static class Mutations
{
    public static IReadOnlyList<Mutation> All { get; } =
        [.. StrapDamages.All, .. BoardDamages.All, .. CutDamages.All, .. FigureDamages.All, .. BattDamages.All, .. FixtureDamages.All, .. StepDamages.All];
}
