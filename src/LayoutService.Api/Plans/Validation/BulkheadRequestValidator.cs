using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class BulkheadRequestValidator : AbstractValidator<BulkheadRequest>
{
    public BulkheadRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Edges).Count(1, ServiceLimits.MaxCorners);
        RuleFor(x => x.Hides).Count(1, ServiceLimits.MaxServices);
        RuleFor(x => x.Outline).Count(3, ServiceLimits.MaxOpeningCorners + 1);
        RuleForEach(x => x.Outline).InRange();
        RuleFor(x => x.Width).Within(new Reach(4, 240, 100, 6000));
        RuleFor(x => x.Drop).Within(new Reach(1, 120, 25, 3000));
        RuleFor(x => x.Frame!).SetValidator(new FrameRequestValidator()).When(x => x.Frame is not null);
    }
}

internal sealed class FrameRequestValidator : AbstractValidator<FrameRequest>
{
    public FrameRequestValidator()
    {
        RuleFor(x => x.Stock).Count(1, ServiceLimits.MaxStock);
        RuleForEach(x => x.Stock).SetValidator(new StickStockRequestValidator());
    }
}
