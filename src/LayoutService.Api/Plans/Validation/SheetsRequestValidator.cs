using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class SheetsRequestValidator : AbstractValidator<SheetsRequest>
{
    public SheetsRequestValidator()
    {
        RuleFor(x => x.Thickness).Within(new Reach(0.25m, 2, 6, 50));
        RuleFor(x => x.Layers).Within(1, 4);
        RuleFor(x => x.Stock).Count(1, ServiceLimits.MaxStock);
        RuleForEach(x => x.Stock).SetValidator(new SheetStockRequestValidator());
        RuleFor(x => x.CutAllowance).Within(new Reach(0, 1, 0, 25));
        RuleFor(x => x.MinStagger).Within(new Reach(0, 240, 0, 6000));
        RuleFor(x => x.JointCost!).SetValidator(new JointCostRequestValidator()).When(x => x.JointCost is not null);
    }
}

internal sealed class SheetStockRequestValidator : AbstractValidator<SheetStockRequest>
{
    public SheetStockRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Width).Needed().Within(new Reach(6, 120, 150, 3000));
        RuleFor(x => x.Length).Needed().Within(new Reach(12, 300, 300, 7500));
        RuleFor(x => x.Sku).Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.PackSize).Within(1, 10_000);
        RuleFor(x => x.PackPrice).Within(0, 1_000_000);
        RuleFor(x => x.Quantity).Within(0, 1_000_000);
    }
}

internal sealed class JointCostRequestValidator : AbstractValidator<JointCostRequest>
{
    public JointCostRequestValidator()
    {
        RuleFor(x => x.Butt).Within(0, 10_000);
        RuleFor(x => x.Tapered).Within(0, 10_000);
    }
}
