using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Bulkheads;

/// <summary>Places along a unit vector.</summary>
internal static class Axis
{
    /// <summary>How far along the axis a place lies.</summary>
    public static double Along((double U, double V) place, (double U, double V) axis) => (place.U * axis.U) + (place.V * axis.V);

    /// <summary>That distance on a whole step, where the axis lies along or across the joists.</summary>
    public static double Snapped(FramedRoom room, double at, (double U, double V) axis) =>
        Math.Abs(axis.V) < 1e-9 ? Math.Sign(axis.U) * room.SnapNear((long)Math.Round(at * Math.Sign(axis.U)))
        : Math.Abs(axis.U) < 1e-9 ? Math.Sign(axis.V) * room.SnapDownAcross((long)Math.Round(at * Math.Sign(axis.V)) + (room.GridStep / 2))
        : at;
}
