using System.Text.Json;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Wire;
using LayoutService.Engine;

namespace LayoutService.Api.Plans;

/// <summary>
/// Plans one small room before the service says that it is ready, so that the first caller does not wait for tables to be
/// loaded and code to be compiled. A table that cannot be read stops the service here.
/// </summary>
internal sealed class WarmUp(RequestRules rules)
{
    private static ReadOnlyMemory<byte> Room => """
        {"units":"metric","room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]]},"joistFields":[{"run":"y","spacing":400,"first":200}]}
        """u8.ToArray();

    public void Run()
    {
        var reading = JsonReading<PlanRequest>.Of(Room);
        var faults = rules.FaultsOf(reading);
        var asked = SurveyMapping.Of(reading.Value!);
        if (faults.Count > 0 || LayoutEngine.Plan(asked.Survey) is not PlanOutcome.Made made)
        {
            throw new InvalidOperationException("The room that is planned at start-up cannot be planned.");
        }

        JsonSerializer.SerializeToUtf8Bytes(PlanWriting.Of(made.Plan, asked, RequestDigest.Of(reading.Root), Blocks.All), WireJson.Options);
    }
}
