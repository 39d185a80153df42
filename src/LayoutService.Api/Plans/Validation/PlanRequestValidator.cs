using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Bounds and needed members of a request for a plan. Rules between members are in the files beside this one.</summary>
internal sealed class PlanRequestValidator : AbstractValidator<PlanRequest>
{
    public PlanRequestValidator()
    {
        RuleFor(x => x.Reference).Text(100);
        RuleFor(x => x.Units).Needed();
        RuleFor(x => x.Rules).Count(0, ServiceLimits.MaxRules);
        RuleForEach(x => x.Rules).SetValidator(new RuleRequestValidator());
        RuleFor(x => x.Language).Length(2, 35).WithErrorCode("text_length")
            .WithMessage("This text must have from {MinLength} to {MaxLength} characters; it has {TotalLength}.")
            .Pattern("^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$").WithErrorCode("text_pattern")
            .WithMessage("This is no language tag; write for example en or en-CA.");
        RuleFor(x => x.Room).Needed();
        RuleFor(x => x.Room!).SetValidator(new RoomRequestValidator()).When(x => x.Room is not null);
        RuleFor(x => x.JoistFields).Needed().Count(1, ServiceLimits.MaxJoistFields);
        RuleForEach(x => x.JoistFields).SetValidator(new JoistFieldRequestValidator());
        RuleFor(x => x.Strapping!).SetValidator(new StrappingRequestValidator()).When(x => x.Strapping is not null);
        RuleFor(x => x.Sheets!).SetValidator(new SheetsRequestValidator()).When(x => x.Sheets is not null);
        RuleFor(x => x.Access!).SetValidator(new AccessRequestValidator()).When(x => x.Access is not null);
        RuleFor(x => x.Crew!).SetValidator(new CrewRequestValidator()).When(x => x.Crew is not null);
        RuleFor(x => x.Fixtures).Count(0, ServiceLimits.MaxFixtures);
        RuleForEach(x => x.Fixtures).SetValidator(new FixtureRequestValidator());
        RuleFor(x => x.LightGrid!).SetValidator(new LightGridRequestValidator()).When(x => x.LightGrid is not null);
        RuleFor(x => x.Mounts).Count(0, ServiceLimits.MaxFixtures);
        RuleForEach(x => x.Mounts).SetValidator(new MountRequestValidator());
        RuleFor(x => x.Services).Count(0, ServiceLimits.MaxServices);
        RuleForEach(x => x.Services).SetValidator(new ServiceRequestValidator());
        RuleFor(x => x.Partitions).Count(0, ServiceLimits.MaxPartitions);
        RuleForEach(x => x.Partitions).SetValidator(new PartitionRequestValidator());
        RuleFor(x => x.Bulkheads).Count(0, ServiceLimits.MaxBulkheads);
        RuleForEach(x => x.Bulkheads).SetValidator(new BulkheadRequestValidator());
        RuleFor(x => x.Insulation!).SetValidator(new InsulationRequestValidator()).When(x => x.Insulation is not null);
        RuleFor(x => x.Prices!).SetValidator(new PricesRequestValidator()).When(x => x.Prices is not null);
        RuleFor(x => x.Document!).SetValidator(new DocumentRequestValidator()).When(x => x.Document is not null);
    }
}

internal sealed class RuleRequestValidator : AbstractValidator<RuleRequest>
{
    public RuleRequestValidator()
    {
        RuleFor(x => x.Id).Needed().Id();
        RuleFor(x => x.Value).Needed().Within(0, 1_000_000);
    }
}
