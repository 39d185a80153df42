using System.Globalization;

namespace LayoutService.Api.Hosting;

/// <summary>Says of a call that it will go: in the contract, and in every answer of it.</summary>
public static class Deprecation
{
    /// <summary>
    /// Marks calls as deprecated since one moment and answered until another. Their answers carry <c>Deprecation</c> (RFC 9745: a moment
    /// as a structured field), <c>Sunset</c> (RFC 8594: a date as HTTP writes it) and a <c>Link</c> to what to do instead.
    /// </summary>
    /// <param name="calls">The calls.</param>
    /// <param name="since">When it was said.</param>
    /// <param name="until">When they may go; half a year later at the least.</param>
    /// <param name="page">Address of a page for people.</param>
    public static TCalls Deprecated<TCalls>(this TCalls calls, DateTimeOffset since, DateTimeOffset until, string page)
        where TCalls : IEndpointConventionBuilder
    {
        if (until < since.AddMonths(6))
        {
            throw new ArgumentException("A deprecated call is answered for half a year at the least.", nameof(until));
        }

        var deprecated = string.Create(CultureInfo.InvariantCulture, $"@{since.ToUnixTimeSeconds()}");
        var sunset = until.ToString("R", CultureInfo.InvariantCulture);
        var links = new[] { $"<{page}>; rel=\"deprecation\"; type=\"text/html\"", $"<{page}>; rel=\"sunset\"; type=\"text/html\"" };
        return calls.WithMetadata(new ObsoleteAttribute()).AddEndpointFilter((call, next) =>
        {
            var headers = call.HttpContext.Response.Headers;
            headers["Deprecation"] = deprecated;
            headers["Sunset"] = sunset;
            headers.Link = Microsoft.Extensions.Primitives.StringValues.Concat(headers.Link, links);
            return next(call);
        });
    }
}
