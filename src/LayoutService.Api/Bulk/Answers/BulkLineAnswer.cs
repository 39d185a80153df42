using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Answers;

namespace LayoutService.Api.Bulk.Answers;

/// <summary>One line of an answer in bulk. Lines stand in the order of the rooms; the last is the summary.</summary>
public sealed record BulkLineAnswer
{
    /// <summary>What the line holds.</summary>
    public required BulkLineWord Kind { get; init; }

    /// <summary>Number of the room, from 0; blank lines and the common part are not counted. Of the summary, `nextIndex`.</summary>
    public required long Index { get; init; }

    /// <summary>Number of the room's line in what was sent, from 1. Of the summary, how many lines were read.</summary>
    public required long Line { get; init; }

    /// <summary>The room's own `reference`, when it could be read.</summary>
    public string? Reference { get; init; }

    /// <summary>The HTTP status that the room would have had alone. Of the summary, 200.</summary>
    public required int Status { get; init; }

    /// <summary>The plan, with the bytes that the room would have had alone.</summary>
    public PlanAnswer? Plan { get; init; }

    /// <summary>Why there is no plan.</summary>
    public Problem? Problem { get; init; }

    /// <summary>What became of all rooms.</summary>
    public BulkSummaryAnswer? Summary { get; init; }
}

/// <summary>What a line of an answer in bulk holds.</summary>
public enum BulkLineWord
{
    Plan,
    Problem,
    Summary,
}

/// <summary>The end of an answer in bulk. An answer without it was cut.</summary>
public sealed record BulkSummaryAnswer
{
    /// <summary>Rooms answered.</summary>
    public required long Count { get; init; }

    /// <summary>Rooms with a plan.</summary>
    public required long Ok { get; init; }

    /// <summary>Rooms with a problem.</summary>
    public required long Failed { get; init; }

    /// <summary>Whether everything that was sent was answered. When not, send the rest again from `nextIndex`.</summary>
    public required bool Complete { get; init; }

    /// <summary>Number of the first room that was not answered.</summary>
    public required long NextIndex { get; init; }
}
