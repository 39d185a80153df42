using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Contract;

public class LimitsPageTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task The_page_has_every_limit_with_its_value()
    {
        var page = File.ReadLines(Path.Combine(Repository.Root, "docs", "limits.md"))
            .Select(line => Regex.Match(line, @"^\| `(\w+)` \| (\d+) \|"))
            .Where(match => match.Success)
            .Select(match => (match.Groups[1].Value, long.Parse(match.Groups[2].Value)));
        var told = (await service.GetAsync("/v1/limits")).Json.EnumerateObject().Select(limit => (limit.Name, limit.Value.GetInt64()));
        Assert.Equal(told, page);
    }
}
