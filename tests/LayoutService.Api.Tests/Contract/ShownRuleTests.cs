using System.Text.Json;
using FluentValidation;
using FluentValidation.Validators;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Tests.Contract;

/// <summary>
/// Every rule that is enforced stands in the contract: a validator's in the schema, one between members or under a condition in the
/// words of a description, which said-rules.txt lists. What JSON must look like (src/LayoutService.Api/Wire) is the schemas' own: types,
/// members, words, depth.
/// </summary>
public class ShownRuleTests(Service service) : IClassFixture<Service>
{
    /// <summary>Rules that no description says, for what the list says; a new one should be said.</summary>
    private const int MostUnsaid = 34;

    [Fact]
    public async Task Every_rule_without_a_condition_is_shown()
    {
        var schemas = await SchemasAsync();
        var rules = Rules().Where(rule => !rule.Conditional).ToList();
        Assert.DoesNotContain(rules, rule => !Shown(rule, schemas));
        Assert.True(rules.Count > 80, $"only {rules.Count} rules were looked at");
    }

    [Fact]
    public async Task Every_rule_with_a_condition_is_shown_or_said()
    {
        var schemas = await SchemasAsync();
        var hidden = Rules().Where(rule => rule.Conditional && !Shown(rule, schemas)).Select(rule => $"{rule.Schema}.{rule.Member}");
        Assert.Equal(SaidRule.All.Where(said => said.Source.Contains('.', StringComparison.Ordinal)).Select(said => said.Source).Order(StringComparer.Ordinal), hidden.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_rule_between_members_is_in_the_list()
    {
        var listed = SaidRule.All.ToLookup(said => said.Source, said => said.Code);
        var source = SaidRule.InSource().ToList();
        Assert.All(source, file => Assert.Equal(file.Codes, listed[file.Source]));
        Assert.True(source.Sum(file => file.Codes.Count) > 90, "the source was not read");
        Assert.Equal(SaidRule.All.Count(said => !said.Source.Contains('.', StringComparison.Ordinal)), source.Sum(file => file.Codes.Count));
    }

    [Fact]
    public async Task The_contract_has_the_words_of_the_list()
    {
        var schemas = await SchemasAsync();
        Assert.DoesNotContain(SaidRule.All, said => !said.Unsaid && !said.IsSaid(schemas));
        Assert.All(SaidRule.All.Where(said => said.Unsaid), said => Assert.True(said.Words.Length > 15, $"{said.Code} does not say why"));
        Assert.InRange(SaidRule.All.Count(said => said.Unsaid), 0, MostUnsaid);
    }

    private async Task<JsonElement> SchemasAsync() => (await service.GetAsync("/openapi/v1.json")).Json.GetProperty("components").GetProperty("schemas");

    private static bool Shown(ValidatorRule rule, JsonElement schemas)
    {
        if (rule.Validator.Name == "ChildValidatorAdaptor")
        {
            // leads to the schema of the member, which is looked at by itself
            return true;
        }

        // a rule of a member's member, as of Cutout.Diameter, stands in the schema of that member
        var path = rule.Member.Split('.');
        var schema = schemas.GetProperty(rule.Schema);
        foreach (var step in path[..^1])
        {
            schema = schemas.GetProperty(schema.GetProperty("properties").GetProperty(Camel(step)).GetProperty("$ref").GetString()!.Split('/')[^1]);
        }

        var member = Camel(path[^1]);
        if (rule.Validator is INotNullValidator)
        {
            return schema.TryGetProperty("required", out var required) && required.EnumerateArray().Any(r => r.GetString() == member);
        }

        var shown = schema.GetProperty("properties").GetProperty(member);
        return rule.Validator switch
        {
            ILengthValidator text => shown.GetProperty("maxLength").GetInt32() == text.Max,
            IRegularExpressionValidator pattern => shown.GetProperty("pattern").GetString() == pattern.Expression,
            IBetweenValidator between => shown.GetProperty("minimum").GetDecimal() == Convert.ToDecimal(between.From)
                && shown.GetProperty("maximum").GetDecimal() == Convert.ToDecimal(between.To),
            IPredicateValidator => rule.Code == "out_of_range" && IsPlace(shown),
            _ when rule.Validator.Name == "count_out_of_range" => shown.TryGetProperty("maxItems", out _) && shown.TryGetProperty("minItems", out _),
            // bounds of a length depend on the units: the member's description gives both
            _ when rule.Validator.Name == "out_of_range" => SaysBounds(shown),
            _ => false,
        };
    }

    /// <summary>The bounds of a place stand in the schema of a length, of which it has two.</summary>
    private static bool IsPlace(JsonElement member) =>
        (member.TryGetProperty("items", out var items) ? items : member).GetProperty("$ref").GetString() == "#/components/schemas/Point";

    private static bool SaysBounds(JsonElement member)
    {
        var described = member.TryGetProperty("items", out var items) ? items : member;
        var text = described.GetProperty("description").GetString()!;
        return text.Contains(" in, or ", StringComparison.Ordinal) && text.EndsWith(" mm.", StringComparison.Ordinal);
    }

    private static IEnumerable<ValidatorRule> Rules() =>
        from type in typeof(ServiceLimits).Assembly.GetTypes()
        where !type.IsAbstract && typeof(IValidator).IsAssignableFrom(type) && type.BaseType is { IsGenericType: true } && type.GetConstructor(Type.EmptyTypes) is not null
        let schema = type.BaseType!.GetGenericArguments()[0].Name
        from rule in ((IValidator)Activator.CreateInstance(type)!).CreateDescriptor().Rules
        from component in rule.Components
        select new ValidatorRule(schema, rule.PropertyName, component.Validator, component.ErrorCode, rule.HasCondition || component.HasCondition);

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary>One rule of a validator: the schema that it holds for, the member as C# has it, and its code.</summary>
    private sealed record ValidatorRule(string Schema, string Member, IPropertyValidator Validator, string Code, bool Conditional);
}
