namespace LayoutService.Api.Hosting;

/// <summary>Answers HEAD wherever GET is answered: the same headers and no body (RFC 9110, 9.3.2).</summary>
public static class HeadRequests
{
    public static void UseHead(this WebApplication app) => app.Use(async (context, next) =>
    {
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await next(context);
            return;
        }

        var body = context.Response.Body;
        context.Request.Method = HttpMethods.Get;
        context.Response.Body = Stream.Null;
        try
        {
            await next(context);
        }
        finally
        {
            context.Request.Method = HttpMethods.Head;
            context.Response.Body = body;
        }
    });
}
