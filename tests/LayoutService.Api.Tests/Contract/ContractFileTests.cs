using System.Text.Json;

namespace LayoutService.Api.Tests.Contract;

public class ContractFileTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("/openapi/v1.json", "layout-service.v1.json")]
    [InlineData("/openapi/v1.yaml", "layout-service.v1.yaml")]
    public async Task The_committed_contract_is_the_one_that_is_served(string path, string file)
    {
        var served = await service.GetAsync(path);
        Assert.Equal(200, served.Status);
        if (Repository.Regenerate)
        {
            await File.WriteAllBytesAsync(Repository.OpenApi(file), served.Body);
        }

        Assert.Equal(await File.ReadAllTextAsync(Repository.OpenApi(file)), served.Text);
    }

    [Fact]
    public async Task The_contract_has_a_strong_tag_and_is_not_sent_twice()
    {
        using var client = service.CreateClient();
        using var first = await client.GetAsync("/openapi/v1.json");
        var tag = first.Headers.ETag!;
        Assert.False(tag.IsWeak);
        using var again = new HttpRequestMessage(HttpMethod.Get, "/openapi/v1.json");
        again.Headers.IfNoneMatch.Add(tag);
        using var second = await client.SendAsync(again);
        Assert.Equal(304, (int)second.StatusCode);
    }

    [Fact]
    public async Task The_typed_rendition_differs_only_in_that_a_length_is_a_number()
    {
        var union = (await service.GetAsync("/openapi/v1.json")).Json.GetProperty("components").GetProperty("schemas");
        var typed = (await service.GetAsync("/openapi/v1-typed.json")).Json.GetProperty("components").GetProperty("schemas");
        Assert.Equal(["number", "string"], union.GetProperty("Length").GetProperty("type").EnumerateArray().Select(t => t.GetString()));
        Assert.Equal("number", typed.GetProperty("Length").GetProperty("type").GetString());
        Assert.Equal(
            union.EnumerateObject().Where(s => s.Name != "Length").Select(s => s.ToString()),
            typed.EnumerateObject().Where(s => s.Name != "Length").Select(s => s.ToString()));
    }
}
