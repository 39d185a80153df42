using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Drawing.Paper;

/// <summary>A scale that a rule can be laid on: what 1 on the paper is in the room, and how a person says it.</summary>
internal sealed record PaperScale(double Ratio, string Said, double BarMillimetres, string BarSaid)
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private static readonly (double Ratio, string Said)[] Imperial =
        [(24, "1/2 in = 1 ft"), (32, "3/8 in = 1 ft"), (48, "1/4 in = 1 ft"), (64, "3/16 in = 1 ft"), (96, "1/8 in = 1 ft"), (192, "1/16 in = 1 ft")];

    private static readonly (double Ratio, string Said)[] Metric =
        [(20, "1:20"), (25, "1:25"), (50, "1:50"), (75, "1:75"), (100, "1:100"), (200, "1:200")];

    public double PointsPer(Length length) => length.Units / (double)Length.PerMillimetre * PointsPerMillimetre / Ratio;

    public double Bar => BarMillimetres * PointsPerMillimetre / Ratio;

    /// <summary>The largest usual scale at which the room fits; for a very large one the next full hundred.</summary>
    public static PaperScale Of(IReadOnlyList<Point> outline, UnitSystem units, double width, double height)
    {
        var room = (
            Width: (outline.Max(p => p.X.Units) - outline.Min(p => p.X.Units)) / (double)Length.PerMillimetre * PointsPerMillimetre,
            Height: (outline.Max(p => p.Y.Units) - outline.Min(p => p.Y.Units)) / (double)Length.PerMillimetre * PointsPerMillimetre);
        var least = Math.Max(room.Width / width, room.Height / height);
        var hundreds = Math.Ceiling(least / 100) * 100;
        var (ratio, said) = (units == UnitSystem.Imperial ? Imperial : Metric)
            .Append((hundreds, $"1:{hundreds.ToString(CultureInfo.InvariantCulture)}"))
            .First(scale => scale.Item1 >= least);
        return units == UnitSystem.Imperial
            ? new(ratio, said, 4 * 304.8, "4 ft")
            : new(ratio, said, 1000, "1 m");
    }
}
