using System.Text.Json;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Hosting;

/// <summary>Answers with a problem, whatever the caller accepts.</summary>
public sealed class ProblemResult(
    ProblemKind kind, string detail, IReadOnlyList<Fault>? errors = null, IReadOnlyList<FindingAnswer>? findings = null) : IResult
{
    public const string MediaType = "application/problem+json";

    public ProblemKind Kind => kind;

    /// <summary>A request that breaks rules: the one fault's own words, or how many there are.</summary>
    public static ProblemResult Invalid(IReadOnlyList<Fault> faults) =>
        new(ProblemKind.Invalid, faults.Count == 1 ? faults[0].Detail : $"The request has {faults.Count} faults.", faults);

    public static ProblemResult Busy() => new(ProblemKind.Busy, "All places for planning are taken; try again in a second.");

    /// <summary>A call was in the engine for as long as it may be.</summary>
    public static ProblemResult TimeIsUp() => new(ProblemKind.Busy, "Working this out took longer than one call may; ask for quick effort or for less at once.");

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var problem = For(httpContext.Request.Path, httpContext.TraceIdentifier);
        var response = httpContext.Response;
        response.StatusCode = kind.Status;
        response.ContentType = MediaType;
        response.Headers.CacheControl = "no-store";
        AddHeaders(response.Headers);
        var bytes = JsonSerializer.SerializeToUtf8Bytes(problem, WireJson.Options);
        response.ContentLength = bytes.Length;
        return HttpMethods.IsHead(httpContext.Request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }

    /// <summary>The problem as it is written.</summary>
    public Problem For(string path, string requestId)
    {
        Count();
        return new()
        {
            Type = kind.Address,
            Title = kind.Title,
            Status = kind.Status,
            Detail = detail,
            Instance = path,
            RequestId = requestId,
            Errors = errors,
            Findings = findings,
        };
    }

    private void Count()
    {
        foreach (var code in (errors ?? []).Select(e => e.Code).Concat((findings ?? []).Select(f => f.Code)).DefaultIfEmpty(kind.Name))
        {
            EngineWatch.Refused(kind.Status, code);
        }
    }

    private void AddHeaders(IHeaderDictionary headers)
    {
        if (kind == ProblemKind.NotJson)
        {
            headers.Accept = headers.Accept.Count == 0 ? "application/json" : headers.Accept;
            headers.AcceptEncoding = "identity";
        }

        if (kind.Status is 429 or 503 && !headers.ContainsKey("Retry-After"))
        {
            headers.RetryAfter = "1";
        }
    }
}
