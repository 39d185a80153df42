using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class JoistFieldRequestValidator : AbstractValidator<JoistFieldRequest>
{
    /// <summary>Anywhere in a room; whether it lies in this one is a rule between members.</summary>
    private static readonly Reach Anywhere = new(-WireLength.MaxNumber, WireLength.MaxNumber, -WireLength.MaxNumber, WireLength.MaxNumber);

    public JoistFieldRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Region).Count(0, ServiceLimits.MaxOpeningCorners + 1);
        RuleForEach(x => x.Region).InRange();
        RuleFor(x => x.RunDegrees).InclusiveBetween(0, 179.999999m).WithErrorCode("out_of_range")
            .WithMessage("This must be from 0 to below 180; it is {PropertyValue}.");
        RuleFor(x => x.Depth).Within(new Reach(2, 48, 50, 1200));
        RuleFor(x => x.ClearSpan).Within(new Reach(12, 600, 300, 15_000));
        RuleFor(x => x.Face).Within(new Reach(0.5m, 12, 12, 300));
        RuleFor(x => x.Spacing).Within(new Reach(2, 96, 50, 2400));
        RuleFor(x => x.First).Within(Anywhere);
        RuleFor(x => x.Positions).Count(1, ServiceLimits.MaxJoists);
        RuleForEach(x => x.Positions).SetValidator(new AnywhereRule<JoistFieldRequest>(Anywhere)).WithErrorCode("out_of_range");
        RuleFor(x => x.Undersides).Count(0, ServiceLimits.MaxUndersides);
        RuleForEach(x => x.Undersides).SetValidator(new UndersideRequestValidator());
    }
}

internal sealed class UndersideRequestValidator : AbstractValidator<UndersideRequest>
{
    public UndersideRequestValidator()
    {
        RuleFor(x => x.At).Needed();
        RuleFor(x => x.At).Must(at => at is not { InRange: false }).WithErrorCode("out_of_range").WithMessage(PointRules.OutOfRange);
        RuleFor(x => x.Level).Needed().Within(new Reach(-120, 120, -3000, 3000));
    }
}
