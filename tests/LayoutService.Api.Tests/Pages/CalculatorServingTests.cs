using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;

namespace LayoutService.Api.Tests.Pages;

/// <summary>How the calculator and the pages for people are served.</summary>
public sealed class CalculatorServingTests(Service service) : IClassFixture<Service>
{
    private const string Yard = "https://yard.example";

    [Fact]
    public async Task The_module_has_an_address_that_never_gives_anything_else_and_a_hash_to_pin_it_by()
    {
        var current = await CurrentAsync();
        using var client = service.CreateClient();
        using var reply = await client.GetAsync(current.Address);
        var bytes = await reply.Content.ReadAsByteArrayAsync();
        Assert.Equal(current.Integrity, "sha384-" + Convert.ToBase64String(SHA384.HashData(bytes)));
        Assert.Contains(Convert.ToHexStringLower(SHA256.HashData(bytes))[..12], current.Address, StringComparison.Ordinal);
        Assert.Equal("public, max-age=31536000, immutable", reply.Headers.GetValues("Cache-Control").Single());
        Assert.Equal("text/javascript", reply.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", reply.Headers.GetValues("X-Content-Type-Options").Single());

        using var again = new HttpRequestMessage(HttpMethod.Get, current.Address) { Headers = { IfNoneMatch = { reply.Headers.ETag! } } };
        using var same = await client.SendAsync(again);
        Assert.Equal(304, (int)same.StatusCode);
        using var other = await client.GetAsync(current.Address.Replace("/calculator/", "/calculator/0", StringComparison.Ordinal));
        Assert.Equal(404, (int)other.StatusCode);
    }

    [Fact]
    public async Task The_module_comes_packed_to_those_who_can_unpack_it()
    {
        var current = await CurrentAsync();
        using var client = service.CreateClient();
        using var ask = new HttpRequestMessage(HttpMethod.Get, current.Address) { Headers = { { "Accept-Encoding", "br, gzip" } } };
        using var reply = await client.SendAsync(ask);
        Assert.Equal(["gzip"], reply.Content.Headers.ContentEncoding);
        Assert.Equal("Accept-Encoding", reply.Headers.GetValues("Vary").Single());
        await using var unpacked = new GZipStream(await reply.Content.ReadAsStreamAsync(), CompressionMode.Decompress);
        Assert.Equal(current.Integrity, "sha384-" + Convert.ToBase64String(await SHA384.HashDataAsync(unpacked)));
    }

    [Fact]
    public async Task A_page_of_another_origin_may_ask_for_exactly_what_is_documented()
    {
        using var client = service.CreateClient();
        using var ask = new HttpRequestMessage(HttpMethod.Options, "/v1/plans")
        {
            Headers = { { "Origin", Yard }, { "Access-Control-Request-Method", "POST" }, { "Access-Control-Request-Headers", "content-type" } },
        };
        using var may = await client.SendAsync(ask);
        Assert.Equal(204, (int)may.StatusCode);
        Assert.Equal("*", may.Headers.GetValues("Access-Control-Allow-Origin").Single());
        Assert.Equal("GET,POST", may.Headers.GetValues("Access-Control-Allow-Methods").Single());
        Assert.Equal("Content-Type,X-Request-Id", may.Headers.GetValues("Access-Control-Allow-Headers").Single());
        Assert.Equal("7200", may.Headers.GetValues("Access-Control-Max-Age").Single());
        Assert.False(may.Headers.Contains("Access-Control-Allow-Credentials"));
    }

    [Theory]
    [InlineData("{", 400)]
    [InlineData(null, 200)]
    public async Task Answers_and_problems_alike_may_be_read_by_a_page_of_another_origin(string? body, int status)
    {
        using var client = service.CreateClient();
        using var ask = new HttpRequestMessage(HttpMethod.Post, "/v1/plans") { Headers = { { "Origin", Yard } }, Content = new StringContent(body ?? SmallRoom.Text, System.Text.Encoding.UTF8, "application/json") };
        using var reply = await client.SendAsync(ask);
        Assert.Equal(status, (int)reply.StatusCode);
        Assert.Equal("*", reply.Headers.GetValues("Access-Control-Allow-Origin").Single());
        Assert.Equal("X-Request-Id,Retry-After,ETag,Content-Disposition,RateLimit,RateLimit-Policy", string.Join(',', reply.Headers.GetValues("Access-Control-Expose-Headers")));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/developers")]
    public async Task Pages_for_people_let_nothing_run_but_the_service_s_own_files(string address)
    {
        var page = await service.GetAsync(address);
        var policy = page.Headers["Content-Security-Policy"];
        Assert.StartsWith("default-src 'none'; script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("require-trusted-types-for 'script'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotMatch("<style|style=\"|<script>| on[a-z]+=\"", page.Text);
    }

    [Fact]
    public async Task The_developers_page_lists_every_kind_of_problem_every_limit_and_every_rule()
    {
        var page = (await service.GetAsync("/developers")).Text;
        Assert.All(Hosting.ProblemKind.All, kind => Assert.Contains($"href=\"{kind.Address}\"", page, StringComparison.Ordinal));
        Assert.All((await service.GetAsync("/v1/limits")).Json.EnumerateObject(), limit => Assert.Contains($"<dt>{limit.Name}</dt>", page, StringComparison.Ordinal));
        Assert.All((await service.GetAsync("/v1/rules")).Json.GetProperty("rules").EnumerateArray(), rule => Assert.Contains($"href=\"/v1/rules/{rule.GetProperty("id").GetString()}\"", page, StringComparison.Ordinal));
        Assert.Contains((await CurrentAsync()).Integrity.Replace("+", "&#x2B;", StringComparison.Ordinal), page.Replace("+", "&#x2B;", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private async Task<(string Address, string Integrity)> CurrentAsync()
    {
        JsonElement current = (await service.GetAsync("/calculator/current.json")).Json;
        return (current.GetProperty("address").GetString()!, current.GetProperty("integrity").GetString()!);
    }
}
