using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>What a ceiling that is there already is made of.</summary>
public enum ExistingMaterial
{
    Gypsum,
    Plaster,
    Wood,
    Tile,
    Other,
}

/// <summary>A ceiling under the joists that is there already: it stays and is strapped over, or it comes down first.</summary>
public sealed record ExistingCeiling(ExistingMaterial? Material, Length Thickness, bool Stays);

public enum NeighbourUse
{
    Living,
    Attic,
    Garage,
    CrawlSpace,
    Outside,
    Other,
}

/// <summary>The space above the floor, or the one below the ceiling: its use and whether it is heated; null where not said.</summary>
public sealed record Neighbour(NeighbourUse? Use, bool? Heated);
