namespace LayoutService.Api.Plans.Answers;

/// <summary>The sheets as they will hang.</summary>
public sealed record SheetsAnswer
{
    /// <summary>The courses.</summary>
    public required IReadOnlyList<CourseAnswer> Courses { get; init; }

    /// <summary>The pieces.</summary>
    public required IReadOnlyList<BoardPieceAnswer> Pieces { get; init; }

    /// <summary>The seams.</summary>
    public required IReadOnlyList<BoardJointAnswer> Joints { get; init; }

    /// <summary>Length of butt joints.</summary>
    public required decimal ButtJointLength { get; init; }

    /// <summary>Length of tapered joints.</summary>
    public required decimal TaperedJointLength { get; init; }

    /// <summary>Length of seams along the joists without a taper on both sides.</summary>
    public required decimal CutEdgeJointLength { get; init; }

    /// <summary>Length of control joints, on the lines where the joists change direction; absent where all run one way.</summary>
    public decimal? ControlJointLength { get; init; }

    /// <summary>Length of edges at walls and openings.</summary>
    public required decimal PerimeterLength { get; init; }

    /// <summary>The walls that the first sheets start from.</summary>
    public required IReadOnlyList<string> StartWalls { get; init; }

    /// <summary>Corner bead round stairs and wells; absent where there are none.</summary>
    public IReadOnlyList<WellBeadAnswer>? WellBeads { get; init; }

    /// <summary>Corner bead along edges without a wall; absent where there are none.</summary>
    public IReadOnlyList<EdgeBeadAnswer>? EdgeBeads { get; init; }
}

/// <summary>Corner bead along one edge of a stair or well.</summary>
/// <param name="OpeningId">The stair or well.</param>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="Length">Its length.</param>
/// <param name="LengthText">The same as tape text, rounded down.</param>
public sealed record WellBeadAnswer(string OpeningId, PointAnswer From, PointAnswer To, decimal Length, string LengthText);

/// <summary>Corner bead along an edge without a wall.</summary>
/// <param name="WallId">The edge.</param>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="Length">Its length.</param>
/// <param name="LengthText">The same as tape text, rounded down.</param>
public sealed record EdgeBeadAnswer(string WallId, PointAnswer From, PointAnswer To, decimal Length, string LengthText);

/// <summary>A strip of the ceiling.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Layer">Its layer, from 1.</param>
/// <param name="From">Where it starts, across the joists; along them where the board is screwed to them.</param>
/// <param name="To">Where it ends, in the same direction.</param>
public sealed record CourseAnswer(string Id, int Layer, decimal From, decimal To);

/// <summary>One part cut from a sheet, drawn where it hangs.</summary>
public sealed record BoardPieceAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its course.</summary>
    public required string Course { get; init; }

    /// <summary>Its layer, from 1.</summary>
    public required int Layer { get; init; }

    /// <summary>Its corners; the first is not repeated.</summary>
    public required IReadOnlyList<PointAnswer> Outline { get; init; }

    /// <summary>Extent across the joists; along them where the board is screwed to them.</summary>
    public required decimal Width { get; init; }

    /// <summary>The same as tape text, rounded down.</summary>
    public required string WidthText { get; init; }

    /// <summary>Extent along the joists; across them where the board is screwed to them.</summary>
    public required decimal Length { get; init; }

    /// <summary>The same as tape text, rounded down.</summary>
    public required string LengthText { get; init; }

    /// <summary>Its area, ft² or m².</summary>
    public required decimal Area { get; init; }

    /// <summary>The stock it is cut from.</summary>
    public required string StockId { get; init; }

    /// <summary>Its butt ends.</summary>
    public required IReadOnlyList<ButtEndAnswer> Ends { get; init; }

    /// <summary>Holes in it. A piece with a hole keeps the way it lies.</summary>
    public required IReadOnlyList<CutoutAnswer> Cutouts { get; init; }

    /// <summary>True when it is measured in place before it is cut.</summary>
    public bool? MeasureInPlace { get; init; }

    /// <summary>What to keep when it is measured in place.</summary>
    public required IReadOnlyList<SentenceAnswer> Notes { get; init; }

    /// <summary>Screws in it.</summary>
    public required int Screws { get; init; }
}

/// <summary>A butt end and what is behind it.</summary>
/// <param name="At">Along the joists; across them where the board is screwed to them, and `from` and `to` along them.</param>
/// <param name="AtText">The same as text.</param>
/// <param name="From">Where it starts, across the joists.</param>
/// <param name="To">Where it ends, across the joists.</param>
/// <param name="Backing">Ids of the rows, straps or nailers behind it; of the joists where the board is screwed to them.</param>
public sealed record ButtEndAnswer(decimal At, string AtText, decimal From, decimal To, IReadOnlyList<string> Backing);

/// <summary>A hole in a piece.</summary>
/// <param name="FixtureId">The fixture.</param>
/// <param name="Corner">The piece's corner measured from, where it hangs.</param>
/// <param name="Centre">Its centre, where it hangs.</param>
/// <param name="Size">Its size.</param>
/// <param name="MarkText">Where to mark it, as seen on the finished face: the plan is seen from above, the sheet is cut face up.</param>
public sealed record CutoutAnswer(string FixtureId, PointAnswer Corner, PointAnswer Centre, HoleSizeAnswer Size, string MarkText);

/// <summary>Size of a hole: `diameter`, or `width` along x and `height` along y.</summary>
/// <param name="Diameter">Of a round hole.</param>
/// <param name="Width">Along x.</param>
/// <param name="Height">Along y.</param>
public sealed record HoleSizeAnswer(decimal? Diameter, decimal? Width, decimal? Height);

/// <summary>A seam between two pieces.</summary>
/// <param name="Kind">`butt`, `tapered`, `cut-edge` or `control`.</param>
/// <param name="PieceA">One piece.</param>
/// <param name="PieceB">The other.</param>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="Length">Its length.</param>
public sealed record BoardJointAnswer(
    string Kind, string PieceA, string PieceB, PointAnswer From, PointAnswer To, decimal Length);
