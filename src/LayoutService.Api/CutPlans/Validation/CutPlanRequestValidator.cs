using FluentValidation;
using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Wire;

namespace LayoutService.Api.CutPlans.Validation;

/// <summary>Bounds and needed members of a request for a cut plan. Rules between members are in <see cref="CutRules"/>.</summary>
internal sealed class CutPlanRequestValidator : AbstractValidator<CutPlanRequest>
{
    public CutPlanRequestValidator()
    {
        RuleFor(x => x.Reference).Text(100);
        RuleFor(x => x.Units).Needed();
        RuleFor(x => x.Currency).Pattern(WireRules.CurrencyPattern).WithErrorCode("text_pattern")
            .WithMessage("A currency is the three capital letters of ISO 4217, for example CAD or USD.");
        RuleFor(x => x.Kerf).Within(CutReach.Kerf);
        RuleFor(x => x.EndTrim).Within(CutReach.Trim);
        RuleFor(x => x.Sticks!).SetValidator(new StickCutsRequestValidator()).When(x => x.Sticks is not null);
        RuleFor(x => x.Sheets!).SetValidator(new SheetCutsRequestValidator()).When(x => x.Sheets is not null);
    }
}

/// <summary>How long things to be cut may be. Wider than for a room, so that published cutting problems can be posted as they are printed.</summary>
internal static class CutReach
{
    public static readonly Reach Stick = new(0.01m, 100_000, 0.1m, 100_000);
    public static readonly Reach Panel = new(0.01m, 1_000, 0.1m, 25_000);
    public static readonly Reach Kerf = new(0, 2, 0, 50);
    public static readonly Reach Trim = new(0, 12, 0, 300);
}
