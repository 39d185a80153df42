using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Bulk;

/// <summary>The two names of JSON Lines, and which a caller sends and takes.</summary>
internal static class BulkForms
{
    public const string Lines = "application/jsonl";
    public const string LinesToo = "application/x-ndjson";

    /// <summary>Both, as a header lists them.</summary>
    public const string Both = $"{Lines}, {LinesToo}";

    /// <summary>Whether a request's body is JSON Lines in plain UTF-8.</summary>
    public static bool Takes(HttpRequest request, out string wrong)
    {
        wrong = "";
        if (request.Headers.ContentEncoding.Count > 0 && request.Headers.ContentEncoding != "identity")
        {
            wrong = "The body has a content coding; send it without one.";
        }
        else if (!MediaTypeHeaderValue.TryParse(request.ContentType, out var type) || !(Is(type, Lines) || Is(type, LinesToo)))
        {
            wrong = $"The header Content-Type must be {Lines} or {LinesToo}.";
        }
        else if (type.Charset.HasValue && !type.Charset.Value!.Trim('"').Equals("utf-8", StringComparison.OrdinalIgnoreCase))
        {
            wrong = "JSON is sent in UTF-8; the header Content-Type names another character set.";
        }

        return wrong.Length == 0;
    }

    /// <summary>The form of the answer: the one that the caller names, else the first.</summary>
    public static string Answer(HttpRequest request) =>
        MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var ranges)
        && ranges.Any(r => Is(r, LinesToo) && r.Quality is not 0)
        && !ranges.Any(r => Is(r, Lines) && r.Quality is not 0) ? LinesToo : Lines;

    private static bool Is(MediaTypeHeaderValue type, string form) => type.MediaType.Equals(form, StringComparison.OrdinalIgnoreCase);
}
