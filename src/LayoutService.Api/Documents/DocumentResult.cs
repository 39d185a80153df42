namespace LayoutService.Api.Documents;

/// <summary>Answers with a document.</summary>
internal sealed class DocumentResult(byte[] bytes, string contentType, string fileName, string? describedBy = null) : IResult
{
    /// <summary>What a browser that shows it may load and run; null where it shows nothing of its own.</summary>
    public string? Policy { get; init; }

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.ContentType = contentType;
        response.ContentLength = bytes.Length;
        response.Headers.ContentDisposition = $"attachment; filename=\"{fileName}\"";
        if (Policy is not null)
        {
            response.Headers.ContentSecurityPolicy = Policy;
        }

        if (describedBy is not null)
        {
            response.Headers.Link = $"<{describedBy}>; rel=\"describedby\"; type=\"{CsvMetadata.MediaType}\"";
        }

        return HttpMethods.IsHead(httpContext.Request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }
}
