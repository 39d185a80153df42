using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Bounds of a fixture. Where it stands is asked for in <see cref="FixtureRequestRules"/>: a grid's light has no place.</summary>
internal sealed class FixtureRequestValidator : AbstractValidator<FixtureRequest>
{
    public FixtureRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Kind).Needed();
        RuleFor(x => x.At).Must(at => at is not { InRange: false }).WithErrorCode("out_of_range").WithMessage(PointRules.OutOfRange);
        RuleFor(x => x.Cutout).Needed();
        RuleFor(x => x.Cutout!).SetValidator(new CutoutRequestValidator()).When(x => x.Cutout is not null);
        RuleFor(x => x.BodyDepth).Within(new Reach(0, 24, 0, 600));
        RuleFor(x => x.RemoteBox!).SetValidator(new BoxRequestValidator()).When(x => x.RemoteBox is not null);
        RuleFor(x => x.ClipReach).Within(new Reach(0, 12, 0, 300));
        RuleFor(x => x.MaxShift).Within(new Reach(0, 48, 0, 1200));
        RuleFor(x => x.EdgeClearance).Within(new Reach(0, 12, 0, 300));
    }
}

internal sealed class CutoutRequestValidator : AbstractValidator<CutoutRequest>
{
    private static readonly Reach Hole = new(0.5m, 96, 10, 2400);

    public CutoutRequestValidator()
    {
        RuleFor(x => x.Diameter).Within(Hole);
        RuleFor(x => x.Width).Within(Hole);
        RuleFor(x => x.Height).Within(Hole);
    }
}

internal sealed class BoxRequestValidator : AbstractValidator<BoxRequest>
{
    private static readonly Reach Side = new(0.25m, 24, 5, 600);

    public BoxRequestValidator()
    {
        RuleFor(x => x.Width).Needed().Within(Side);
        RuleFor(x => x.Length).Needed().Within(Side);
        RuleFor(x => x.Height).Needed().Within(Side);
    }
}

internal sealed class LightGridRequestValidator : AbstractValidator<LightGridRequest>
{
    public LightGridRequestValidator()
    {
        RuleFor(x => x.Count).Within(1, ServiceLimits.MaxFixtures);
        RuleFor(x => x.Rows).Within(1, 50);
        RuleFor(x => x.Columns).Within(1, 50);
        RuleFor(x => x.Lux).Within(1, 5000);
        RuleFor(x => x.Lumens).Within(10, 100_000);
        RuleFor(x => x.WorkHeight).Within(new Reach(0, 120, 0, 3000));
        RuleFor(x => x.Utilisation).Within(0.05m, 1.2m);
        RuleFor(x => x.Maintenance).Within(0.05m, 1);
        RuleFor(x => x.SpacingToHeight).Within(0.1m, 5);
        RuleFor(x => x.Fixture).Needed();
        RuleFor(x => x.Fixture!).SetValidator(new FixtureRequestValidator()).When(x => x.Fixture is not null);
    }
}

internal sealed class MountRequestValidator : AbstractValidator<MountRequest>
{
    public MountRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.At).Needed();
        RuleFor(x => x.At).Must(at => at is not { InRange: false }).WithErrorCode("out_of_range").WithMessage(PointRules.OutOfRange);
        RuleFor(x => x.Mass).Needed().Within(0.1m, 5000);
    }
}
