using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Takeoff;

/// <summary>All that a takeoff is counted from: the plans as they will be built, and what the caller said of stock and prices.</summary>
public sealed record TakeoffFacts
{
    public required StrappingPlan Strapping { get; init; }

    public required SheetPlan Sheets { get; init; }

    public required CutPlan CutPlan { get; init; }

    public FixturePlan Fixtures { get; init; } = FixturePlan.None;

    public BulkheadPlan Bulkheads { get; init; } = BulkheadPlan.None;

    public required StrappingWish StrappingWish { get; init; }

    public required SheetWish SheetWish { get; init; }

    /// <summary>The batts as they will lie; null when none were asked for.</summary>
    public InsulationPlan? Insulation { get; init; }

    public InsulationWish? InsulationWish { get; init; }

    /// <summary>Null when no price was given: every line is then listed as unpriced.</summary>
    public PriceList? Prices { get; init; }

    /// <summary>An old ceiling between joists and straps, which their screws go through.</summary>
    public Length Through { get; init; }

    /// <summary>Ruleset id; decides how far a board screw must reach into the strap.</summary>
    public required string Ruleset { get; init; }

    /// <summary>Feet and pounds, or metres and kilograms, for tape and compound.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Says a length as a person reads it off a tape; used in descriptions only.</summary>
    public required Func<Length, string> TapeText { get; init; }

    public MassTable Masses { get; init; } = MassTable.Published;

    public Allowances Allowances { get; init; } = Allowances.Usual;
}
