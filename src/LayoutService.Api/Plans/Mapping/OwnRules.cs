using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>The caller's own values of the rules that members default to, as lengths.</summary>
internal static class OwnRules
{
    /// <summary>Only sound ones: a rule that may be set, within its bounds. What is not is told by the validator.</summary>
    public static IReadOnlyDictionary<string, Length>? Of(IReadOnlyList<RuleRequest>? rules)
    {
        Dictionary<string, Length>? own = null;
        foreach (var rule in rules ?? [])
        {
            if (rule is { Id: { } id, Value: { } value } && RuleUses.Bounds(id) is { } bounds && value >= bounds.Least && value <= bounds.Most
                && FigureUnit.Parse(RuleCatalogue.Current.Find(id)!.Values[0].Unit) is { Dimension: Dimension.Length } unit)
            {
                own ??= new Dictionary<string, Length>(StringComparer.Ordinal);
                own.TryAdd(id, Figure.Of(value, unit).Length);
            }
        }

        return own;
    }
}
