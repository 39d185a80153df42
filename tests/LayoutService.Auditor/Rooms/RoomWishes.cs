namespace LayoutService.Auditor.Rooms;

/// <summary>Which rooms a generator may make. As it stands: every family that has a sensible plan.</summary>
public sealed record RoomWishes
{
    /// <summary>Only walls along x and y.</summary>
    public bool OnlyOrthogonal { get; init; }

    /// <summary>Posts, chimneys and stair wells inside.</summary>
    public bool Openings { get; init; } = true;

    /// <summary>Joists at angles other than 0 and 90 degrees, in a few rooms.</summary>
    public bool ObliqueJoists { get; init; } = true;

    /// <summary>Doubled joists.</summary>
    public bool DoubledJoists { get; init; } = true;

    /// <summary>Jogs of a few centimetres in a wall.</summary>
    public bool Jogs { get; init; } = true;

    /// <summary>Joints other than on a joist may be allowed by the request.</summary>
    public bool OtherJoints { get; init; } = true;

    /// <summary>Lengths as texts in trade notation, in some rooms.</summary>
    public bool Texts { get; init; } = true;

    /// <summary>Optional members may be left out, so that defaults apply.</summary>
    public bool Defaults { get; init; } = true;

    /// <summary>True: always prices; false: never; null: either.</summary>
    public bool? Prices { get; init; }

    /// <summary>True: imperial; false: metric; null: either.</summary>
    public bool? Imperial { get; init; }

    /// <summary>Some stock may be limited in quantity, beside an unlimited one.</summary>
    public bool Quantities { get; init; } = true;

    /// <summary>Fixtures, a duct, mounts and a light grid, in a third of the rooms.</summary>
    public bool Fixtures { get; init; } = true;

    /// <summary>Batts, and services for them to go round, in some rooms.</summary>
    public bool Batts { get; init; } = true;

    /// <summary>Shortest and longest side of the box round the room, mm.</summary>
    public int LeastSide { get; init; } = 2000;
    public int MostSide { get; init; } = 12000;

    /// <summary>Orthogonal rooms, joists along x or y, no texts: the plainest that still vary.</summary>
    public static RoomWishes Plain => new() { OnlyOrthogonal = true, Openings = false, ObliqueJoists = false, Texts = false, Batts = false, Fixtures = false };
}
