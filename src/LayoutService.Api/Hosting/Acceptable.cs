using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Hosting;

/// <summary>Refuses a call whose <c>Accept</c> allows none of the forms that the answer has (406). No header allows all.</summary>
internal sealed class Acceptable(params string[] forms) : IEndpointFilter
{
    public ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var accept = context.HttpContext.Request.Headers.Accept;
        return accept.Count == 0 || Allows(accept!)
            ? next(context)
            : ValueTask.FromResult<object?>(new ProblemResult(
                ProblemKind.NotAcceptable, $"The header Accept allows none of the forms of this answer: {string.Join(", ", forms)}."));
    }

    private bool Allows(IList<string> accept)
    {
        if (!MediaTypeHeaderValue.TryParseList(accept, out var ranges))
        {
            return false;
        }

        return forms.Any(form => Quality(ranges, form) > 0);
    }

    /// <summary>Quality that the most exact range gives to a form (RFC 9110, 12.5.1).</summary>
    private static double Quality(IEnumerable<MediaTypeHeaderValue> ranges, string form)
    {
        var offered = MediaTypeHeaderValue.Parse(form);
        return ranges
            .Where(range => range.MatchesAllTypes || (range.MatchesAllSubTypes ? range.Type.Equals(offered.Type, StringComparison.OrdinalIgnoreCase) : range.MediaType.Equals(offered.MediaType, StringComparison.OrdinalIgnoreCase)))
            .OrderBy(range => range.MatchesAllTypes ? 2 : range.MatchesAllSubTypes ? 1 : 0)
            .Select(range => range.Quality ?? 1)
            .FirstOrDefault();
    }
}
