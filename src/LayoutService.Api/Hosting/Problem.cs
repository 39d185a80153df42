using LayoutService.Api.Wire;

namespace LayoutService.Api.Hosting;

/// <summary>Why a request was not answered (RFC 9457). `type` leads to a page that explains it.</summary>
public sealed record Problem
{
    /// <summary>Which kind of problem: the address of a page that explains it.</summary>
    public required string Type { get; init; }

    /// <summary>The kind in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>This occurrence, as a sentence.</summary>
    public required string Detail { get; init; }

    /// <summary>The path that was called.</summary>
    public required string Instance { get; init; }

    /// <summary>Id of this call, the same as in the header `X-Request-Id`.</summary>
    public required string RequestId { get; init; }

    /// <summary>Every fault of the request, in the order of the body.</summary>
    public IReadOnlyList<Fault>? Errors { get; init; }

    /// <summary>Why no sensible plan exists.</summary>
    public IReadOnlyList<FindingAnswer>? Findings { get; init; }
}

/// <summary>Why no sensible plan exists, in trade words.</summary>
public sealed record FindingAnswer
{
    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>The sentence.</summary>
    public required string Text { get; init; }

    /// <summary>The values in it.</summary>
    public required IReadOnlyDictionary<string, string> Params { get; init; }

    /// <summary>Place of the room in a body with several; absent where the body is one room, or the finding is of all of them.</summary>
    public string? Pointer { get; init; }

    /// <summary>Ids of the places.</summary>
    public required IReadOnlyList<string> Where { get; init; }

    /// <summary>What a person could change.</summary>
    public required IReadOnlyList<Plans.Answers.SentenceAnswer> Remedies { get; init; }
}
