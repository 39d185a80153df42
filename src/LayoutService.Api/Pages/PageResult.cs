using System.Net;
using System.Text;

namespace LayoutService.Api.Pages;

/// <summary>
/// A page for a person, under a policy that lets nothing run or load but the service's own files: no script or style in the markup,
/// and no text that becomes markup (Trusted Types).
/// </summary>
internal sealed class PageResult(string title, string head, string body) : IResult
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'; "
        + "frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types 'none'";

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var headers = httpContext.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.CacheControl = "no-cache";
        headers["Referrer-Policy"] = "no-referrer";
        httpContext.Response.ContentType = "text/html; charset=utf-8";
        return httpContext.Response.Body.WriteAsync(Encoding.UTF8.GetBytes(Html)).AsTask();
    }

    /// <summary>A text as it stands in markup.</summary>
    public static string Text(string? text) => WebUtility.HtmlEncode(text ?? string.Empty);

    private string Html => $"""
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>{Text(title)}</title>
        <link rel="icon" href="{PageEndpoints.IconAddress}" type="image/svg+xml">
        <link rel="stylesheet" href="{PageEndpoints.StyleAddress}">
        {head}
        </head>
        <body>
        {body}
        </body>
        </html>

        """;
}
