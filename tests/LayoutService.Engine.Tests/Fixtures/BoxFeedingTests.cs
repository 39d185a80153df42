using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Fixtures;

public sealed class BoxFeedingTests
{
    [Theory]
    [InlineData(150, 60, 40, true)] // diagonal 72
    [InlineData(70, 60, 40, false)]
    public void A_box_passes_a_round_hole_when_its_end_fits_corner_to_corner(int hole, int width, int height, bool passes) =>
        Assert.Equal(passes, BoxFeeding.Passes(Box(width, height), Hole(hole)));

    [Fact]
    public void Beside_a_joist_the_end_needs_as_much_of_the_hole_as_its_corners_reach()
    {
        // a hole 150 across, an end 60 × 40: laid 40 deep, its far corners stand 30 out, so the far side lies at most
        // sqrt(75² − 30²) = 68.74 from the centre, and the joist's face 28.74 or less on that side
        var least = BoxFeeding.LeastFromFace(Box(60, 40), Hole(150)) / (double)Length.PerMillimetre;
        Assert.Equal(-28.74, least, 2);
    }

    [Fact]
    public void A_box_that_just_passes_wants_the_whole_hole()
    {
        // an end 90 × 120 in a hole 150 across: its diagonal is the diameter
        var least = BoxFeeding.LeastFromFace(Box(90, 120, 200), Hole(150)) / (double)Length.PerMillimetre;
        Assert.InRange(least, 44.9, 60.1);
    }

    [Theory]
    [InlineData(360, null, true)]
    [InlineData(50, null, false)]
    [InlineData(360, 30, false)]
    public void A_box_lies_flat_in_its_bay(int bay, int? depth, bool parks) =>
        Assert.Equal(parks, BoxFeeding.Parks(Box(60, 40), Units(bay), depth is { } d ? Units(d) : null));

    private static RemoteBox Box(int width, int height, int length = 120) =>
        new(Length.FromMillimetres(width), Length.FromMillimetres(length), Length.FromMillimetres(height));

    private static Hole Hole(int across) => new("a", new Uv(0, 0), Units(across) / 2, Units(across) / 2, true, 0);

    private static long Units(int millimetres) => millimetres * (long)Length.PerMillimetre;
}
