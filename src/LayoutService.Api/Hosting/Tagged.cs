using System.IO.Compression;
using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Gives a good answer a strong ETag over its bytes and leave to be kept, and answers 304 when the caller has it already
/// (RFC 9110, 8.8.3 and 13.1.2). It goes out packed to a caller who takes it so (see <see cref="Packing"/>). For calls that are safe: GET, and QUERY (RFC 10008).
/// </summary>
/// <param name="seconds">How long the answer may be kept without asking again.</param>
internal sealed class Tagged(int seconds) : IEndpointFilter
{
    // bytes; a shorter answer gains nothing by it
    private const int LeastPacked = 1_000;

    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next) =>
        await next(context) is IResult answer ? new TaggedResult(answer, seconds) : throw new InvalidOperationException("A tagged call answers with a result.");

    private sealed class TaggedResult(IResult answer, int seconds) : IResult
    {
        public async Task ExecuteAsync(HttpContext httpContext)
        {
            var response = httpContext.Response;
            var wire = response.Body;
            using var kept = new MemoryStream();
            response.Body = kept;
            try
            {
                await answer.ExecuteAsync(httpContext);
                await response.BodyWriter.FlushAsync(httpContext.RequestAborted);
            }
            finally
            {
                response.Body = wire;
            }

            ReadOnlyMemory<byte> body = kept.GetBuffer().AsMemory(0, (int)kept.Length);
            if (response.StatusCode == StatusCodes.Status200OK)
            {
                // a strong tag holds for one coding only
                var coding = body.Length < LeastPacked ? null : Packing.Of(httpContext.Request, Packing.Brotli, Packing.Gzip);
                var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(body.Span))}{(coding is null ? string.Empty : "-" + coding)}\"");
                response.Headers.Append(HeaderNames.Vary, HeaderNames.AcceptEncoding);
                response.Headers.ETag = tag.ToString();
                response.Headers.CacheControl = $"max-age={seconds}";
                if (Has(httpContext.Request, tag))
                {
                    response.StatusCode = StatusCodes.Status304NotModified;
                    response.ContentLength = null;
                    response.Headers.ContentType = default;
                    return;
                }

                if (coding is not null)
                {
                    response.Headers.ContentEncoding = coding;
                    body = Packing.Pack(coding, body.Span, CompressionLevel.Fastest);
                }
            }

            response.ContentLength = body.Length;
            await wire.WriteAsync(body, httpContext.RequestAborted);
        }

        private static bool Has(HttpRequest request, EntityTagHeaderValue tag) =>
            EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out var known)
            && known.Any(one => one.Equals(EntityTagHeaderValue.Any) || one.Compare(tag, useStrongComparison: false));
    }
}
