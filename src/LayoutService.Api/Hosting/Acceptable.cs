using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Hosting;

/// <summary>Refuses a call whose <c>Accept</c> allows none of the forms that the answer has (406). No header allows all.</summary>
internal sealed class Acceptable(params string[] usual) : IEndpointFilter
{
    public ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var accept = context.HttpContext.Request.Headers.Accept;
        var forms = context.HttpContext.GetEndpoint()?.Metadata.GetMetadata<OfferedForms>()?.MediaTypes ?? usual;
        return accept.Count == 0 || Best(accept!, forms) is not null
            ? next(context)
            : ValueTask.FromResult<object?>(new ProblemResult(
                ProblemKind.NotAcceptable, $"The header Accept allows none of the forms of this answer: {string.Join(", ", forms)}."));
    }

    /// <summary>
    /// The form that the caller likes best, the first of equals; null when none is allowed or the header cannot be read.
    /// No header allows all.
    /// </summary>
    public static string? Best(IList<string> accept, IReadOnlyList<string> forms)
    {
        if (accept.Count == 0)
        {
            return forms[0];
        }

        return MediaTypeHeaderValue.TryParseList(accept, out var ranges)
            ? forms.Select(form => (Form: form, Quality: Quality(ranges, form))).Where(f => f.Quality > 0).OrderByDescending(f => f.Quality).FirstOrDefault().Form
            : null;
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

/// <summary>The forms that the answer of a call has, the usual one first; for calls that have more than JSON.</summary>
internal sealed record OfferedForms(IReadOnlyList<string> MediaTypes);
