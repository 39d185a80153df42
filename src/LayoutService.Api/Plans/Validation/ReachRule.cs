using FluentValidation;
using FluentValidation.Validators;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Tells the contract generator the bounds of a length.</summary>
internal interface IReachRule
{
    Reach Reach { get; }
}

/// <summary>A length lies within its <see cref="Reach"/>. Without known units nothing can be said.</summary>
internal sealed class ReachRule<T>(Reach reach) : PropertyValidator<T, WireLength?>, IReachRule
{
    public Reach Reach => reach;

    public override string Name => "out_of_range";

    public override bool IsValid(ValidationContext<T> context, WireLength? value)
    {
        if (value is not { } length || UnitsInHand.Of(context) is not { } imperial)
        {
            return true;
        }

        var (least, most, found) = (reach.Least(imperial), reach.Most(imperial), length.In(imperial));
        if (length.InRange && least <= found && found <= most)
        {
            return true;
        }

        var unit = imperial ? "in" : "mm";
        context.MessageFormatter
            .AppendArgument("least", Figures.Text(least, imperial))
            .AppendArgument("most", Figures.Text(most, imperial))
            .AppendArgument("value", Figures.Text(found, imperial))
            .AppendArgument("unit", unit);
        return false;
    }

    protected override string GetDefaultMessageTemplate(string errorCode) =>
        "This must be from {least} to {most} {unit}; it is {value} {unit}.";
}

/// <summary>The units of the request being validated, for rules that depend on them.</summary>
internal static class UnitsInHand
{
    private const string Key = "imperial";

    public static void Set(IValidationContext context, bool? imperial) => context.RootContextData[Key] = imperial!;

    public static bool? Of(IValidationContext context) => context.RootContextData[Key] as bool?;
}
