using System.Reflection;
using LayoutService.Api.Hosting;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Wire;

/// <summary>
/// A JSON body bound from a request: either what was read, or the problem to answer with. The framework's own binder is
/// not used, because it stops at the first fault, names no place, and differs between environments.
/// </summary>
public sealed class JsonBody<T> : IBindableFromHttpContext<JsonBody<T>>, IEndpointParameterMetadataProvider
    where T : class
{
    private JsonBody(JsonReading<T>? reading, ProblemResult? problem)
    {
        Reading = reading;
        Problem = problem;
    }

    /// <summary>What was read, with its faults; null when the body never came to be read.</summary>
    public JsonReading<T>? Reading { get; }

    /// <summary>What to answer when the body cannot be read.</summary>
    public ProblemResult? Problem { get; }

    public static async ValueTask<JsonBody<T>?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        if (!IsPlainJson(context.Request, out var wrong))
        {
            return new(null, new(ProblemKind.NotJson, wrong));
        }

        var (bytes, problem) = await BodyBytes.ReadAsync(context);
        if (problem is not null)
        {
            return new(null, problem);
        }

        return Of(bytes);
    }

    /// <summary>A body that came by another way, read by the same rules.</summary>
    public static JsonBody<T> Of(ReadOnlyMemory<byte> json)
    {
        var reading = JsonReading<T>.Of(json);
        return reading.Faults.Count == 0
            ? new(reading, null)
            : new(reading, Unreadable(reading.Faults));
    }

    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata(["application/json"], typeof(T)));

    private static ProblemResult Unreadable(IReadOnlyList<Fault> faults) =>
        new(ProblemKind.Unreadable, faults.Count == 1 ? faults[0].Detail : $"The body has {faults.Count} faults.", faults);

    private static bool IsPlainJson(HttpRequest request, out string wrong)
    {
        wrong = "";
        if (request.Headers.ContentEncoding.Count > 0 && request.Headers.ContentEncoding != "identity")
        {
            wrong = "The body has a content coding; send it without one.";
        }
        else if (!MediaTypeHeaderValue.TryParse(request.ContentType, out var type))
        {
            wrong = "The header Content-Type is missing; it must be application/json.";
        }
        else if (!type.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase))
        {
            wrong = "The header Content-Type must be application/json.";
        }
        else if (type.Charset.HasValue && !type.Charset.Value!.Trim('"').Equals("utf-8", StringComparison.OrdinalIgnoreCase))
        {
            wrong = "JSON is sent in UTF-8; the header Content-Type names another character set.";
        }

        return wrong.Length == 0;
    }
}
