using System.Text.Json;
using LayoutService.Auditor;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>
/// A room cut in two by a line from wall to wall, and each half planned as a room of its own. Rows, pieces and sheets of the halves need
/// not be those of the whole: a half has a wall where the whole has none. What follows whatever the plan, and holds to the last digit:
/// the joists of the halves are those of the whole, cut at the line (an answer draws a joist over the box round its room, so in a stepped
/// room each part is taken over the half's box only); the board's area in the whole is that in the halves together; and the length of
/// the ceiling's edge in the halves is that in the whole and twice the line's. With a partition framed before the board in place of the
/// line the area and the edge are those of the two rooms beside it. All these plans are sound by the auditor. And to list the line's
/// ends as corners of the whole, where its walls go straight on, changes no row, piece, sheet or count: only the walls have other names.
/// </summary>
public sealed class SplitRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    [Fact]
    public async Task Joists_board_and_edge_of_the_halves_add_up_to_those_of_the_whole()
    {
        var (faults, along, stepped) = (new List<string>(), 0, 0);
        foreach (var seed in Enumerable.Range(1, 150))
        {
            var split = SplitRooms.Of(Rooms.Next(seed), seed);
            var (whole, low, high) = (await SoundAsync(split.Whole, seed, faults), await SoundAsync(split.Low, seed, faults), await SoundAsync(split.High, seed, faults));
            if (faults.Count > 0)
            {
                break;
            }

            Equal(Area(whole), Area(low) + Area(high), seed, "area of board", faults);
            Equal(Edge(whole) + (2 * split.Length), Edge(low) + Edge(high), seed, "length of the edge", faults);
            var cut = Joists(whole).SelectMany(j => j.CutAt(split.AlongX, split.At)).ToList();
            Equal(string.Join(' ', cut.SelectMany(j => new[] { j.Over(Box(low)), j.Over(Box(high)) }).OfType<Joist>().Order()), string.Join(' ', Joists(low).Concat(Joists(high)).Order()), seed, "joists", faults);
            along += cut.Count == Joists(whole).Count ? 1 : 0;
            stepped += whole.GetProperty("walls").GetArrayLength() > 4 ? 1 : 0;
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults.Take(10)));
        Assert.True(along is > 40 and < 110 && stepped > 40, $"{along} along the joists, {stepped} stepped");
    }

    [Fact]
    public async Task The_line_s_ends_listed_as_corners_change_nothing_in_the_whole()
    {
        var faults = new List<string>();
        foreach (var seed in Enumerable.Range(1, 100))
        {
            var split = SplitRooms.Of(Rooms.Next(seed), seed);
            var (plain, listed) = ((await service.PostAsync("/v1/plans", split.Whole)).Json, (await service.PostAsync("/v1/plans", split.WithCorners)).Json);
            var unit = plain.GetProperty("units").GetString() == "imperial" ? 25.4 : 1;
            faults.AddRange(Comparison.Counts(plain, listed).Concat(Comparison.Geometry(plain, listed, Motion.Still, unit, unit)).Select(f => $"seed {seed}: {f}"));
            Assert.True(listed.GetProperty("walls").GetArrayLength() > plain.GetProperty("walls").GetArrayLength());
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults.Take(10)));
    }

    [Fact]
    public async Task A_room_with_a_partition_has_the_board_and_the_edge_of_the_two_rooms_beside_it()
    {
        var (faults, parted) = (new List<string>(), 0);
        foreach (var seed in Enumerable.Range(1, 120))
        {
            if (SplitRooms.Of(Rooms.Next(seed), seed) is { Parted.Length: > 0 } split)
            {
                parted++;
                var (both, low, high) = (await SoundAsync(split.Parted, seed, faults), await SoundAsync(split.Low, seed, faults), await SoundAsync(split.High, seed, faults));
                if (faults.Count > 0)
                {
                    break;
                }

                Equal(Area(both), Area(low) + Area(high), seed, "area of board", faults);
                Equal(Edge(both), Edge(low) + Edge(high), seed, "length of the edge", faults);
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults.Take(10)));
        Assert.True(parted > 30, $"only {parted} rooms had one");
    }

    private async Task<JsonElement> SoundAsync(string request, int seed, List<string> faults)
    {
        var reply = await service.PostAsync("/v1/plans", request);
        faults.AddRange(reply.Status != 200
            ? [$"seed {seed}: {reply.Text} to {request}"]
            : PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, reply.Json).Select(f => $"seed {seed}: {f} in {request}"));
        return reply.Json;
    }

    private static void Equal<T>(T whole, T halves, int seed, string what, List<string> faults)
    {
        if (!Equals(whole, halves))
        {
            faults.Add($"seed {seed}: {what}: {whole} and {halves}");
        }
    }

    /// <summary>Area of the first layer of board, from the outlines of its pieces.</summary>
    private static decimal Area(JsonElement plan) => plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray()
        .Where(piece => piece.GetProperty("layer").GetInt32() == 1)
        .Sum(piece =>
        {
            var ring = piece.GetProperty("outline").EnumerateArray().Select(Point).ToList();
            return Math.Abs(ring.Select((p, i) => (p.X * ring[(i + 1) % ring.Count].Y) - (ring[(i + 1) % ring.Count].X * p.Y)).Sum()) / 2;
        });

    private static decimal Edge(JsonElement plan) => plan.GetProperty("sheets").GetProperty("perimeterLength").GetDecimal();

    private static List<Joist> Joists(JsonElement plan) => [.. plan.GetProperty("joists").GetProperty("members").EnumerateArray().Select(j => Joist.Of(Point(j.GetProperty("from")), Point(j.GetProperty("to"))))];

    /// <summary>The box round a plan's walls.</summary>
    private static Joist Box(JsonElement plan)
    {
        var corners = plan.GetProperty("walls").EnumerateArray().Select(wall => Point(wall.GetProperty("from"))).ToList();
        return new((corners.Min(c => c.X), corners.Min(c => c.Y)), (corners.Max(c => c.X), corners.Max(c => c.Y)));
    }

    private static (decimal X, decimal Y) Point(JsonElement point) => (point[0].GetDecimal(), point[1].GetDecimal());

    /// <summary>A joist's centre line over the room, the lower end first.</summary>
    private readonly record struct Joist((decimal X, decimal Y) From, (decimal X, decimal Y) To) : IComparable<Joist>
    {
        public static Joist Of((decimal X, decimal Y) a, (decimal X, decimal Y) b) => a.CompareTo(b) <= 0 ? new(a, b) : new(b, a);

        /// <summary>Its two parts where the line crosses it, else itself.</summary>
        public IEnumerable<Joist> CutAt(bool alongX, decimal at)
        {
            var crosses = alongX ? From.Y < at && To.Y > at : From.X < at && To.X > at;
            var middle = alongX ? (From.X, at) : (at, From.Y);
            return crosses ? [new(From, middle), new(middle, To)] : [this];
        }

        /// <summary>What of it lies over a box; null where that is nothing, or a point.</summary>
        public Joist? Over(Joist box)
        {
            var from = (X: Math.Max(From.X, box.From.X), Y: Math.Max(From.Y, box.From.Y));
            var to = (X: Math.Min(To.X, box.To.X), Y: Math.Min(To.Y, box.To.Y));
            return from.X <= to.X && from.Y <= to.Y && from != to ? new(from, to) : null;
        }

        public int CompareTo(Joist other) => (From, To).CompareTo((other.From, other.To));

        public override string ToString() => FormattableString.Invariant($"{From.X:0.######},{From.Y:0.######}-{To.X:0.######},{To.Y:0.######}");
    }
}
