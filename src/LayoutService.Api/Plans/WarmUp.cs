using System.Text.Json;
using LayoutService.Api.Hosting;
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
internal sealed class WarmUp(RequestRules rules, ServiceSettings settings, EngineGate gate)
{
    private const string Typical = "typical-room.request.json";
    private static readonly TimeSpan PauseForCallers = TimeSpan.FromMilliseconds(250);

    /// <summary>The runtime compiles for speed once it has met nothing new for a tenth of a second.</summary>
    private static readonly TimeSpan PauseToCompile = TimeSpan.FromMilliseconds(150);

    private static int settled;

    private static ReadOnlyMemory<byte> Smallest => """
        {"units":"metric","room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]]},"joistFields":[{"run":"y","spacing":400,"first":200}]}
        """u8.ToArray();

    public void Run() => Plan(Smallest);

    /// <summary>
    /// Plans the typical room again and again in the background, once a process, so that the code that every plan runs is
    /// compiled for speed before many callers need it. It gives way to callers and ends when the service is told to stop.
    /// </summary>
    public void Settle(CancellationToken stop)
    {
        if (settings.WarmUpPlans > 0 && Interlocked.Exchange(ref settled, 1) == 0)
        {
            new Thread(() => PlanTypical(stop)) { IsBackground = true, Name = "warm-up" }.Start();
        }
    }

    private void PlanTypical(CancellationToken stop)
    {
        using var stream = typeof(WarmUp).Assembly.GetManifestResourceStream(Typical)!;
        var room = new byte[stream.Length];
        stream.ReadExactly(room);
        for (var made = 0; made < settings.WarmUpPlans && !stop.IsCancellationRequested;)
        {
            if (!gate.IsIdle)
            {
                stop.WaitHandle.WaitOne(PauseForCallers);
                continue;
            }

            Plan(room);
            made++;
            stop.WaitHandle.WaitOne(made % 10 == 0 ? PauseToCompile : TimeSpan.FromMilliseconds(2));
        }

        // what the warm-up left behind goes back to the machine, once, while nobody waits
        if (gate.IsIdle)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive);
        }
    }

    private void Plan(ReadOnlyMemory<byte> room)
    {
        var reading = JsonReading<PlanRequest>.Of(room);
        var faults = rules.FaultsOf(reading);
        var asked = SurveyMapping.Of(reading.Value!);
        if (faults.Count > 0 || LayoutEngine.Plan(asked.Survey) is not PlanOutcome.Made made)
        {
            throw new InvalidOperationException("The room that is planned at start-up cannot be planned.");
        }

        JsonSerializer.SerializeToUtf8Bytes(PlanWriting.Of(made.Plan, asked, RequestDigest.Of(reading.Root), Blocks.All), WireJson.Options);
    }
}
