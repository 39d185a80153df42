using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Fixtures;

/// <summary>Turns a cutout into a hole in the working frame. A rectangle that lies askew to the joists is kept as its box.</summary>
public static class FixtureHoles
{
    public static Hole Of(FramedRoom room, FixtureWish wish, Uv at)
    {
        var (width, height) = (wish.Cutout.Width.Units, wish.Cutout.Height.Units);
        var (u, v) = room.Field.RunDegrees switch
        {
            _ when wish.Cutout.Round => (width, width),
            0 => (width, height),
            90 => (height, width),
            var degrees => Turned(width, height, (double)degrees * Math.PI / 180),
        };
        return new Hole(wish.Id, at, (u + 1) / 2, (v + 1) / 2, wish.Cutout.Round, Math.Max(wish.EdgeClearance.Units, wish.ClipReach.Units));
    }

    private static (long U, long V) Turned(long width, long height, double radians)
    {
        var (cos, sin) = (Math.Abs(Math.Cos(radians)), Math.Abs(Math.Sin(radians)));
        return ((long)Math.Ceiling((width * cos) + (height * sin)), (long)Math.Ceiling((width * sin) + (height * cos)));
    }
}
