using LayoutService.Api.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace LayoutService.Api.Tests.Contract;

/// <summary>Nothing of the service is deprecated, so a call of a small host of the tests is.</summary>
public class DeprecationTests(Service service) : IClassFixture<Service>
{
    private static readonly DateTimeOffset Since = new(2026, 3, 1, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task A_deprecated_call_says_since_when_until_when_and_where_to_read_of_it()
    {
        await using var host = Host();
        await host.StartAsync();
        using var client = host.GetTestClient();
        using var old = await client.GetAsync("/old");
        Assert.Equal("@1772323200", Assert.Single(old.Headers.GetValues("Deprecation")));
        Assert.Equal("Tue, 01 Sep 2026 00:00:00 GMT", Assert.Single(old.Headers.GetValues("Sunset")));
        Assert.Equal(["<https://example.org/new>; rel=\"deprecation\"; type=\"text/html\"", "<https://example.org/new>; rel=\"sunset\"; type=\"text/html\""], old.Headers.GetValues("Link"));
        using var refused = await client.GetAsync("/old?bad=1");
        Assert.Equal(400, (int)refused.StatusCode);
        Assert.True(refused.Headers.Contains("Deprecation") && refused.Headers.Contains("Sunset"));
        using var kept = await client.GetAsync("/kept");
        Assert.False(kept.Headers.Contains("Deprecation") || kept.Headers.Contains("Sunset"));
    }

    [Fact]
    public async Task A_deprecated_call_is_marked_for_the_contract()
    {
        await using var host = Host();
        await host.StartAsync();
        var calls = host.Services.GetRequiredService<Microsoft.AspNetCore.Routing.EndpointDataSource>().Endpoints;
        Assert.Equal(["/old"], calls.Where(call => call.Metadata.GetMetadata<ObsoleteAttribute>() is not null).Select(call => ((Microsoft.AspNetCore.Routing.RouteEndpoint)call).RoutePattern.RawText));
    }

    [Fact]
    public void A_call_that_goes_sooner_than_half_a_year_later_cannot_be_marked() =>
        Assert.Throws<ArgumentException>(() => WebApplication.CreateSlimBuilder().Build().MapGet("/old", () => "old").Deprecated(Since, Since.AddMonths(6).AddSeconds(-1), "/new"));

    [Fact]
    public async Task Nothing_of_the_contract_is_deprecated_and_no_answer_says_so()
    {
        Assert.DoesNotContain("\"deprecated\"", (await service.GetAsync("/openapi/v1.json")).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Deprecation", (await service.PostAsync("/v1/plans", SmallRoom.Text)).Headers.Keys);
    }

    private static WebApplication Host()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.UseTestServer();
        var app = builder.Build();
        app.MapGet("/old", (string? bad) => bad is null ? Results.Ok("old") : Results.BadRequest()).Deprecated(Since, Since.AddMonths(6), "https://example.org/new");
        app.MapGet("/kept", () => "kept");
        return app;
    }
}
