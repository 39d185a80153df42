using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>The board as it will hang: courses along the joists, each a line of pieces whose ends meet on rows.</summary>
public sealed record SheetPlan
{
    public required IReadOnlyList<Course> Courses { get; init; }

    public required IReadOnlyList<BoardPiece> Pieces { get; init; }

    public required IReadOnlyList<BoardJoint> Joints { get; init; }

    public required Length ButtJointLength { get; init; }

    public required Length TaperedJointLength { get; init; }

    /// <summary>Length of cut-edge joints that run along the joists (no taper on at least one side).</summary>
    public required Length CutEdgeJointLength { get; init; }

    /// <summary>Length of control joints, where the joists change direction.</summary>
    public Length ControlJointLength { get; init; }

    /// <summary>Length of edges at walls and openings.</summary>
    public required Length PerimeterLength { get; init; }

    public required IReadOnlyList<string> StartWalls { get; init; }

    /// <summary>Corner bead along edges without a wall.</summary>
    public IReadOnlyList<EdgeBead> EdgeBeads { get; init; } = [];

    /// <summary>Its length in all.</summary>
    public Length EdgeBeadLength => EdgeBeads.Aggregate(Length.Zero, (sum, bead) => sum + bead.Length);

    /// <summary>Corner bead along the edges of stairs and wells.</summary>
    public IReadOnlyList<WellBead> WellBeads { get; init; } = [];

    /// <summary>How many layers there are; 1 without any pieces.</summary>
    public int Layers => Pieces.Count == 0 ? 1 : Pieces[^1].Layer;

    /// <summary>The pieces and joints of one layer alone.</summary>
    public SheetPlan OfLayer(int layer)
    {
        if (Layers == 1)
        {
            return this;
        }

        IReadOnlyList<BoardPiece> pieces = [.. Pieces.Where(p => p.Layer == layer)];
        var ids = pieces.Select(p => p.Id).ToHashSet();
        return this with { Pieces = pieces, Joints = [.. Joints.Where(j => ids.Contains(j.PieceA))] };
    }
}

/// <summary>A strip of the ceiling between two course lines, across the joists from the outline's lowest coordinate.</summary>
public sealed record Course(string Id, int Layer, Length From, Length To);

/// <summary>One part cut from a sheet, drawn where it hangs; the ring is open, in the caller's coordinates.</summary>
public sealed record BoardPiece
{
    public required string Id { get; init; }

    public required string Course { get; init; }

    public required int Layer { get; init; }

    public required IReadOnlyList<Point> Outline { get; init; }

    /// <summary>Extent across the joists.</summary>
    public required Length Width { get; init; }

    /// <summary>Extent along the joists.</summary>
    public required Length Length { get; init; }

    /// <summary>Area of the ring, m².</summary>
    public required double AreaSquareMetres { get; init; }

    public required string StockId { get; init; }

    /// <summary>Butt ends of this piece; walls are not listed.</summary>
    public required IReadOnlyList<ButtEnd> Ends { get; init; }

    /// <summary>Holes in it, in the order of the fixtures.</summary>
    public IReadOnlyList<BoardCutout> Cutouts { get; init; } = [];

    public required bool MeasureInPlace { get; init; }

    /// <summary>What to keep when it is measured in place, and why.</summary>
    public IReadOnlyList<Sentence> Notes { get; init; } = [];

    /// <summary>Screws that fall on this piece.</summary>
    public required int Screws { get; init; }
}

/// <summary>A butt end: its place along the joists from the outline's lowest coordinate, and the straps behind it.</summary>
public sealed record ButtEnd(Length At, Length From, Length To, IReadOnlyList<string> Backing);

public enum BoardJointKind
{
    Butt,
    Tapered,
    CutEdge,

    /// <summary>A control joint: along a line where the joists change direction.</summary>
    Control,
}

/// <summary>A seam between two pieces, from one end to the other.</summary>
public sealed record BoardJoint(BoardJointKind Kind, string PieceA, string PieceB, Point From, Point To, Length Length);

/// <summary>Corner bead along one edge of a stair or well.</summary>
public sealed record WellBead(string OpeningId, Point From, Point To, Length Length);

/// <summary>Corner bead along an edge without a wall.</summary>
public sealed record EdgeBead(string WallId, Point From, Point To, Length Length);
