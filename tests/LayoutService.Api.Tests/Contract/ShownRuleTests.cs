using System.Text.Json;
using FluentValidation;
using FluentValidation.Validators;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Tests.Contract;

/// <summary>Every rule that a validator enforces stands in the contract, or is listed here with why it cannot.</summary>
public class ShownRuleTests(Service service) : IClassFixture<Service>
{
    /// <summary>Kinds of rule that a schema has no word for.</summary>
    private static readonly Dictionary<string, string> NotShown = new()
    {
        ["PredicateValidator"] = "not planned yet: the member's description says so; or a coordinate out of range: the bounds stand in the schema Length",
        ["ChildValidatorAdaptor"] = "leads to the schema of the member, which is looked at by itself",
        ["out_of_range"] = "bounds of a length depend on the units: the member's description gives both",
    };

    [Fact]
    public async Task Every_rule_without_a_condition_is_shown()
    {
        var schemas = (await service.GetAsync("/openapi/v1.json")).Json.GetProperty("components").GetProperty("schemas");
        var hidden = new List<string>();
        var looked = 0;
        foreach (var (type, rules) in Validators())
        {
            var schema = schemas.GetProperty(type);
            foreach (var rule in rules.Rules.Where(r => !r.HasCondition))
            {
                foreach (var component in rule.Components.Where(c => !c.HasCondition))
                {
                    looked++;
                    if (!Shown(component.Validator, schema, Camel(rule.PropertyName)))
                    {
                        hidden.Add($"{type}.{rule.PropertyName}: {component.Validator.Name}");
                    }
                }
            }
        }

        Assert.Empty(hidden);
        Assert.True(looked > 80, $"only {looked} rules were looked at");
    }

    private static bool Shown(IPropertyValidator rule, JsonElement schema, string member)
    {
        if (rule is INotNullValidator)
        {
            return schema.GetProperty("required").EnumerateArray().Any(r => r.GetString() == member);
        }

        var shown = schema.GetProperty("properties").GetProperty(member);
        return rule switch
        {
            ILengthValidator text => shown.GetProperty("maxLength").GetInt32() == text.Max,
            IRegularExpressionValidator pattern => shown.GetProperty("pattern").GetString() == pattern.Expression,
            IBetweenValidator between => shown.GetProperty("minimum").GetDecimal() == Convert.ToDecimal(between.From)
                && shown.GetProperty("maximum").GetDecimal() == Convert.ToDecimal(between.To),
            _ when rule.Name == "count_out_of_range" => shown.TryGetProperty("maxItems", out _) && shown.TryGetProperty("minItems", out _),
            _ when rule.Name == "out_of_range" => SaysBounds(shown),
            _ => NotShown.ContainsKey(rule.Name),
        };
    }

    private static bool SaysBounds(JsonElement member)
    {
        var described = member.TryGetProperty("items", out var items) ? items : member;
        var text = described.GetProperty("description").GetString()!;
        return text.Contains(" in, or ", StringComparison.Ordinal) && text.EndsWith(" mm.", StringComparison.Ordinal);
    }

    private static IEnumerable<(string Type, IValidatorDescriptor Rules)> Validators() => typeof(ServiceLimits).Assembly.GetTypes()
        .Where(t => !t.IsAbstract && typeof(IValidator).IsAssignableFrom(t) && t.BaseType is { IsGenericType: true } && t.GetConstructor(Type.EmptyTypes) is not null)
        .Select(t => (t.BaseType!.GetGenericArguments()[0].Name, ((IValidator)Activator.CreateInstance(t)!).CreateDescriptor()));

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
