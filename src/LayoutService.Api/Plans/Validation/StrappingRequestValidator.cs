using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class StrappingRequestValidator : AbstractValidator<StrappingRequest>
{
    public StrappingRequestValidator()
    {
        RuleFor(x => x.Size!).SetValidator(new StrapSizeRequestValidator()).When(x => x.Size is not null);
        RuleFor(x => x.MaxSpacing).Within(new Reach(2, 48, 50, 1200));
        RuleFor(x => x.JointsAllowed).Count(1, 4);
        RuleFor(x => x.MinPiece).Within(new Reach(1, 240, 25, 6000));
        RuleFor(x => x.Stock).Count(1, ServiceLimits.MaxStock);
        RuleForEach(x => x.Stock).SetValidator(new StickStockRequestValidator());
        RuleFor(x => x.Kerf).Within(new Reach(0, 0.5m, 0, 12));
        RuleFor(x => x.EndTrim).Within(new Reach(0, 6, 0, 150));
        RuleFor(x => x.EndClearance).Within(new Reach(0, 1, 0, 25));
        RuleFor(x => x.LongestHandled).Within(new Reach(12, 600, 300, 15_000));
    }
}

internal sealed class StrapSizeRequestValidator : AbstractValidator<StrapSizeRequest>
{
    public StrapSizeRequestValidator()
    {
        RuleFor(x => x.Thickness).Within(new Reach(0.25m, 4, 6, 100));
        RuleFor(x => x.Face).Within(new Reach(0.5m, 6, 12, 150));
    }
}

internal sealed class StickStockRequestValidator : AbstractValidator<StickStockRequest>
{
    public StickStockRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Length).Needed().Within(new Reach(12, 600, 300, 15_000));
        RuleFor(x => x.Sku).Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.PackSize).Within(1, 10_000);
        RuleFor(x => x.PackPrice).Within(0, 1_000_000);
        RuleFor(x => x.Quantity).Within(0, 1_000_000);
    }
}
