using System.Net;
using LayoutService.Api.Bulk;
using Microsoft.AspNetCore.Diagnostics;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Turns everything that the framework refuses or that fails into a problem, and serves the page of each kind.
/// </summary>
public static class ProblemPages
{
    public static void UseProblems(this WebApplication app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandler = Failed,
            AllowStatusCode404Response = true,
            SuppressDiagnosticsCallback = failed => failed.Exception is OperationCanceledException,
        });
        app.UseStatusCodePages(context => Bare(context.HttpContext));
    }

    public static void MapProblems(this WebApplication app) =>
        app.MapGet("/problems/{name}", Page)
            .WithName("getProblem")
            .WithTags("Operation")
            .WithSummary("What a kind of problem means")
            .WithDescription("The page that a problem's `type` leads to.")
            .Produces<ProblemKindAnswer>()
            .Produces<Problem>(StatusCodes.Status404NotFound, ProblemResult.MediaType)
            .Produces<Problem>(StatusCodes.Status500InternalServerError, ProblemResult.MediaType);

    private static IResult Page(string name, HttpRequest request)
    {
        request.HttpContext.Response.Headers.ContentSecurityPolicy = "default-src 'none'";
        var kind = ProblemKind.All.FirstOrDefault(k => k.Name == name);
        if (kind is null)
        {
            return new ProblemResult(ProblemKind.NotFound, "No kind of problem has this name.");
        }

        return request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase)
            ? Results.Content(Html(kind), "text/html; charset=utf-8")
            : JsonAnswer.Of(new ProblemKindAnswer(kind.Address, kind.Status, kind.Title, kind.Text));
    }

    private static string Html(ProblemKind kind) => $"""
        <!doctype html>
        <html lang="en"><head><meta charset="utf-8"><title>{WebUtility.HtmlEncode(kind.Title)}</title></head>
        <body><h1>{WebUtility.HtmlEncode(kind.Title)}</h1><p>HTTP status {kind.Status}</p><p>{WebUtility.HtmlEncode(kind.Text)}</p></body></html>

        """;

    private static Task Failed(HttpContext context)
    {
        var error = context.Features.Get<IExceptionHandlerFeature>()?.Error;
        var result = error switch
        {
            BadHttpRequestException refused => new ProblemResult(KindOf(refused.StatusCode), "The request is not framed as HTTP says."),
            OperationCanceledException => ProblemResult.TimeIsUp(),
            _ => new ProblemResult(ProblemKind.Internal, "The service failed to answer; the fault is not in the request."),
        };
        return result.ExecuteAsync(context);
    }

    /// <summary>An answer of the framework with a status and no body.</summary>
    private static Task Bare(HttpContext context)
    {
        var kind = KindOf(context.Response.StatusCode);
        var detail = kind.Status switch
        {
            404 => "No resource has this address.",
            405 => $"The method {Known(context.Request.Method)} is not allowed here.",
            415 => $"The header Content-Type must be {Taken(context).Replace(", ", " or ", StringComparison.Ordinal)}.",
            _ => kind.Title + ".",
        };
        if (kind == ProblemKind.NotJson)
        {
            context.Response.Headers.Accept = Taken(context);
        }

        return new ProblemResult(kind, detail).ExecuteAsync(context);
    }

    private static string Taken(HttpContext context) =>
        BulkEndpoints.IsAsked(context.Request) ? BulkForms.Both : "application/json";

    private static string Known(string method) =>
        method is "GET" or "HEAD" or "POST" or "PUT" or "DELETE" or "PATCH" or "OPTIONS" or "TRACE" or "QUERY" ? method : "used";

    private static ProblemKind KindOf(int status) =>
        ProblemKind.All.FirstOrDefault(k => k.Status == status)
        ?? (status < 500 ? ProblemKind.Unreadable : ProblemKind.Internal);
}

/// <summary>What a kind of problem means.</summary>
/// <param name="Type">Its address.</param>
/// <param name="Status">HTTP status.</param>
/// <param name="Title">The kind in a few words.</param>
/// <param name="Text">What it means and what to do.</param>
public sealed record ProblemKindAnswer(string Type, int Status, string Title, string Text);
