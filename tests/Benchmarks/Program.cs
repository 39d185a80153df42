using BenchmarkDotNet.Running;
using LayoutService.Benchmarks;

switch (args.FirstOrDefault())
{
    case "table":
        PerformancePage.Write(Console.Out);
        return;
    case "digest":
        var each = args.Contains("each") ? (seed, text) => Console.WriteLine($"{seed} {text}") : (Action<int, string>?)null;
        Console.WriteLine(PlanDigest.Of(300, each));
        return;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Scenes).Assembly).Run(args);
        return;
}
