using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Reading;
using LayoutService.Auditor.Rooms;
using NetTopologySuite.Geometries;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Random rooms are the same from the same seed, and are rooms.</summary>
public sealed class RoomGeneratorTests
{
    private static readonly GeometryFactory Factory = new();

    [Fact]
    public void The_same_seed_makes_the_same_room() => Assert.Equal(new RoomGenerator().Next(7), new RoomGenerator().Next(7));

    [Fact]
    public void Ten_thousand_rooms_are_simple_polygons_with_their_openings_inside_and_joists_near_both_walls()
    {
        var generator = new RoomGenerator();
        for (var seed = 0; seed < 10_000; seed++)
        {
            var room = Room(generator.Next(seed));
            var outline = Polygon(room.Rings[0]);
            Assert.True(outline.IsValid && outline.Area > 2e6, $"seed {seed}: no simple room");
            Assert.All(room.Rings.Skip(1), o => Assert.True(outline.Contains(Polygon(o)), $"seed {seed}: an opening leaves the room"));
            var extent = room.Rings[0].Max(p => p.V);
            Assert.InRange(room.Joists.Centres[0], 0, 402);
            Assert.True(extent - room.Joists.Centres[^1] is > 0 and < 402, $"seed {seed}: last joist {room.Joists.Centres[^1]} of {extent}");
            Assert.True(room.Joists.Centres.Zip(room.Joists.Centres.Skip(1)).All(p => p.Second - p.First <= 612), $"seed {seed}: a wide bay");
        }
    }

    [Theory]
    [InlineData("mirror in x")]
    [InlineData("mirror in y")]
    [InlineData("quarter turn")]
    [InlineData("shift")]
    public void A_moved_room_has_its_joists_and_corners_moved_with_it(string name)
    {
        Motion[] motions = [Motion.MirrorX, Motion.MirrorY, Motion.QuarterTurn, Motion.Shift(-2540, 1270)];
        var motion = motions.Single(m => m.Name == name);
        for (var seed = 0; seed < 300; seed++)
        {
            var request = new RoomGenerator().Next(seed);
            var (still, moved) = (Room(request), Room(Metamorphic.Moved(request, motion)));
            Assert.Equal(still.Area, moved.Area, tolerance: 1);
            var expected = Lines(still).Select(p => motion.Move(p.X, p.Y)).ToList();
            Assert.All(Lines(moved), line => Assert.Contains(expected, e => Math.Abs(Across(moved, e) - Across(moved, line)) < 0.001));
        }
    }

    [Fact]
    public void Rewritten_rooms_read_as_the_same_room()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var request = new RoomGenerator().Next(seed);
            var still = Room(request);
            string[] others = [Metamorphic.Renumbered(request, 2), Metamorphic.Reversed(request), Metamorphic.Closed(request),
                Metamorphic.AsMillimetreTexts(request), Metamorphic.InOtherUnits(request)];
            foreach (var other in others.Select(Room))
            {
                Assert.Equal(still.Area, other.Area, tolerance: 1);
                Assert.Equal(still.Joists.Centres.Select(c => Math.Round(c * 8000)), other.Joists.Centres.Select(c => Math.Round(c * 8000)));
            }

            Assert.NotEqual(request, Metamorphic.Renumbered(request, 1));
        }
    }

    [Fact]
    public void A_plan_is_like_itself_and_unlike_its_mirror_image()
    {
        using var answer = JsonDocument.Parse(HandPlan.Answer);
        Assert.Empty(Comparison.Counts(answer.RootElement, answer.RootElement));
        Assert.Empty(Comparison.Geometry(answer.RootElement, answer.RootElement, Motion.Still, 1, 1));
        Assert.NotEmpty(Comparison.Geometry(answer.RootElement, answer.RootElement, Motion.MirrorX, 1, 1));
    }

    /// <summary>A point on each joist's centre line, in the caller's coordinates.</summary>
    private static IEnumerable<(double X, double Y)> Lines(AskedRoom room) => room.Joists.Centres.Select(c => room.Frame.Back(new Uv(0, c)));

    private static double Across(AskedRoom room, (double X, double Y) point) => room.Frame.At(point.X, point.Y).V;

    private static AskedRoom Room(string request)
    {
        using var document = JsonDocument.Parse(request);
        return new AskedRoom(document.RootElement);
    }

    private static Polygon Polygon(IReadOnlyList<Uv> ring) =>
        Factory.CreatePolygon([.. ring.Append(ring[0]).Select(p => new Coordinate(p.U, p.V))]);
}
