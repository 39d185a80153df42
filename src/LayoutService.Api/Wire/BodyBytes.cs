using LayoutService.Api.Hosting;

namespace LayoutService.Api.Wire;

/// <summary>Reads a body up to a limit, whether its length is said beforehand or not.</summary>
internal static class BodyBytes
{
    public static async ValueTask<(ReadOnlyMemory<byte> Bytes, ProblemResult? Problem)> ReadAsync(HttpContext context)
    {
        var limit = ServiceLimits.MaxBodyBytes;
        if (context.Request.ContentLength > limit)
        {
            return (default, TooLarge(limit));
        }

        using var kept = new MemoryStream();
        var part = new byte[16 * 1024];
        try
        {
            int read;
            while ((read = await context.Request.Body.ReadAsync(part, context.RequestAborted)) > 0)
            {
                if (kept.Length + read > limit)
                {
                    return (default, TooLarge(limit));
                }

                kept.Write(part, 0, read);
            }
        }
        catch (BadHttpRequestException refused)
        {
            return (default, Refused(refused.StatusCode, limit));
        }

        return (kept.ToArray(), null);
    }

    private static ProblemResult Refused(int status, int limit) => status switch
    {
        StatusCodes.Status413PayloadTooLarge => TooLarge(limit),
        StatusCodes.Status408RequestTimeout => new(ProblemKind.Timeout, "The body did not arrive in time."),
        _ => new(ProblemKind.Unreadable, "The body broke off or is not framed as HTTP says.",
            [Fault.At("#", "body_broken", "The body broke off or is not framed as HTTP says.")]),
    };

    private static ProblemResult TooLarge(int limit) =>
        new(ProblemKind.TooLarge, $"The body is larger than {limit} bytes.");
}
