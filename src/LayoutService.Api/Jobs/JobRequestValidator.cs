using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Jobs.Requests;
using LayoutService.Api.Plans.Validation;

namespace LayoutService.Api.Jobs;

/// <summary>Bounds of a job; its rooms are checked like requests of their own.</summary>
internal sealed class JobRequestValidator : AbstractValidator<JobRequest>
{
    public JobRequestValidator()
    {
        RuleFor(x => x.Reference).Text(100);
        RuleFor(x => x.Rooms).Needed().Count(1, ServiceLimits.MaxRooms);
    }
}
