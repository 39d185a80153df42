using System.Globalization;
using FluentValidation;
using FluentValidation.Validators;
using LayoutService.Api.Plans.Validation;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace LayoutService.Api.Describing;

/// <summary>
/// Closes every object of a request, and shows the bounds that its validator enforces: the rules are read from the very
/// validators that run.
/// </summary>
internal sealed class ClosedRequestFilter : ISchemaFilter
{
    private static readonly Dictionary<Type, IValidatorDescriptor> Validators = Find();

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema open || context.MemberInfo is not null || !IsRequest(context.Type) || open.Properties is null)
        {
            return;
        }

        open.AdditionalPropertiesAllowed = false;
        open.Required = null;
        foreach (var member in open.Properties.Values.OfType<OpenApiSchema>())
        {
            member.Type &= ~JsonSchemaType.Null;
        }

        if (Validators.TryGetValue(context.Type, out var rules))
        {
            Show(rules, open);
        }
    }

    internal static bool IsRequest(Type type) =>
        type.IsClass && type.Namespace is { } home
        && (home == typeof(Plans.Requests.PlanRequest).Namespace || home == typeof(CutPlans.Requests.CutPlanRequest).Namespace
            || home == typeof(Jobs.Requests.JobRequest).Namespace || home == typeof(Comparisons.Requests.ComparisonRequest).Namespace);

    private static void Show(IValidatorDescriptor rules, OpenApiSchema open)
    {
        foreach (var rule in rules.Rules.Where(r => !r.HasCondition && r.PropertyName is not null))
        {
            var name = char.ToLowerInvariant(rule.PropertyName[0]) + rule.PropertyName[1..];
            if (!open.Properties!.TryGetValue(name, out var member))
            {
                continue;
            }

            var each = rule.GetType().GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(ICollectionRule<,>));
            foreach (var component in rule.Components.Where(c => !c.HasCondition))
            {
                Show(component.Validator, name, open, each ? ((OpenApiSchema)member).Items! : member);
            }
        }
    }

    private static void Show(IPropertyValidator rule, string name, OpenApiSchema parent, IOpenApiSchema member)
    {
        if (rule is INotNullValidator)
        {
            (parent.Required ??= new SortedSet<string>(StringComparer.Ordinal)).Add(name);
        }
        else if (rule is IReachRule reach)
        {
            member.Description = string.IsNullOrEmpty(member.Description) ? reach.Reach.ToString() : $"{member.Description} {reach.Reach}";
        }
        else if (member is OpenApiSchema own)
        {
            ShowOwn(rule, own);
        }
    }

    private static void ShowOwn(IPropertyValidator rule, OpenApiSchema member)
    {
        switch (rule)
        {
            case ILengthValidator text:
                (member.MinLength, member.MaxLength) = (text.Min > 0 ? text.Min : null, text.Max);
                break;
            case IRegularExpressionValidator pattern:
                member.Pattern = pattern.Expression;
                break;
            case IBetweenValidator between:
                member.Minimum = Convert.ToString(between.From, CultureInfo.InvariantCulture);
                member.Maximum = Convert.ToString(between.To, CultureInfo.InvariantCulture);
                break;
            case ICountRule count:
                (member.MinItems, member.MaxItems) = (count.Least, count.Most);
                break;
        }
    }

    private static Dictionary<Type, IValidatorDescriptor> Find() => typeof(PlanRequestValidator).Assembly.GetTypes()
        .Where(t => t.BaseType is { IsGenericType: true } parent && parent.GetGenericTypeDefinition() == typeof(AbstractValidator<>))
        .ToDictionary(t => t.BaseType!.GetGenericArguments()[0], t => ((IValidator)Activator.CreateInstance(t)!).CreateDescriptor());
}
