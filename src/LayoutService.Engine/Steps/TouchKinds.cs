namespace LayoutService.Engine.Steps;

/// <summary>What a step can touch: the kinds of a plan's things that carry an id.</summary>
public static class TouchKinds
{
    public const string Joist = "joist";

    /// <summary>The clear space between two joists.</summary>
    public const string Bay = "bay";

    public const string Row = "row";

    /// <summary>One length of strap in a row.</summary>
    public const string Piece = "piece";

    public const string Bulkhead = "bulkhead";

    /// <summary>One length of a bulkhead's frame.</summary>
    public const string Member = "member";

    /// <summary>A wall inside the room.</summary>
    public const string Partition = "partition";

    public const string Nailer = "nailer";

    public const string Scab = "scab";

    /// <summary>One strip of batts in a bay.</summary>
    public const string Fill = "fill";

    /// <summary>One bought length in the cut plan.</summary>
    public const string Stock = "stock";

    /// <summary>One bought sheet in the cut plan.</summary>
    public const string SheetStock = "sheet-stock";

    public const string Fixture = "fixture";

    public const string Mount = "mount";

    /// <summary>One part cut from a sheet.</summary>
    public const string BoardPiece = "board-piece";
}
