namespace LayoutService.Engine.Tests.Optimum;

/// <summary>A test that measures the full set; it runs only when the environment asks, and shows as skipped otherwise.</summary>
internal sealed class FullRunFactAttribute : FactAttribute
{
    public FullRunFactAttribute()
    {
        if (Environment.GetEnvironmentVariable("LAYOUT_MEASURE") != "1")
        {
            Skip = "Set LAYOUT_MEASURE=1 to measure the full set and rewrite docs/measured/optimum.md.";
        }
    }
}

/// <summary>Rewrites one section of <c>docs/measured/optimum.md</c>; the rest of the page stays.</summary>
internal static class MeasuredPage
{
    public static void Write(string heading, IEnumerable<string> lines)
    {
        var path = Path.Combine(Root(), "docs", "measured", "optimum.md");
        var page = File.ReadAllLines(path).ToList();
        var start = page.FindIndex(l => l == $"## {heading}");
        Assert.True(start >= 0, $"The page has no section {heading}.");
        var end = page.FindIndex(start + 1, l => l.StartsWith("## ", StringComparison.Ordinal));
        end = end < 0 ? page.Count : end;
        page.RemoveRange(start + 1, end - start - 1);
        page.InsertRange(start + 1, [string.Empty, .. lines, .. end == page.Count + end - start - 1 ? Array.Empty<string>() : [string.Empty]]);
        File.WriteAllText(path, string.Join('\n', page).TrimEnd('\n') + "\n");
    }

    private static string Root()
    {
        var at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "LayoutService.sln")))
        {
            at = Path.GetDirectoryName(at) ?? throw new InvalidOperationException("LayoutService.sln is above no test folder.");
        }

        return at;
    }
}
