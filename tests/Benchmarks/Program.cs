using System.Globalization;
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
    case BareEndpoint.Word:
        await BareEndpoint.RunAsync(args[1], args[2]);
        return;
    case "http":
        // answers of the service beside those of a bare endpoint: seconds of each turn, and turns
        await HttpRatio.RunAsync(
            Console.Out,
            Path.Combine("openapi", "examples", "typical-room.request.json"),
            args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 5,
            args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 7);
        return;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Scenes).Assembly).Run(args);
        return;
}
