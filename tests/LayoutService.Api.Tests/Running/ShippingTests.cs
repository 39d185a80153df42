using System.Text.Json;
using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Running;

/// <summary>What is shipped is pinned.</summary>
[Collection(OwnProcess.Name)]
public sealed class ShippingTests
{
    [Fact]
    public void The_image_is_pinned_runs_without_rights_and_says_how_it_is()
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "Dockerfile"));
        var bases = lines.Where(line => line.StartsWith("FROM ", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, bases.Count);
        Assert.All(bases, line => Assert.Matches(@"^FROM \S+:10\.0\.\d+(-noble(-chiseled)?)? AS ", line));
        Assert.Contains("chiseled", bases[1], StringComparison.Ordinal);
        Assert.Contains("USER $APP_UID", lines);
        Assert.Contains(lines, line => line.Contains("--locked-mode", StringComparison.Ordinal));
        Assert.Contains(lines, line => Regex.IsMatch(line, @"^HEALTHCHECK .*CMD \[""dotnet"", ""LayoutService\.Api\.dll"", ""health""\]$"));
        Assert.StartsWith("ENTRYPOINT [", lines[^1]);
    }

    [Fact]
    public async Task The_health_check_of_the_image_tells_an_instance_that_answers_from_none()
    {
        await using var service = await RunningService.StartAsync();
        var program = Path.Combine(AppContext.BaseDirectory, "LayoutService.Api.dll");
        var port = service.Address.Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
        await Tool.RunAsync("dotnet", [program, "health"], TimeSpan.FromSeconds(30), null, ("ASPNETCORE_HTTP_PORTS", port));
        service.Terminate();
        await service.EndedAsync(TimeSpan.FromSeconds(30));
        var none = await Record.ExceptionAsync(() => Tool.RunAsync("dotnet", [program, "health"], TimeSpan.FromSeconds(30), null, ("ASPNETCORE_HTTP_PORTS", port)));
        Assert.Contains("ended with 1", none?.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_project_has_its_lock_file()
    {
        var projects = Directory.GetFiles(Repository.Root, "*.csproj", SearchOption.AllDirectories);
        Assert.True(projects.Length > 5);
        foreach (var project in projects)
        {
            var file = Path.Combine(Path.GetDirectoryName(project)!, "packages.lock.json");
            var packages = JsonDocument.Parse(File.ReadAllText(file)).RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(framework => framework.Value.EnumerateObject());
            Assert.All(
                packages.Where(package => package.Value.GetProperty("type").GetString() != "Project"),
                package => Assert.True(package.Value.TryGetProperty("contentHash", out _), $"{file}: {package.Name}"));
        }
    }
}
