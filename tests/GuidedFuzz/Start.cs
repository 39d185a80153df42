using System.Globalization;

namespace LayoutService.GuidedFuzz;

/// <summary>The fuzzer as a program; tests/GuidedFuzz/run.sh builds it and has the service's assembly count its branches.</summary>
internal static class Start
{
    private static async Task<int> Main(string[] args)
    {
        if (args.Length != 3)
        {
            Console.Error.WriteLine("usage: LayoutService.GuidedFuzz <seconds> <seed> <folder of the bodies to start from>");
            return 2;
        }

        var seconds = int.Parse(args[0], CultureInfo.InvariantCulture);
        var seed = int.Parse(args[1], CultureInfo.InvariantCulture);
        // what the service logs of each call is not looked at
        var say = Console.Out;
        Console.SetOut(TextWriter.Null);
        using var target = new Target();
        var hunt = new Hunt(target, new Random(seed), [.. Directory.GetFiles(args[2], "*.request.json").Order(StringComparer.Ordinal).Select(File.ReadAllBytes)]);
        await hunt.RunAsync(TimeSpan.FromSeconds(seconds));
        say.WriteLine(FormattableString.Invariant(
            $"seed {seed}: {hunt.Runs} bodies in {seconds} s, {hunt.Kept} kept as new, {hunt.Branches} branches met ({hunt.AtFirst} by the bodies at the start), statuses {string.Join(", ", hunt.Statuses.Select(s => $"{s.Key}: {s.Value}"))}, {hunt.Failed.Count} failed"));
        foreach (var (status, body) in hunt.Failed.Take(10))
        {
            say.WriteLine($"{status} {Convert.ToBase64String(body)}");
        }

        // a hunt whose branches were not counted has looked at nothing
        return hunt.Failed.Count > 0 || hunt.Branches == 0 || hunt.Kept == 0 ? 1 : 0;
    }
}
