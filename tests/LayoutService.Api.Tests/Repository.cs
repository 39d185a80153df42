namespace LayoutService.Api.Tests;

/// <summary>Files of the repository that tests compare with.</summary>
internal static class Repository
{
    /// <summary>
    /// Set LAYOUT_REGENERATE=1 to write the contract and the example answers anew from the service, instead of comparing.
    /// Look at the difference before it is committed.
    /// </summary>
    public static bool Regenerate => Environment.GetEnvironmentVariable("LAYOUT_REGENERATE") == "1";

    public static string Root { get; } = Find();

    public static string OpenApi(string name) => Path.Combine(Root, "openapi", name);

    /// <summary>Names of the examples of rooms, in order.</summary>
    public static IEnumerable<string> Examples => AllExamples.Where(name => !IsCutPlan(name) && !IsJob(name) && !IsComparison(name));

    /// <summary>Names of the examples of jobs, in order.</summary>
    public static IEnumerable<string> JobExamples => AllExamples.Where(IsJob);

    /// <summary>Names of the examples of comparisons, in order.</summary>
    public static IEnumerable<string> ComparisonExamples => AllExamples.Where(IsComparison);

    /// <summary>Names of the examples of cut plans, in order.</summary>
    public static IEnumerable<string> CutPlanExamples => AllExamples.Where(IsCutPlan);

    private static IEnumerable<string> AllExamples => Directory.GetFiles(Path.Combine(Root, "openapi", "examples"), "*.request.json")
        .Select(file => Path.GetFileName(file)[..^".request.json".Length])
        .Order(StringComparer.Ordinal);

    private static bool IsCutPlan(string name) => name.StartsWith("cut-plan-", StringComparison.Ordinal);

    private static bool IsJob(string name) => name.StartsWith("job-", StringComparison.Ordinal);

    private static bool IsComparison(string name) => name.StartsWith("comparison-", StringComparison.Ordinal);

    public static string ExampleRequest(string name) => File.ReadAllText(OpenApi($"examples/{name}.request.json"));

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "LayoutService.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside of the repository.");
    }
}
