using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class ServiceRequestValidator : AbstractValidator<ServiceRequest>
{
    private static readonly Reach Height = new(-48, 240, -1200, 6000);

    public ServiceRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Kind).Needed();
        RuleFor(x => x.Path).Count(2, ServiceLimits.MaxPathCorners);
        RuleForEach(x => x.Path).InRange();
        RuleFor(x => x.Width).Within(new Reach(0.125m, 120, 3, 3000));
        RuleFor(x => x.Outline).Count(3, ServiceLimits.MaxOpeningCorners + 1);
        RuleForEach(x => x.Outline).InRange();
        RuleFor(x => x.Top).Within(Height);
        RuleFor(x => x.Bottom).Within(Height);
        RuleFor(x => x.Bottom).Needed().When(x => x.Kind is not (null or ServiceWord.PannedReturn));
        RuleFor(x => x.Clearance).Within(new Reach(0, 24, 0, 600));
    }
}
