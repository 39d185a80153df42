using System.Diagnostics;
using System.Diagnostics.Metrics;
using LayoutService.Engine;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Hosting;

/// <summary>What the engine did for one call, as metrics and a span. The names are in `docs/operations.md`.</summary>
internal sealed class EngineWatch
{
    /// <summary>Name of our meter and of our source of spans.</summary>
    public const string Name = "LayoutService";

    private static readonly ActivitySource Spans = new(Name);
    private static readonly Meter Figures = new(Name);
    private static readonly Histogram<double> Duration = Figures.CreateHistogram<double>("layout.engine.duration", "s", "Time of one call in the engine, from its place to its end.");
    private static readonly Histogram<long> Work = Figures.CreateHistogram<long>("layout.engine.work", "{operation}", "Work of the engine for one call.");
    private static readonly Histogram<int> Pieces = Figures.CreateHistogram<int>("layout.plan.pieces", "{piece}", "Strap and board pieces of one plan.");
    private static readonly Histogram<double> Gap = Figures.CreateHistogram<double>("layout.plan.gap", "1", "How far the cost of a cut plan may be above the least: (cost - bound) / bound.");
    private static readonly Counter<long> Rejections = Figures.CreateCounter<long>("layout.rejections", "{code}", "Codes of faults and findings that calls were answered with.");

    private readonly Activity? span = Spans.StartActivity("engine");
    private readonly long begun = Stopwatch.GetTimestamp();
    private long work;

    /// <summary>Shows how full the engine is.</summary>
    public static void Show(EngineGate gate)
    {
        Figures.CreateObservableGauge("layout.engine.places", () => gate.Places, "{place}", "Calls that may be in the engine at once.");
        Figures.CreateObservableGauge("layout.engine.taken", () => gate.Taken, "{place}", "Calls in the engine now.");
        Figures.CreateObservableGauge("layout.engine.waiting", () => gate.Waiting, "{call}", "Calls that wait for the engine now.");
    }

    public static void Made(CeilingPlan plan)
    {
        Pieces.Record(plan.Summary.StrapPieces + plan.Sheets.Pieces.Count);
        foreach (var result in plan.CutPlan.Results)
        {
            Gap.Record((double)result.Gap, new KeyValuePair<string, object?>("use", result.Use));
        }
    }

    public static void Refused(int status, string code) =>
        Rejections.Add(1, new KeyValuePair<string, object?>("status", status), new KeyValuePair<string, object?>("code", code));

    public void Add(WorkMeter? meter) => work += meter?.Spent ?? 0;

    public void Finish()
    {
        Duration.Record(Stopwatch.GetElapsedTime(begun).TotalSeconds);
        Work.Record(work);
        span?.SetTag("layout.engine.work", work);
        span?.Dispose();
    }
}
