using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Plans.Validation;

internal sealed class PricesRequestValidator : AbstractValidator<PricesRequest>
{
    public PricesRequestValidator()
    {
        RuleFor(x => x.Currency).Pattern(WireRules.CurrencyPattern).WithErrorCode("text_pattern")
            .WithMessage("A currency is the three capital letters of ISO 4217, for example CAD or USD.");
        RuleFor(x => x.Items).Count(0, ServiceLimits.MaxPricedItems);
        RuleForEach(x => x.Items).SetValidator(new PricedItemRequestValidator());
        RuleFor(x => x.Waste!).SetValidator(new WasteRequestValidator()).When(x => x.Waste is not null);
        RuleFor(x => x.Tax).Count(0, ServiceLimits.MaxTaxes);
        RuleForEach(x => x.Tax).SetValidator(new TaxRequestValidator());
        RuleFor(x => x.Culls!).SetValidator(new CullsRequestValidator()).When(x => x.Culls is not null);
        RuleFor(x => x.Labour!).SetValidator(new LabourRequestValidator()).When(x => x.Labour is not null);
    }
}

internal sealed class PricedItemRequestValidator : AbstractValidator<PricedItemRequest>
{
    public PricedItemRequestValidator()
    {
        RuleFor(x => x.Code).Needed().Id();
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Sku).Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.PackSize).Within(0.001m, 1_000_000);
        RuleFor(x => x.PackPrice).Needed().Within(0, 1_000_000);
    }
}

internal sealed class WasteRequestValidator : AbstractValidator<WasteRequest>
{
    public WasteRequestValidator()
    {
        RuleFor(x => x.Fasteners).Within(0, 1);
        RuleFor(x => x.Tape).Within(0, 1);
        RuleFor(x => x.Compound).Within(0, 1);
        RuleFor(x => x.Adhesive).Within(0, 1);
    }
}

internal sealed class TaxRequestValidator : AbstractValidator<TaxRequest>
{
    public TaxRequestValidator()
    {
        RuleFor(x => x.Name).Needed().Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.Rate).Needed().Within(0, 1);
    }
}

internal sealed class CullsRequestValidator : AbstractValidator<CullsRequest>
{
    public CullsRequestValidator()
    {
        RuleFor(x => x.Boards).Within(0, 1);
        RuleFor(x => x.Dimension).Within(0, 1);
    }
}

internal sealed class LabourRequestValidator : AbstractValidator<LabourRequest>
{
    public LabourRequestValidator()
    {
        RuleFor(x => x.HourPrice).Needed().Within(0, 100_000);
        RuleFor(x => x.PerStrapPiece).Within(0, 1000);
        RuleFor(x => x.PerBoardPiece).Within(0, 1000);
        RuleFor(x => x.PerJointLength).Within(0, 1000);
    }
}

internal sealed class DocumentRequestValidator : AbstractValidator<DocumentRequest>
{
    public DocumentRequestValidator()
    {
        RuleFor(x => x.Id).Text(ServiceLimits.MaxIdLength);
        RuleFor(x => x.Buyer).Text();
        RuleFor(x => x.Seller).Text();
    }
}
