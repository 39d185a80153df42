using FluentValidation;
using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Validation;

namespace LayoutService.Api.CutPlans.Validation;

internal sealed class StickCutsRequestValidator : AbstractValidator<StickCutsRequest>
{
    public StickCutsRequestValidator()
    {
        RuleFor(x => x.Size).Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.Wanted).Needed().Count(1, ServiceLimits.MaxCutLengths);
        RuleForEach(x => x.Wanted).SetValidator(new WantedStickRequestValidator());
        RuleFor(x => x.Stock).Needed().Count(1, ServiceLimits.MaxStock);
        RuleForEach(x => x.Stock).SetValidator(new StickOfferRequestValidator());
    }
}

internal sealed class WantedStickRequestValidator : AbstractValidator<WantedStickRequest>
{
    public WantedStickRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Length).Needed().Within(CutReach.Stick);
        RuleFor(x => x.Count).Within(1, ServiceLimits.MaxCutPieces);
    }
}

internal sealed class StickOfferRequestValidator : AbstractValidator<StickOfferRequest>
{
    public StickOfferRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Length).Needed().Within(CutReach.Stick);
        RuleFor(x => x.Sku).Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.PackSize).Within(1, 10_000);
        RuleFor(x => x.PackPrice).Within(0, 1_000_000);
        RuleFor(x => x.Quantity).Within(0, 1_000_000);
    }
}
