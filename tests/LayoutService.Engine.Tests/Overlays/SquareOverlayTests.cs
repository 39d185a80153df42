using LayoutService.Engine.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace LayoutService.Engine.Tests.Overlays;

/// <summary>The short way for rectangles, against the general overlay and buffer of NetTopologySuite.</summary>
public sealed class SquareOverlayTests
{
    private static readonly PrecisionModel Whole = new(1);
    private static readonly GeometryFactory Factory = new(Whole);

    [Theory]
    [InlineData(SpatialFunction.Union)]
    [InlineData(SpatialFunction.Difference)]
    [InlineData(SpatialFunction.Intersection)]
    public void Two_rectangles_give_what_the_general_overlay_gives(SpatialFunction function)
    {
        var random = new Random(7);
        var answered = 0;
        for (var i = 0; i < 8000; i++)
        {
            var (one, other) = (Box(random), Box(random));
            if (SquareOverlay.Of(one, other, function) is { } found)
            {
                answered++;
                // where two only touch the general overlay has a line or a corner in it, which is no area
                var expected = OverlayNG.Overlay(one, other, function, Whole);
                Assert.Equal(expected.Area, found.Area);
                Assert.Equal(0, OverlayNG.Overlay(found, expected, SpatialFunction.SymDifference, Whole).Area);
                Assert.True(found.IsEmpty || found.IsValid);
            }
        }

        Assert.InRange(answered, 400, 8000);
    }

    [Fact]
    public void A_rectangle_grows_and_shrinks_as_by_a_mitred_buffer()
    {
        var random = new Random(8);
        for (var i = 0; i < 1000; i++)
        {
            var (box, by) = (Box(random), random.Next(-6, 7));
            var expected = box.Buffer(by, new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, 5.0));
            var found = SquareOverlay.Grown(box, by)!;
            Assert.Equal(expected.Area, found.Area);
            Assert.True(found.IsEmpty == expected.IsEmpty && (found.IsEmpty || found.EnvelopeInternal.Equals(expected.EnvelopeInternal)));
        }
    }

    [Fact]
    public void What_is_no_rectangle_between_whole_units_is_left_to_the_general_overlay()
    {
        var box = Factory.CreatePolygon([new(0, 0), new(4, 0), new(4, 4), new(0, 4), new(0, 0)]);
        var askew = Factory.CreatePolygon([new(0, 0), new(4, 1), new(3, 5), new(-1, 4), new(0, 0)]);
        var between = new Polygon(new LinearRing([new(0.5, 0), new(4, 0), new(4, 4), new(0.5, 4), new(0.5, 0)]));
        Assert.Null(SquareOverlay.Of(box, askew, SpatialFunction.Union));
        Assert.Null(SquareOverlay.Of(between, box, SpatialFunction.Intersection));
        Assert.Null(SquareOverlay.Grown(askew, 1));
        Assert.True(SquareOverlay.Of(askew, Factory.CreatePolygon(), SpatialFunction.Intersection)!.IsEmpty);
    }

    // few places, so that sides often meet
    private static Polygon Box(Random random)
    {
        var (x, y) = (random.Next(0, 8), random.Next(0, 8));
        var (toX, toY) = (x + random.Next(1, 6), y + random.Next(1, 6));
        return Factory.CreatePolygon([new(x, y), new(toX, y), new(toX, toY), new(x, toY), new(x, y)]);
    }
}
