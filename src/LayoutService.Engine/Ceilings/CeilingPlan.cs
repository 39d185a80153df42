using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>One edge of the outline, and what stands there; null when that was not said.</summary>
public sealed record WallLine(string Id, int Edge, Point From, Point To, Length Length, WallKind? Kind = null);

/// <summary>One joist: its centre line across the run from the outline's lowest coordinate, and where it lies over the room.</summary>
public sealed record JoistMember(string Id, string Field, Length At, Length Face, Point From, Point To, string? Support);

/// <summary>
/// The clear space between two neighbouring joist faces (or a wall and a joist face). <see cref="Along"/> is the stretch
/// along the joists over which it is that wide, from the outline's lowest coordinate; null when that is all of it.
/// <see cref="Fields"/> are the numbers of the joist fields at its sides: none between walls alone.
/// </summary>
public sealed record JoistBay(string Id, Length From, Length To, Length Width, IReadOnlyList<int> Fields, (Length From, Length To)? Along = null)
{
    /// <summary>Direction of the joists at its sides, degrees; null where all of the room's run one way.</summary>
    public decimal? RunDegrees { get; init; }
}

public sealed record JoistPlan(IReadOnlyList<JoistMember> Members, IReadOnlyList<JoistBay> Bays)
{
    /// <summary>Lines where the joists change direction; none where all run one way.</summary>
    public IReadOnlyList<RunBreak> Breaks { get; init; } = [];
}

/// <summary>One step of the work, in order. <see cref="Hold"/> marks a point where someone else must look before going on.</summary>
public sealed record WorkStep(string Id, Sentence Sentence, IReadOnlyList<Touch> Touches, bool Hold);

public sealed record Touch(string Kind, string Id);

/// <summary>What another choice would have cost or saved.</summary>
public sealed record Alternative(Sentence Sentence, IReadOnlyList<string> Of, decimal? Saving);

/// <summary>The figures a person decides by.</summary>
public sealed record PlanSummary
{
    public required int Rows { get; init; }

    public required int StrapPieces { get; init; }

    public required int LengthsToBuy { get; init; }

    public required int SheetsToBuy { get; init; }

    public required Length ButtJointLength { get; init; }

    /// <summary>From the finished floor to the finished ceiling; null when a height or the floor build-up is missing.</summary>
    public required Length? FinishedHeight { get; init; }

    public required Length? LowestUnderside { get; init; }

    public int FixturesMoved { get; init; }

    public int FixturesInConflict { get; init; }

    public required decimal MassKilograms { get; init; }

    /// <summary>Mass of the heaviest sheet to be lifted.</summary>
    public required decimal HeaviestLiftKilograms { get; init; }

    public required decimal? Cost { get; init; }

    public required int ChecksFailed { get; init; }
}
