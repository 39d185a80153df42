using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class InsulationRequestValidator : AbstractValidator<InsulationRequest>
{
    public InsulationRequestValidator()
    {
        RuleFor(x => x.Batts).Count(0, ServiceLimits.MaxStock);
        RuleForEach(x => x.Batts).SetValidator(new BattRequestValidator());
        RuleFor(x => x.Region).Count(3, ServiceLimits.MaxOpeningCorners + 1);
        RuleForEach(x => x.Region).InRange();
    }
}

internal sealed class BattRequestValidator : AbstractValidator<BattRequest>
{
    public BattRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Thickness).Needed().Within(new Reach(0.5m, 24, 12, 600));
        RuleFor(x => x.Width).Needed().Within(new Reach(4, 96, 100, 2440));
        RuleFor(x => x.Length).Needed().Within(new Reach(12, 1200, 300, 30_000));
        RuleFor(x => x.R).Within(0.1m, 100);
        RuleFor(x => x.PackSize).Within(1, 10_000);
        RuleFor(x => x.PackPrice).Within(0, 1_000_000);
    }
}
