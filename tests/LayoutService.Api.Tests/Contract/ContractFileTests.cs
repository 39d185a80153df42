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

    [Fact]
    public async Task The_newer_rendition_has_the_safe_call_and_the_items_of_a_sequence_and_the_same_schemas()
    {
        var contract = (await service.GetAsync("/openapi/v1.json")).Json;
        var newer = (await service.GetAsync("/openapi/v1-3.2.json")).Json;
        Assert.Equal("3.2.0", newer.GetProperty("openapi").GetString());
        var plans = newer.GetProperty("paths").GetProperty("/v1/plans");
        Assert.Equal(plans.GetProperty("post").GetProperty("requestBody").ToString(), plans.GetProperty("query").GetProperty("requestBody").ToString());
        var bulk = newer.GetProperty("paths").GetProperty("/v1/plans/bulk").GetProperty("post");
        Assert.Equal("#/components/schemas/BulkLineAnswer", bulk.GetProperty("responses").GetProperty("200").GetProperty("content").GetProperty("application/jsonl").GetProperty("itemSchema").GetProperty("$ref").GetString());
        Assert.Equal(contract.GetProperty("components").ToString(), newer.GetProperty("components").ToString());
    }
}
