namespace LayoutService.Api.Hosting;

/// <summary>Gives every call an id: the caller's own <c>X-Request-Id</c> when it is a plain word, else a new one.</summary>
public static class RequestIds
{
    public const string Header = "X-Request-Id";

    private const int MaxLength = 64;

    public static void UseRequestIds(this WebApplication app) => app.Use((context, next) =>
    {
        var asked = context.Request.Headers[Header];
        context.TraceIdentifier = asked is [{ } own] && IsPlain(own) ? own : Guid.NewGuid().ToString("N");
        context.Response.Headers[Header] = context.TraceIdentifier;
        context.Response.Headers.XContentTypeOptions = "nosniff";
        return next(context);
    });

    private static bool IsPlain(string id) =>
        id.Length is > 0 and <= MaxLength && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.');
}
