using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Fixtures;

/// <summary>The fixtures as they will be, the light grid they came from, and what hangs. Points are the caller's.</summary>
public sealed record FixturePlan(IReadOnlyList<PlannedFixture> Fixtures, LightGridPlan? Grid, IReadOnlyList<PlannedMount> Mounts)
{
    public static readonly FixturePlan None = new([], null, []);
}

public enum FixtureStatus
{
    AsAsked,

    /// <summary>Moved within its allowance, and clear.</summary>
    Moved,

    /// <summary>Something is still in its way; the reasons say what.</summary>
    Conflict,
}

/// <summary>One fixture where it will be.</summary>
public sealed record PlannedFixture
{
    public required FixtureWish Wish { get; init; }

    public string Id => Wish.Id;

    public required Point At { get; init; }

    /// <summary>Straight distance from where it was asked for.</summary>
    public required Length Shift { get; init; }

    /// <summary>The bulkhead whose underside it is let into; null in the ceiling.</summary>
    public string? BulkheadId { get; init; }

    public required HoleClearances Clearances { get; init; }

    public required FixtureStatus Status { get; init; }

    /// <summary>True when the old ceiling that stays is opened over it, for its body, its driver box, or a hand.</summary>
    public bool OpensOldCeiling { get; init; }

    /// <summary>Why it was moved, what is in its way, and which row is trimmed round it.</summary>
    public required IReadOnlyList<Reason> Reasons { get; init; }
}

/// <summary>
/// Clear distances from the edge of a hole, seen from above; 0 where they meet, null where there is nothing of the kind. A
/// joist counts whether or not the body reaches it; a service where the body comes within its clearance in height.
/// </summary>
public sealed record HoleClearances(Length? Strap, Length? Joist, Length? Service, Length? Seam, Length? Wall);

/// <summary>Something heavy and what it hangs from: joists or a block, by id.</summary>
public sealed record PlannedMount(MountWish Wish, IReadOnlyList<string> HangsFrom, Sentence Said);

/// <summary>How a light grid came out.</summary>
public sealed record LightGridPlan
{
    public required IReadOnlyList<string> Fixtures { get; init; }

    public required int Asked { get; init; }

    /// <summary>How many a calculation asks for; null without one.</summary>
    public int? Needed { get; init; }

    /// <summary>Average light reached on the work plane, lux; null without lumens.</summary>
    public decimal? Lux { get; init; }

    /// <summary>Floor area counted, m².</summary>
    public required decimal AreaSquareMetres { get; init; }

    /// <summary>Room index; null when no height is known.</summary>
    public decimal? RoomIndex { get; init; }

    /// <summary>From the work plane to the finished ceiling; null when no height is known.</summary>
    public Length? MountingHeight { get; init; }

    /// <summary>Greatest spacing of the regular grid.</summary>
    public required Length Spacing { get; init; }

    /// <summary>Greatest spacing over mounting height; null when no height is known.</summary>
    public decimal? SpacingToHeight { get; init; }

    public decimal? SpacingToHeightLimit { get; init; }

    /// <summary>Greatest distance of a light from its regular place.</summary>
    public required Length Departure { get; init; }

    /// <summary>The parts of the room that were laid out, each with its own regular grid.</summary>
    public required IReadOnlyList<GridArm> Arms { get; init; }

    public required CablePath Cable { get; init; }
}

/// <summary>One part of a grid: lines of lights along the joists and across them, and the regular spacing both ways.</summary>
public sealed record GridArm(int AlongCount, int AcrossCount, Length AlongSpacing, Length AcrossSpacing);

/// <summary>The order in which a cable may visit the lights, its length on plan and with slack.</summary>
public sealed record CablePath(IReadOnlyList<string> Order, Length OnPlan, Length WithSlack);
