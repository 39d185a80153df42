namespace LayoutService.Api.Plans.Answers;

/// <summary>One fixture where it will be.</summary>
public sealed record FixtureAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What it is.</summary>
    public required string Kind { get; init; }

    /// <summary>Its centre.</summary>
    public required PointAnswer At { get; init; }

    /// <summary>The bulkhead whose underside it is let into; absent in the ceiling.</summary>
    public string? BulkheadId { get; init; }

    /// <summary>Straight distance from where it was asked for, or from its place in the regular grid; 0 when it stayed.</summary>
    public required decimal Shift { get; init; }

    /// <summary>The same as text.</summary>
    public required string ShiftText { get; init; }

    /// <summary>Clear distances from the edge of its hole.</summary>
    public required ClearancesAnswer Clearances { get; init; }

    /// <summary>`as-asked`, `moved` (within its allowance, and clear) or `conflict` (something is in its way; the reasons say what).</summary>
    public required string Status { get; init; }

    /// <summary>True when the old ceiling that stays is opened over it, for its body, its driver box, or a hand; absent otherwise.</summary>
    public bool? OpensOldCeiling { get; init; }

    /// <summary>Why it was moved, what is in its way, which row is trimmed round it.</summary>
    public required IReadOnlyList<ReasonAnswer> Reasons { get; init; }
}

/// <summary>Clear distances from the edge of a hole, seen from above; 0 where they meet, absent where there is nothing of the kind.</summary>
/// <param name="Strap">To the nearest strap; in a bulkhead to the nearest wood behind its board.</param>
/// <param name="Joist">To the nearest joist, whether or not the body reaches up to it; absent in a bulkhead.</param>
/// <param name="Service">To the nearest service that the body comes near in height.</param>
/// <param name="Seam">To the nearest seam of the board.</param>
/// <param name="Wall">To the nearest wall or opening; in a bulkhead to its nearest edge.</param>
public sealed record ClearancesAnswer(decimal? Strap, decimal? Joist, decimal? Service, decimal? Seam, decimal? Wall);

/// <summary>Something heavy and what it hangs from.</summary>
/// <param name="Id">Its id.</param>
/// <param name="At">Where it hangs.</param>
/// <param name="Mass">Its mass, lb or kg.</param>
/// <param name="HangsFrom">Ids of joists, or of a block among `strapping.nailers`; empty when there is nothing to hang from.</param>
/// <param name="Said">What to do.</param>
public sealed record MountAnswer(string Id, PointAnswer At, decimal Mass, IReadOnlyList<string> HangsFrom, SentenceAnswer Said);

/// <summary>How the light grid came out.</summary>
public sealed record LightGridAnswer
{
    /// <summary>Ids of its lights.</summary>
    public required IReadOnlyList<string> Fixtures { get; init; }

    /// <summary>How many lights were asked for, or are needed for the light wanted.</summary>
    public required int Asked { get; init; }

    /// <summary>Lights by the lumen method before rounding to a regular grid; absent when no light was asked for.</summary>
    public int? Needed { get; init; }

    /// <summary>Average light reached on the work plane, lux; absent without `lumens`.</summary>
    public decimal? Lux { get; init; }

    /// <summary>Floor area that is lit, ft² or m².</summary>
    public required decimal Area { get; init; }

    /// <summary>Room index: area over half the perimeter and the mounting height. Absent when a height is missing.</summary>
    public decimal? RoomIndex { get; init; }

    /// <summary>From the work plane to the finished ceiling; absent when a height is missing.</summary>
    public decimal? MountingHeight { get; init; }

    /// <summary>Greatest spacing of the regular grid.</summary>
    public required decimal Spacing { get; init; }

    /// <summary>The same as text.</summary>
    public required string SpacingText { get; init; }

    /// <summary>Greatest spacing over mounting height; absent when a height is missing.</summary>
    public decimal? SpacingToHeight { get; init; }

    /// <summary>The greatest that the caller said the light's maker allows.</summary>
    public decimal? SpacingToHeightLimit { get; init; }

    /// <summary>Greatest distance of a light from its regular place.</summary>
    public required decimal Departure { get; init; }

    /// <summary>The parts of the room, each with a regular grid of its own.</summary>
    public required IReadOnlyList<GridArmAnswer> Arms { get; init; }

    /// <summary>A way for the cable from light to light, as an estimate for the electrician.</summary>
    public required CableAnswer Cable { get; init; }
}

/// <summary>A part of the room with a regular grid of its own.</summary>
/// <param name="Along">Lights along the joists.</param>
/// <param name="Across">Lights across the joists.</param>
/// <param name="AlongSpacing">Spacing along the joists; half of it is left at the ends.</param>
/// <param name="AcrossSpacing">Spacing across the joists; half of it is left at the ends.</param>
public sealed record GridArmAnswer(int Along, int Across, decimal AlongSpacing, decimal AcrossSpacing);

/// <summary>A way for the cable from light to light through the gap that the straps make: an estimate, never a permission.</summary>
/// <param name="Order">The lights in order.</param>
/// <param name="OnPlan">Its length along and across the joists.</param>
/// <param name="WithSlack">With slack: a tenth more, and 12 in or 300 mm at each light.</param>
/// <param name="WithSlackText">The same as text.</param>
public sealed record CableAnswer(IReadOnlyList<string> Order, decimal OnPlan, decimal WithSlack, string WithSlackText);
