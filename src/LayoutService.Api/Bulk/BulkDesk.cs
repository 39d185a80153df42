using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Writing;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;

namespace LayoutService.Api.Bulk;

/// <summary>Takes a call in bulk in, as long as there is room for it, and sees it to its end.</summary>
internal sealed class BulkDesk(RoomDesk rooms, BulkPlaces places, EngineGate gate, ServiceSettings settings, IHostApplicationLifetime lifetime)
{
    public async Task<IResult> AnswerAsync(HttpContext context, Blocks blocks)
    {
        if (!places.TryEnter())
        {
            return new ProblemResult(ProblemKind.Busy, "All places for calls in bulk are taken; try again in a second.");
        }

        try
        {
            return await RunAsync(context, blocks);
        }
        finally
        {
            places.Leave();
        }
    }

    private async Task<IResult> RunAsync(HttpContext context, Blocks blocks)
    {
        LiftLimits(context);
        using var enough = new CancellationTokenSource();
        await using var stopping = lifetime.ApplicationStopping.Register(() => enough.CancelAfter(TimeSpan.FromSeconds(settings.BulkDrainSeconds)));
        using var reading = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, enough.Token);
        var idle = TimeSpan.FromSeconds(settings.BulkIdleSeconds);
        var writer = new LineWriter(context.Response.BodyWriter, idle, context.RequestAborted);
        var run = new BulkRun(rooms, writer, gate.Places);
        var ahead = new AheadReader(context.Request.Body, idle, () => run.IsPlanning);
        var pump = ahead.RunAsync(reading.Token);
        try
        {
            var lines = new LineQueue(ahead);
            var (common, refused) = await CommonOf(lines, reading.Token);
            if (refused is not null)
            {
                return refused;
            }

            context.Response.ContentType = BulkForms.Answer(context.Request);
            context.Response.Headers.CacheControl = "no-store";
            var call = new BulkCall(common, blocks, context.Request.Path, context.TraceIdentifier);
            await run.RunAsync(lines, call, enough.Token, context.RequestAborted);
        }
        catch (Exception left) when (left is OperationCanceledException or TimeoutException or IOException)
        {
            // The caller left, or takes nothing any more: cut, so that no half answer looks whole.
            context.Abort();
        }
        finally
        {
            await reading.CancelAsync();
            await pump;
        }

        return Results.Empty;
    }

    /// <summary>The common part of the first line; that line goes back when it is a room.</summary>
    private static async ValueTask<(CommonPart Common, ProblemResult? Refused)> CommonOf(LineQueue lines, CancellationToken stop)
    {
        if (await lines.NextAsync(stop) is not { } first)
        {
            return (CommonPart.None, null);
        }

        if (CommonPart.Read(first, out var refused) is { } common)
        {
            return (common, refused);
        }

        lines.PutBack(first);
        return (CommonPart.None, null);
    }

    /// <summary>
    /// The whole is not bounded, only each line; and a caller may send slowly, or take nothing while it sends: how long it may
    /// stand still is bounded here instead of by the server's rates.
    /// </summary>
    private static void LiftLimits(HttpContext context)
    {
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = null;
        }

        if (context.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } sending)
        {
            sending.MinDataRate = null;
        }

        if (context.Features.Get<IHttpMinResponseDataRateFeature>() is { } taking)
        {
            taking.MinDataRate = null;
        }
    }
}
