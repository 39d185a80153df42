using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Checks;

/// <summary>What the checks and cautions need to know of one fixture: what it is, its clearances and whether it is clear.</summary>
public sealed record FixtureFact
{
    public required string Id { get; init; }

    public required bool Light { get; init; }

    /// <summary>It is wired.</summary>
    public required bool Wired { get; init; }

    /// <summary>It moves, so that it shakes what holds it.</summary>
    public required bool Fan { get; init; }

    public required bool Sprinkler { get; init; }

    public required bool InsulationContact { get; init; }

    /// <summary>Its body reaches up between the joists.</summary>
    public required bool Deep { get; init; }

    /// <summary>What its hole keeps from straps and seams.</summary>
    public required Length Clear { get; init; }

    public Length? ToStrap { get; init; }

    public Length? ToSeam { get; init; }

    public Length? ToJoist { get; init; }

    public required bool InConflict { get; init; }
}

/// <summary>A light grid's figures against what was asked for; null where nothing was.</summary>
public sealed record GridFacts(
    decimal? Lux, decimal? LuxWanted, decimal? SpacingToHeight, decimal? SpacingToHeightLimit, bool HeightKnown, IReadOnlyList<string> Lights);
