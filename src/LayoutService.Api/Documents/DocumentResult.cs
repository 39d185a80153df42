namespace LayoutService.Api.Documents;

/// <summary>Answers with a document.</summary>
internal sealed class DocumentResult(byte[] bytes, string contentType, string fileName, string? describedBy = null) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.ContentType = contentType;
        response.ContentLength = bytes.Length;
        response.Headers.ContentDisposition = $"attachment; filename=\"{fileName}\"";
        if (describedBy is not null)
        {
            response.Headers.Link = $"<{describedBy}>; rel=\"describedby\"; type=\"{CsvMetadata.MediaType}\"";
        }

        return HttpMethods.IsHead(httpContext.Request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }
}
