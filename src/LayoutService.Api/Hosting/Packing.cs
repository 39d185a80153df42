using System.IO.Compression;
using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Hosting;

/// <summary>
/// The coding that a caller takes an answer in (RFC 9110, 12.5.3): of those on offer the one that it likes most, the first where it likes
/// several alike; none where it names none of them, or likes the bytes as they are better.
/// </summary>
internal static class Packing
{
    public const string Brotli = "br";
    public const string Gzip = "gzip";

    /// <summary>The coding's name, or null for the bytes as they are.</summary>
    public static string? Of(HttpRequest request, params IEnumerable<string> offered)
    {
        if (!StringWithQualityHeaderValue.TryParseList(request.Headers.AcceptEncoding, out var named))
        {
            return null;
        }

        var best = offered.MaxBy(coding => Liked(coding) ?? Liked("*") ?? 0)!;
        var most = Liked(best) ?? Liked("*") ?? 0;
        return most > 0 && most >= (Liked("identity") ?? 0) ? best : null;

        double? Liked(string coding) => named.FirstOrDefault(n => n.Value.Equals(coding, StringComparison.OrdinalIgnoreCase)) is { } found ? found.Quality ?? 1 : null;
    }

    public static byte[] Pack(string coding, ReadOnlySpan<byte> body, CompressionLevel level)
    {
        using var packed = new MemoryStream();
        using (Stream into = coding == Brotli ? new BrotliStream(packed, level, true) : new GZipStream(packed, level, true))
        {
            into.Write(body);
        }

        return packed.ToArray();
    }
}
