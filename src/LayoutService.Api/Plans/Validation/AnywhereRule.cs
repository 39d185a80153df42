using FluentValidation;
using FluentValidation.Validators;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

/// <summary>An item of a list of lengths lies within its <see cref="Reach"/>.</summary>
internal sealed class AnywhereRule<T>(Reach reach) : PropertyValidator<T, WireLength>, IReachRule
{
    public Reach Reach => reach;

    public override string Name => "out_of_range";

    public override bool IsValid(ValidationContext<T> context, WireLength value)
    {
        if (value.InRange || UnitsInHand.Of(context) is not { } imperial)
        {
            return true;
        }

        context.MessageFormatter
            .AppendArgument("least", Figures.Text(reach.Least(imperial), imperial))
            .AppendArgument("most", Figures.Text(reach.Most(imperial), imperial))
            .AppendArgument("unit", imperial ? "in" : "mm");
        return false;
    }

    protected override string GetDefaultMessageTemplate(string errorCode) => "This must be from {least} to {most} {unit}.";
}
