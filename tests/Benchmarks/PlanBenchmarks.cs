using BenchmarkDotNet.Attributes;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Benchmarks;

/// <summary>The typical room: bare, with lights, ducts, bulkhead and batts, and bare at thorough effort.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private readonly Survey _quick = Scenes.Typical(Effort.Quick);
    private readonly Survey _whole = FurnishedRoom.Of(Effort.Quick);
    private readonly Survey _thorough = Scenes.Typical(Effort.Thorough);

    [Benchmark(Baseline = true)]
    public PlanOutcome Quick() => LayoutEngine.Plan(_quick);

    [Benchmark]
    public PlanOutcome Whole() => LayoutEngine.Plan(_whole);

    [Benchmark]
    public PlanOutcome Thorough() => LayoutEngine.Plan(_thorough);
}

/// <summary>How time and memory grow with the ceiling.</summary>
[MemoryDiagnoser]
public class GrowthBenchmarks
{
    private Survey? _survey;

    [Params(10, 30, 100, 300, 1000, 3000, 10000)]
    public int SquareMetres { get; set; }

    [GlobalSetup]
    public void Setup() => _survey = Scenes.OfArea(SquareMetres);

    [Benchmark]
    public PlanOutcome Plan() => LayoutEngine.Plan(_survey!);
}
