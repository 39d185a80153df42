using FluentValidation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

internal sealed class PartitionRequestValidator : AbstractValidator<PartitionRequest>
{
    public PartitionRequestValidator()
    {
        RuleFor(x => x.Id).Id();
        RuleFor(x => x.Line).Needed().Count(2, ServiceLimits.MaxPathCorners);
        RuleForEach(x => x.Line).InRange();
        RuleFor(x => x.Thickness).Needed().Within(new Reach(1, 24, 25, 600));
    }
}
