namespace LayoutService.Engine.Insulation;

/// <summary>The figures that batts are laid by, read from the tables by the root; each is a rule with its source.</summary>
public sealed record BattRules
{
    /// <summary>Most that a batt is squeezed, as a share of its thickness.</summary>
    public required decimal SqueezeMost { get; init; }

    /// <summary>How much wider than its bay a batt is cut.</summary>
    public required long Friction { get; init; }

    /// <summary>Narrowest and shortest piece.</summary>
    public required long LeastStrip { get; init; }

    /// <summary>A batt this much narrower than its bay still fills it: the survey's tolerance.</summary>
    public required long Tolerance { get; init; }

    /// <summary>Depth, in thicknesses of the batt, in which it can be pushed up between straps.</summary>
    public required decimal FoldDepth { get; init; }

    /// <summary>Gap between straps, in thicknesses of the batt, that it passes.</summary>
    public required decimal PassGap { get; init; }

    /// <summary>m²·K/W through one metre of joist.</summary>
    public required decimal WoodRsiPerMetre { get; init; }

    /// <summary>m²·K/W of a bay without a batt.</summary>
    public required decimal AirRsi { get; init; }

    /// <summary>Density of batts.</summary>
    public required decimal KilogramsPerCubicMetre { get; init; }

    public required IReadOnlyList<SqueezedBatt> Squeezed { get; init; }
}

/// <summary>What a batt of a nominal resistance and thickness is worth in a shallower space, as published.</summary>
public sealed record SqueezedBatt(decimal NominalRsi, long Thickness, long Depth, decimal Rsi);
