using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace LayoutService.Api.Tests.Bulk;

/// <summary>A call whose body is sent piece by piece while its answer is read: HTTP/1.1 by hand, both ways chunked.</summary>
internal sealed class OpenCall : IDisposable
{
    private readonly TcpClient connection = new();
    private StreamReader answer = null!;
    private bool headRead;
    private string held = "";

    public static async Task<OpenCall> ToAsync(Uri service, string path = "/v1/plans/bulk?include=summary", string form = BulkLines.MediaType)
    {
        var call = new OpenCall();
        await call.connection.ConnectAsync(service.Host, service.Port);
        call.answer = new StreamReader(call.connection.GetStream(), Encoding.UTF8);
        await call.WriteAsync($"POST {path} HTTP/1.1\r\nHost: {service.Authority}\r\nContent-Type: {form}\r\nTransfer-Encoding: chunked\r\n\r\n");
        return call;
    }

    public Task SendAsync(string text) => WriteAsync(string.Create(CultureInfo.InvariantCulture, $"{Encoding.UTF8.GetByteCount(text):x}\r\n{text}\r\n"));

    public Task EndAsync() => WriteAsync("0\r\n\r\n");

    /// <summary>First line of the answer's head, the rest of which is passed over.</summary>
    public async Task<string> HeadAsync()
    {
        headRead = true;
        var first = await answer.ReadLineAsync() ?? "";
        while (await answer.ReadLineAsync() is { Length: > 0 })
        {
        }

        return first;
    }

    /// <summary>The next line of the answer's body.</summary>
    public async Task<string> LineAsync()
    {
        if (!headRead)
        {
            Assert.StartsWith("HTTP/1.1 200", await HeadAsync());
        }

        int end;
        while ((end = held.IndexOf('\n', StringComparison.Ordinal)) < 0)
        {
            held += await ChunkAsync();
        }

        var line = held[..end];
        held = held[(end + 1)..];
        return line;
    }

    public void Dispose() => connection.Dispose();

    private async Task<string> ChunkAsync()
    {
        var length = int.Parse(await answer.ReadLineAsync() ?? "0", NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        Assert.True(length > 0, "The answer ended.");
        var chunk = new char[length];
        Assert.Equal(length, await answer.ReadBlockAsync(chunk));
        await answer.ReadLineAsync();
        return new string(chunk);
    }

    private async Task WriteAsync(string text) => await connection.GetStream().WriteAsync(Encoding.UTF8.GetBytes(text));
}
