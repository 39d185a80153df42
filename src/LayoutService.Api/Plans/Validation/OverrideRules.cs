using System.Globalization;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Validation;

/// <summary>A rule that the caller sets is one that the ruleset has, and is set once.</summary>
internal static class OverrideRules
{
    public static void Check(PlanRequest request, FaultList faults)
    {
        var ruleset = Words.Text(request.Ruleset ?? SurveyMapping.UsualRuleset(request.Units == UnitsWord.Imperial));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var rules = request.Rules ?? [];
        for (var i = 0; i < rules.Count; i++)
        {
            var at = $"#/rules/{i.ToString(CultureInfo.InvariantCulture)}/id";
            if (rules[i].Id is not { } id || !faults.Sound(at))
            {
                continue;
            }

            if (!RuleCatalogue.Current.Has(ruleset, id))
            {
                faults.Add(at, "rule_unknown", $"The ruleset {ruleset} has no rule \"{id}\"; GET /v1/rules lists them.", ("ruleset", ruleset), ("value", id));
            }
            else if (RuleUses.WhyFixed(id) is { } why)
            {
                faults.Add(at, "rule_fixed", $"The rule \"{id}\" cannot be set. {why}", ("value", id), ("use", Words.Text(RuleUses.Of(id))));
            }
            else if (!seen.Add(id))
            {
                faults.Add(at, "rule_repeated", $"The rule \"{id}\" is set already.", ("value", id));
            }
            else if (RuleUses.Bounds(id) is { } bounds && rules[i].Value is { } value && faults.Sound(at[..^2] + "value") && (value < bounds.Least || value > bounds.Most))
            {
                var (least, most) = (bounds.Least.ToString(CultureInfo.InvariantCulture), bounds.Most.ToString(CultureInfo.InvariantCulture));
                faults.Add(
                    $"#/rules/{i.ToString(CultureInfo.InvariantCulture)}/value", "out_of_range",
                    $"The rule \"{id}\" may be set from {least} to {most} {RuleCatalogue.Current.Find(id)!.Values[0].Unit}.", ("least", least), ("most", most));
            }
        }
    }
}
