using FluentValidation;
using LayoutService.Api.Comparisons.Requests;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Validation;

namespace LayoutService.Api.Comparisons;

/// <summary>Bounds of a comparison; base and variants are checked like requests of their own.</summary>
internal sealed class ComparisonRequestValidator : AbstractValidator<ComparisonRequest>
{
    public ComparisonRequestValidator()
    {
        RuleFor(x => x.Reference).Text(100);
        RuleFor(x => x.Base).Needed();
        RuleFor(x => x.Variants).Needed().Count(1, ServiceLimits.MaxVariants);
        RuleForEach(x => x.Variants).SetValidator(new VariantRequestValidator());
    }
}

internal sealed class VariantRequestValidator : AbstractValidator<VariantRequest>
{
    public VariantRequestValidator()
    {
        RuleFor(x => x.Name).Needed().Length(1, ServiceLimits.MaxIdLength).WithErrorCode("text_length")
            .WithMessage("This text must have from {MinLength} to {MaxLength} characters; it has {TotalLength}.")
            .Pattern(WireRules.TextPattern).WithErrorCode("text_pattern").WithMessage("This text holds a control character.");
        RuleFor(x => x.Change).Needed();
    }
}
