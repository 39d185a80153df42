using LayoutService.Api.Wire;

namespace LayoutService.Api.Jobs.Requests;

/// <summary>Many rooms as one order.</summary>
public sealed record JobRequest
{
    /// <summary>The caller's own name for this job; echoed unchanged.</summary>
    public string? Reference { get; init; }

    /// <summary>
    /// What all rooms share: members of a request for a plan. Each room is laid over it (RFC 7396): objects member by member,
    /// lists whole, and a null in a room takes a common member away. Its `units` are those of the job's own figures, else the
    /// first room's; its `document` heads the order.
    /// </summary>
    public WirePart? Common { get; init; }

    /// <summary>The rooms: requests for a plan, without what they share.</summary>
    public IReadOnlyList<WirePart>? Rooms { get; init; }
}
