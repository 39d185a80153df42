using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Running;

/// <summary>Every call that a page shows with curl is made as it stands, to a running service.</summary>
[Collection(OwnProcess.Name)]
public sealed class PageSampleTests
{
    private static readonly string[] Pages = ["README.md", "docs/calling.md", "docs/scripting.md"];

    [NeedsFact("jq", "jq")]
    public async Task Every_curl_line_of_the_pages_is_answered()
    {
        await using var service = await RunningService.StartAsync();
        var folder = Directory.CreateTempSubdirectory("layout-pages").FullName;
        var samples = Pages.SelectMany(page => Regex.Matches(File.ReadAllText(Path.Combine(Repository.Root, page)), @"^```\w*\n(curl .*?)^```", RegexOptions.Multiline | RegexOptions.Singleline).Select(match => (Page: page, Text: match.Groups[1].Value))).ToList();
        Assert.True(samples.Count >= 4, $"only {samples.Count} samples were found");
        File.CreateSymbolicLink(Path.Combine(folder, "openapi"), Path.Combine(Repository.Root, "openapi"));
        File.CreateSymbolicLink(Path.Combine(folder, "docs"), Path.Combine(Repository.Root, "docs"));
        foreach (var (page, text) in samples)
        {
            var script = "set -euo pipefail\ncurl() { command curl --fail-with-body \"$@\"; }\n" + text.Replace("http://127.0.0.1:8080", service.Address.ToString().TrimEnd('/'), StringComparison.Ordinal);
            var failed = await Record.ExceptionAsync(() => Tool.RunAsync("bash", ["-c", script], TimeSpan.FromSeconds(60), folder));
            Assert.True(failed is null, $"{page}: {text}\n{failed?.Message}");
        }

        Directory.Delete(folder, recursive: true);
    }
}
