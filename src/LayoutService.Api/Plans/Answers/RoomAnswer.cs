namespace LayoutService.Api.Plans.Answers;

/// <summary>One wall.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Edge">Its edge of the outline as sent.</param>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="Length">Its length.</param>
/// <param name="LengthText">The same as text.</param>
/// <param name="Kind">What it is, as sent: `concrete`, `stud` or `later`; absent when that was not said.</param>
public sealed record WallAnswer(string Id, int Edge, PointAnswer From, PointAnswer To, decimal Length, string LengthText, string? Kind);

/// <summary>The joists and the bays between them.</summary>
/// <param name="Members">The joists.</param>
/// <param name="Bays">The bays.</param>
/// <param name="Breaks">Lines where the joists change direction; absent where all run one way.</param>
public sealed record JoistsAnswer(IReadOnlyList<JoistAnswer> Members, IReadOnlyList<BayAnswer> Bays, IReadOnlyList<RunBreakAnswer>? Breaks = null);

/// <summary>A line where the joists change direction: straps and board end at it on both sides.</summary>
/// <param name="Id">Its id.</param>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="Length">Its length.</param>
/// <param name="LengthText">The same as text.</param>
/// <param name="Fields">The joist fields at its two sides.</param>
public sealed record RunBreakAnswer(string Id, PointAnswer From, PointAnswer To, decimal Length, string LengthText, IReadOnlyList<string> Fields);

/// <summary>One joist over the room.</summary>
public sealed record JoistAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its field.</summary>
    public required string Field { get; init; }

    /// <summary>Its centre line across the run.</summary>
    public required decimal At { get; init; }

    /// <summary>The same as text.</summary>
    public required string AtText { get; init; }

    /// <summary>Width of its nailing face.</summary>
    public required decimal Face { get; init; }

    /// <summary>Start of its centre line over the room.</summary>
    public required PointAnswer From { get; init; }

    /// <summary>End of its centre line over the room.</summary>
    public required PointAnswer To { get; init; }

    /// <summary>The support that it is a part of, when it is doubled.</summary>
    public string? Support { get; init; }
}

/// <summary>The clear space between two joist faces.</summary>
/// <param name="Id">Its id.</param>
/// <param name="From">Where it starts, across the run.</param>
/// <param name="To">Where it ends, across the run.</param>
/// <param name="Width">Its clear width.</param>
/// <param name="WidthText">The same as text.</param>
/// <param name="AlongFrom">Where along the joists it begins to be so, when the joists of the room differ along their run.</param>
/// <param name="AlongTo">Where along the joists that ends.</param>
/// <param name="RunDegrees">Direction of the joists at its sides, when those of the room run more than one way.</param>
public sealed record BayAnswer(string Id, decimal From, decimal To, decimal Width, string WidthText, decimal? AlongFrom = null, decimal? AlongTo = null, decimal? RunDegrees = null);

/// <summary>One step of the work.</summary>
public sealed record StepAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>The sentence.</summary>
    public required string Text { get; init; }

    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>The values in the sentence.</summary>
    public required IReadOnlyDictionary<string, string> Params { get; init; }

    /// <summary>What it touches.</summary>
    public required IReadOnlyList<TouchAnswer> Touches { get; init; }

    /// <summary>True when someone else must look before the work goes on.</summary>
    public bool? Hold { get; init; }
}

/// <summary>A thing that a step touches.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Id">Its id.</param>
public sealed record TouchAnswer(string Kind, string Id);

/// <summary>What another choice would have cost or saved.</summary>
public sealed record AlternativeAnswer
{
    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>The sentence.</summary>
    public required string Text { get; init; }

    /// <summary>The values in it.</summary>
    public required IReadOnlyDictionary<string, string> Params { get; init; }

    /// <summary>Ids of the things it is about.</summary>
    public required IReadOnlyList<string> Of { get; init; }

    /// <summary>Money saved; negative when it costs more.</summary>
    public decimal? Saving { get; init; }
}
