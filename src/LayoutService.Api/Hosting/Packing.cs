using System.IO.Compression;
using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Hosting;

/// <summary>
/// The coding that a caller takes an answer in (RFC 9110, 12.5.3): br or gzip, whichever it likes more, br where it likes both alike;
/// none where it names neither, or the answer is too short to gain by it.
/// </summary>
internal static class Packing
{
    private const int LeastBytes = 1_000;

    /// <summary>The coding's name, or null for the bytes as they are.</summary>
    public static string? Of(HttpRequest request, int bytes)
    {
        if (bytes < LeastBytes || !StringWithQualityHeaderValue.TryParseList(request.Headers.AcceptEncoding, out var named))
        {
            return null;
        }

        var (br, gzip, plain) = (Liked("br") ?? Liked("*") ?? 0, Liked("gzip") ?? Liked("*") ?? 0, Liked("identity") ?? 0);
        var most = Math.Max(br, gzip);
        return most <= 0 || most < plain ? null : br >= gzip ? "br" : "gzip";

        double? Liked(string coding) => named.FirstOrDefault(n => n.Value.Equals(coding, StringComparison.OrdinalIgnoreCase)) is { } found ? found.Quality ?? 1 : null;
    }

    public static byte[] Pack(string coding, ReadOnlySpan<byte> body)
    {
        using var packed = new MemoryStream();
        using (Stream into = coding == "br" ? new BrotliStream(packed, CompressionLevel.Fastest, true) : new GZipStream(packed, CompressionLevel.Fastest, true))
        {
            into.Write(body);
        }

        return packed.ToArray();
    }
}
