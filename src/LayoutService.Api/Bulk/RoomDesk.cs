using System.Text.Encodings.Web;
using System.Text.Json;
using LayoutService.Api.Bulk.Answers;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Bulk;

/// <summary>One line in, one line out: the way of a single call, and a fault of ours stays with its line.</summary>
internal sealed partial class RoomDesk(PlanDesk desk, EngineGate gate, ILogger<RoomDesk> log)
{
    private static readonly JsonWriterOptions AsAlone = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    /// <summary>Characters of a reference, as the rules of a request have it.</summary>
    private const int MaxReference = 100;

    /// <summary>The answer to a room, as bytes that end with LF.</summary>
    public async Task<RoomAnswered> AnswerAsync(BulkRoom room, CancellationToken stop)
    {
        var bytes = new PooledBytes();
        try
        {
            var line = await PlanAsync(room, stop);
            Write(bytes, line);
            return new(bytes, line.Kind == BulkLineWord.Plan);
        }
        catch (OperationCanceledException) when (!stop.IsCancellationRequested)
        {
            bytes.Clear();
            Write(bytes, Problem(room, null, ProblemResult.TimeIsUp()));
            return new(bytes, false);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            LogFailed(fault, room.Line.Number);
            bytes.Clear();
            Write(bytes, Problem(room, null, new(ProblemKind.Internal, "The service failed to answer this line; the fault is not in the request.")));
            return new(bytes, false);
        }
        catch
        {
            bytes.Dispose();
            throw;
        }
    }

    public static void Write(PooledBytes bytes, BulkLineAnswer line)
    {
        using var writer = new Utf8JsonWriter(bytes, AsAlone);
        JsonSerializer.Serialize(writer, line, WireJson.Options);
        writer.Flush();
        bytes.GetSpan(1)[0] = (byte)'\n';
        bytes.Advance(1);
    }

    private async ValueTask<BulkLineAnswer> PlanAsync(BulkRoom room, CancellationToken stop)
    {
        if (room.Line.TooLong)
        {
            return Problem(room, null, new(ProblemKind.TooLarge, $"The line is longer than {ServiceLimits.MaxBodyBytes} bytes."));
        }

        var json = room.Call.Common.Under(room.Line.Json);
        var body = JsonBody<PlanRequest>.Of(json);
        var (asked, refused) = desk.Accept(body);
        if (asked is null)
        {
            return Problem(room, ReferenceOf(json), refused!);
        }

        using var place = await gate.WaitAsync(stop);
        var (plan, none) = PlanDesk.Plan(asked, place);
        return plan is null
            ? Problem(room, asked.Reference, none!)
            : new()
            {
                Kind = BulkLineWord.Plan,
                Index = room.Index,
                Line = room.Line.Number,
                Reference = asked.Reference,
                Status = StatusCodes.Status200OK,
                Plan = PlanWriting.Of(plan, asked, PlanDesk.RequestDigestOf(body), room.Call.Blocks),
            };
    }

    private static BulkLineAnswer Problem(BulkRoom room, string? reference, ProblemResult problem) => new()
    {
        Kind = BulkLineWord.Problem,
        Index = room.Index,
        Line = room.Line.Number,
        Reference = reference,
        Status = problem.Kind.Status,
        Problem = problem.For(room.Call.Path, room.Call.RequestId),
    };

    /// <summary>The reference of a room that is refused, when it is JSON and the reference a text that may be one.</summary>
    private static string? ReferenceOf(ReadOnlyMemory<byte> json)
    {
        try
        {
            var root = JsonElement.Parse(json.Span, new JsonDocumentOptions { MaxDepth = SyntaxCheck.MaxDepth });
            return root.ValueKind == JsonValueKind.Object
                && root.TryGetProperty("reference", out var reference)
                && reference.ValueKind == JsonValueKind.String
                && reference.GetString() is { Length: <= MaxReference } text
                && !text.Any(char.IsControl) ? text : null;
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "Line {Line} of a call in bulk failed")]
    private partial void LogFailed(Exception fault, long line);
}

/// <summary>A room of a call in bulk.</summary>
internal readonly record struct BulkRoom(BulkCall Call, long Index, InputLine Line);

/// <summary>A room's line out. Whoever has written it gives its bytes back.</summary>
internal readonly record struct RoomAnswered(PooledBytes Bytes, bool Planned);

/// <summary>What holds for every room of a call in bulk.</summary>
internal sealed record BulkCall(CommonPart Common, Blocks Blocks, string Path, string RequestId);
