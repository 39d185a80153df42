using System.Net.Http.Headers;
using System.Runtime.InteropServices;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace LayoutService.GuidedFuzz;

/// <summary>The service in this process, with its assembly made to count the branches that it takes (SharpFuzz), one body at a time.</summary>
internal sealed class Target : WebApplicationFactory<global::Program>
{
    /// <summary>Places of the map of branches.</summary>
    public const int Places = 1 << 16;

    private readonly nint _map = Marshal.AllocHGlobal(Places);
    private HttpClient? _client;

    public Target()
    {
        Clear();
        unsafe
        {
            SharpFuzz.Common.Trace.SharedMem = (byte*)_map;
        }
    }

    /// <summary>How often each branch was taken by the last body, modulo 256.</summary>
    public ReadOnlySpan<byte> Taken => Map();

    /// <summary>The status, or 0 where the service threw.</summary>
    public async Task<int> PostAsync(byte[] body)
    {
        _client ??= CreateClient();
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        Clear();
        try
        {
            using var response = await _client.PostAsync(new Uri("/v1/plans/check", UriKind.Relative), content);
            await response.Content.ReadAsByteArrayAsync();
            return (int)response.StatusCode;
        }
        catch (Exception e)
        {
            await Console.Error.WriteLineAsync(e.ToString());
            return 0;
        }
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder) => builder.UseEnvironment("Production");

    private unsafe Span<byte> Map() => new((byte*)_map, Places);

    // the first branch of a body is told apart by none of the body before
    private void Clear()
    {
        SharpFuzz.Common.Trace.PrevLocation = 0;
        Map().Clear();
    }
}
