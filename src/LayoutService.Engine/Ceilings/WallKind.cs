namespace LayoutService.Engine.Ceilings;

/// <summary>What stands at an edge of the room.</summary>
public enum WallKind
{
    Concrete,
    Stud,

    /// <summary>Framed after the ceiling: there is nothing to fasten to yet.</summary>
    Later,

    /// <summary>No wall: the ceiling ends there, and its edge shows.</summary>
    Open,
}
