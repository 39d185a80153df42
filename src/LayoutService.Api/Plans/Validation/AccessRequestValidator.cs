using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class AccessRequestValidator : AbstractValidator<AccessRequest>
{
    /// <summary>Clear sizes of a way in.</summary>
    public static readonly Reach Clear = new(4, 1200, 100, 30_000);

    public AccessRequestValidator()
    {
        RuleFor(x => x.Passages).Count(0, ServiceLimits.MaxItems);
        RuleForEach(x => x.Passages).SetValidator(new PassageRequestValidator());
        RuleFor(x => x.Turn!).SetValidator(new TurnRequestValidator()).When(x => x.Turn is not null);
        RuleFor(x => x.Window!).SetValidator(new PassageRequestValidator()).When(x => x.Window is not null);
    }
}

internal sealed class PassageRequestValidator : AbstractValidator<PassageRequest>
{
    public PassageRequestValidator()
    {
        RuleFor(x => x.Width).Needed().Within(AccessRequestValidator.Clear);
        RuleFor(x => x.Height).Needed().Within(AccessRequestValidator.Clear);
    }
}

internal sealed class TurnRequestValidator : AbstractValidator<TurnRequest>
{
    public TurnRequestValidator()
    {
        RuleFor(x => x.WidthBefore).Needed().Within(AccessRequestValidator.Clear);
        RuleFor(x => x.WidthAfter).Needed().Within(AccessRequestValidator.Clear);
        RuleFor(x => x.Height).Within(AccessRequestValidator.Clear);
    }
}

internal sealed class CrewRequestValidator : AbstractValidator<CrewRequest>
{
    public CrewRequestValidator()
    {
        RuleFor(x => x.People).Within(1, 20);
        RuleFor(x => x.MassLimit).Within(1, 1000);
    }
}
