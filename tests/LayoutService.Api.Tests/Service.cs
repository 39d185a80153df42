using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using LayoutService.Api.Tests.Running;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace LayoutService.Api.Tests;

/// <summary>The service as it runs, in the environment named, spoken to over HTTP only.</summary>
public class Service : WebApplicationFactory<Program>
{
    /// <summary>Name of the environment it runs in.</summary>
    protected virtual string RunsIn => RunningService.RunsIn;

    /// <summary>Settings of an operator, by configuration key.</summary>
    public Dictionary<string, string> Settings { get; } = [];

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment(RunsIn);
        foreach (var (key, value) in Settings)
        {
            builder.UseSetting(key, value);
        }
    }

    public Task<HttpReply> PostAsync(string path, string json) => PostAsync(path, Encoding.UTF8.GetBytes(json));

    public async Task<HttpReply> PostAsync(string path, byte[] body, string mediaType = "application/json")
    {
        using var client = CreateClient();
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(mediaType);
        using var response = await client.PostAsync(path, content);
        return await HttpReply.OfAsync(response);
    }

    public Task<HttpReply> GetAsync(string path, string? accept = null) => SendAsync(HttpMethod.Get, path, accept);

    public async Task<HttpReply> SendAsync(HttpMethod method, string path, string? accept = null, string? json = null)
    {
        using var client = CreateClient();
        using var request = new HttpRequestMessage(method, path);
        if (accept is not null)
        {
            request.Headers.TryAddWithoutValidation("Accept", accept);
        }

        if (json is not null)
        {
            request.Content = new StringContent(json, Encoding.UTF8, "application/json");
        }

        using var response = await client.SendAsync(request);
        return await HttpReply.OfAsync(response);
    }
}

/// <summary>What came back over HTTP.</summary>
public sealed record HttpReply(int Status, string? MediaType, byte[] Body, IReadOnlyDictionary<string, string> Headers)
{
    public string Text => Encoding.UTF8.GetString(Body);

    public JsonElement Json => JsonDocument.Parse(Body).RootElement;

    /// <summary>Faults as one line each: pointer, code and sentence.</summary>
    public IReadOnlyList<string> Faults => [.. Json.GetProperty("errors").EnumerateArray().Select(e =>
        $"{e.GetProperty("pointer").GetString()} {e.GetProperty("code").GetString()}: {e.GetProperty("detail").GetString()}")];

    /// <summary>Codes of the faults.</summary>
    public IReadOnlyList<string> Codes => [.. Json.GetProperty("errors").EnumerateArray().Select(e => e.GetProperty("code").GetString()!)];

    public static async Task<HttpReply> OfAsync(HttpResponseMessage response)
    {
        var headers = response.Headers.Concat(response.Content.Headers)
            .ToDictionary(h => h.Key, h => string.Join(", ", h.Value), StringComparer.OrdinalIgnoreCase);
        return new(
            (int)response.StatusCode,
            response.Content.Headers.ContentType?.MediaType,
            await response.Content.ReadAsByteArrayAsync(),
            headers);
    }
}
