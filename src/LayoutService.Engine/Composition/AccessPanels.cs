using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Access panels: what must be reached after the ceiling is closed gets a door in the board under it. A panel is a fixture like
/// any other: it moves off straps, ties and seams within an arm's reach, rows are trimmed round it, its hole is cut in its piece
/// of board. An access door that the caller asked for over the service serves instead. Sizes and reach: no code minimum was
/// found; common practice, no source.
/// </summary>
public static class AccessPanels
{
    private const int ArmsReach = 250, ArmsReachInches = 10;

    /// <summary>Sides of panels, the one to have first and then those for bulkheads that have no room for it.</summary>
    private static readonly (int Millimetres, int Inches)[] Sides = [(300, 12), (200, 8), (150, 6)];

    /// <summary>The room with the panels among its fixtures; the same room when nothing must be reached.</summary>
    public static FramedRoom In(FramedRoom room)
    {
        var survey = room.Survey;
        if (survey.Services is not { } services || !services.Any(s => s.NeedsReach))
        {
            return room;
        }

        var taken = survey.Fixtures.Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
        var (panels, count) = (new List<FixtureWish>(), survey.Part?.Taken.Panels ?? 0);
        foreach (var service in services.Where(s => s.NeedsReach))
        {
            if (Over(survey.Fixtures, service) is null && Over(panels, service) is null && PlaceFor(room, service) is { } place)
            {
                panels.Add(Panel(survey.Units == UnitSystem.Imperial, Name(), place, SideAt(room, place)));
            }
        }

        return panels.Count == 0 ? room : FramedRoom.Of(survey with { Fixtures = [.. survey.Fixtures, .. panels] });

        string Name()
        {
            do
            {
                count++;
            }
            while (taken.Contains($"AP{count}"));

            return $"AP{count}";
        }
    }

    /// <summary>One door for each service that has one, in the order of the services.</summary>
    public static IEnumerable<AccessPanel> Of(FramedRoom room, IReadOnlyList<PlacedFixture> placed)
    {
        foreach (var service in (room.Survey.Services ?? []).Where(s => s.NeedsReach))
        {
            if (Over(room.Survey.Fixtures, service) is not { } door)
            {
                continue;
            }

            var fixture = placed.First(p => p.Wish.Id == door.Id);
            yield return new AccessPanel(
                door.Id, service.Id, fixture.Host < 0 ? null : room.Solids[fixture.Host].Id,
                fixture.Moved ? room.Frame.Out(fixture.Hole.At) : door.At, Length.Max(door.Cutout.Width, door.Cutout.Height), fixture.Clashes.Count > 0);
        }
    }

    /// <summary>What must be reached through a door; nothing for any other fixture.</summary>
    public static IEnumerable<Service> Behind(Survey survey, FixtureWish door) => door.Kind != FixtureKind.AccessDoor
        ? []
        : (survey.Services ?? []).Where(s => s.NeedsReach && Over([door], s) is not null);

    /// <summary>True when a door is asked for over a place.</summary>
    public static bool HasDoor(IReadOnlyList<FixtureWish> fixtures, Point place) => fixtures.Any(f => f.Kind == FixtureKind.AccessDoor && Holds(f, place));

    // the door whose hole, as asked for, has the service's place over it
    private static FixtureWish? Over(IReadOnlyList<FixtureWish> doors, Service service) => doors.FirstOrDefault(d =>
        d.Kind == FixtureKind.AccessDoor && ServiceShapes.Places(service).Any(place => Holds(d, place)));

    private static bool Holds(FixtureWish door, Point place) =>
        2 * Math.Abs(door.At.X.Units - place.X.Units) <= door.Cutout.Width.Units && 2 * Math.Abs(door.At.Y.Units - place.Y.Units) <= door.Cutout.Height.Units;

    private static FixtureWish Panel(bool imperial, string id, Point at, (int Millimetres, int Inches) sides)
    {
        var side = imperial ? Length.FromInches(sides.Inches) : Length.FromMillimetres(sides.Millimetres);
        return new FixtureWish
        {
            Id = id,
            Kind = FixtureKind.AccessDoor,
            At = at,
            Cutout = new Cutout(side, side, false),
            BodyDepth = Length.Zero,
            ClipReach = Length.Zero,
            InsulationContact = true,
            MaxShift = imperial ? Length.FromInches(ArmsReachInches) : Length.FromMillimetres(ArmsReach),
            EdgeClearance = imperial ? Length.FromInches(0.5m) : Length.FromMillimetres(13),
            AccessPanel = true,
        };
    }

    // halfway along it, else the next place that board is under
    private static Point? PlaceFor(FramedRoom room, Service service)
    {
        foreach (var place in ServiceShapes.Places(service))
        {
            var at = room.Frame.In(place);
            if (room.Solids.Any(s => s.Footprint.Holds(at)) || room.Board.AcrossAt(at.U, 0).Exists(s => s.Holds(at.V)))
            {
                return place;
            }
        }

        return null;
    }

    // the largest that goes between the rails and ledgers of a bulkhead
    private static (int Millimetres, int Inches) SideAt(FramedRoom room, Point place)
    {
        var at = room.Frame.In(place);
        if (room.Solids.FirstOrDefault(s => s.Footprint.Holds(at)) is not { } solid)
        {
            return Sides[0];
        }

        var edges = solid.Footprint.Patches.SelectMany(p => p.Loops).SelectMany(ring => ring.Select((c, i) => (From: c, To: ring[(i + 1) % ring.Count]))).ToList();
        var clear = Math.Min(Clear(edges, at), Clear(edges.ConvertAll(e => (new Uv(e.From.V, e.From.U), new Uv(e.To.V, e.To.U))), new Uv(at.V, at.U)));
        return Sides.Where(side => Fits(side.Inches)).DefaultIfEmpty(Sides[^1]).First();

        bool Fits(int inches) => Length.FromInches(inches + 1).Units + (2 * solid.Wish.Frame.Face.Units) <= clear;
    }

    // from edge to edge across the place, along v
    private static long Clear(List<(Uv From, Uv To)> edges, Uv at)
    {
        long low = long.MinValue / 4, high = long.MaxValue / 4;
        foreach (var (from, to) in edges)
        {
            if (from.U == to.U || at.U < Math.Min(from.U, to.U) || at.U > Math.Max(from.U, to.U))
            {
                continue;
            }

            var v = from.V + (long)Math.Round((double)(to.V - from.V) * (at.U - from.U) / (to.U - from.U));
            (low, high) = v <= at.V ? (Math.Max(low, v), high) : (low, Math.Min(high, v));
        }

        return high - low;
    }
}
