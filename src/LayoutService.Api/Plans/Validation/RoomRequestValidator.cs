using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class RoomRequestValidator : AbstractValidator<RoomRequest>
{
    public RoomRequestValidator()
    {
        RuleFor(x => x.Outline).Needed().Count(3, ServiceLimits.MaxCorners + 1);
        RuleForEach(x => x.Outline).InRange();
        RuleFor(x => x.Openings).Count(0, ServiceLimits.MaxOpenings);
        RuleForEach(x => x.Openings).SetValidator(new OpeningRequestValidator());
        RuleFor(x => x.Heights).Count(0, ServiceLimits.MaxHeights);
        RuleForEach(x => x.Heights).SetValidator(new HeightRequestValidator());
        RuleFor(x => x.FloorBuildUp).Within(new Reach(0, 24, 0, 600));
        RuleFor(x => x.Walls).Count(0, ServiceLimits.MaxCorners);
        RuleForEach(x => x.Walls).SetValidator(new WallRequestValidator());
        RuleFor(x => x.Existing!).SetValidator(new ExistingRequestValidator()).When(x => x.Existing is not null);
    }
}

internal sealed class OpeningRequestValidator : AbstractValidator<OpeningRequest>
{
    public OpeningRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Outline).Needed().Count(3, ServiceLimits.MaxOpeningCorners + 1);
        RuleForEach(x => x.Outline).InRange();
        RuleFor(x => x.Clearance).Within(new Reach(0, 24, 0, 600));
        RuleFor(x => x.Headroom).Within(new Reach(24, 240, 600, 6000));
        RuleFor(x => x.Headroom).Must(headroom => headroom is null).WithErrorCode("headroom_of_stair_only").WithMessage("Only a stair has headroom to be measured.")
            .When(x => x.Kind is not OpeningWord.Stair);
    }
}

internal sealed class HeightRequestValidator : AbstractValidator<HeightRequest>
{
    public HeightRequestValidator()
    {
        RuleFor(x => x.At).Must(at => at is not { InRange: false }).WithErrorCode("out_of_range").WithMessage(PointRules.OutOfRange);
        RuleFor(x => x.FloorToJoist).Needed().Within(new Reach(12, 480, 300, 12_000));
    }
}

internal sealed class WallRequestValidator : AbstractValidator<WallRequest>
{
    public WallRequestValidator()
    {
        RuleFor(x => x.Edge).Needed().Within(0, ServiceLimits.MaxCorners - 1);
        RuleFor(x => x.Kind).Needed();
    }
}

internal sealed class ExistingRequestValidator : AbstractValidator<ExistingRequest>
{
    public ExistingRequestValidator()
    {
        RuleFor(x => x.Thickness).Needed().When(x => x.Stays != false);
        RuleFor(x => x.Thickness).Within(new Reach(0.125m, 2, 3, 50));
    }
}

internal static class PointRules
{
    public static readonly string OutOfRange = $"A coordinate must be from -{WireLength.MaxNumber} to {WireLength.MaxNumber}.";

    public static IRuleBuilderOptions<T, WirePoint> InRange<T>(this IRuleBuilder<T, WirePoint> rule) =>
        rule.Must(point => point.InRange).WithErrorCode("out_of_range").WithMessage(OutOfRange);
}
