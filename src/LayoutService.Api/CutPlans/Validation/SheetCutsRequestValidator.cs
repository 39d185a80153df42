using FluentValidation;
using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Validation;

namespace LayoutService.Api.CutPlans.Validation;

internal sealed class SheetCutsRequestValidator : AbstractValidator<SheetCutsRequest>
{
    public SheetCutsRequestValidator()
    {
        RuleFor(x => x.Wanted).Needed().Count(1, ServiceLimits.MaxCutPanels);
        RuleForEach(x => x.Wanted).SetValidator(new WantedSheetRequestValidator());
        RuleFor(x => x.Stock).Needed().Count(1, ServiceLimits.MaxStock);
        RuleForEach(x => x.Stock).SetValidator(new SheetOfferRequestValidator());
        RuleFor(x => x.Kerf).Within(CutReach.Kerf);
        RuleFor(x => x.EndTrim).Within(CutReach.Trim);
        RuleFor(x => x.EdgeTrim).Within(CutReach.Trim);
    }
}

internal sealed class WantedSheetRequestValidator : AbstractValidator<WantedSheetRequest>
{
    public WantedSheetRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Width).Needed().Within(CutReach.Panel);
        RuleFor(x => x.Length).Needed().Within(CutReach.Panel);
        RuleFor(x => x.Count).Within(1, ServiceLimits.MaxCutPanelPieces);
    }
}

internal sealed class SheetOfferRequestValidator : AbstractValidator<SheetOfferRequest>
{
    public SheetOfferRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Width).Needed().Within(CutReach.Panel);
        RuleFor(x => x.Length).Needed().Within(CutReach.Panel);
        RuleFor(x => x.Sku).Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.PackSize).Within(1, 10_000);
        RuleFor(x => x.PackPrice).Within(0, 1_000_000);
        RuleFor(x => x.Quantity).Within(0, 1_000_000);
    }
}
