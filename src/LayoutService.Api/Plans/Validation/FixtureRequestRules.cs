using System.Globalization;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of fixtures, light grid and mounts: where they stand, how their holes are given, and that holes lie apart.</summary>
internal static class FixtureRequestRules
{
    public static void Check(PlanRequest request, bool imperial, FaultList faults)
    {
        if ((request.Fixtures ?? []).Count == 0 && (request.Mounts ?? []).Count == 0 && request.LightGrid is null)
        {
            return;
        }

        var room = new RoomHeld(request.Room, imperial, faults);
        var fixtures = request.Fixtures ?? [];
        IdRules.CheckUnique(fixtures.Select(FixtureMapping.IdOf), "#/fixtures", faults);
        for (var i = 0; i < fixtures.Count; i++)
        {
            var at = $"#/fixtures/{Number(i)}";
            if (fixtures[i].At is { } place)
            {
                room.Check($"{at}/at", "fixture", RoomMapping.PointOf(place, imperial));
            }
            else if (faults.Sound($"{at}/at"))
            {
                faults.Add($"{at}/at", "required", "This member is needed.");
            }

            CheckCutout(fixtures[i].Cutout, $"{at}/cutout", request.Sheets, imperial, faults);
        }

        CheckApart(fixtures, imperial, faults);
        CheckGrid(request, imperial, faults);
        var mounts = request.Mounts ?? [];
        IdRules.CheckUnique(mounts.Select(FixtureMapping.IdOf), "#/mounts", faults);
        for (var i = 0; i < mounts.Count; i++)
        {
            if (mounts[i].At is { } place)
            {
                room.Check($"#/mounts/{Number(i)}/at", "mount", RoomMapping.PointOf(place, imperial));
            }
        }
    }

    private static void CheckCutout(CutoutRequest? cutout, string at, SheetsRequest? sheets, bool imperial, FaultList faults)
    {
        if (cutout is null || !faults.Sound(at))
        {
            return;
        }

        var (round, sides) = (cutout.Diameter is not null, (cutout.Width is null ? 0 : 1) + (cutout.Height is null ? 0 : 1));
        if (round ? sides > 0 : sides < 2)
        {
            faults.Add(at, "cutout_shape", "A hole has either a diameter, or a width and a height.");
            return;
        }

        if (!faults.Sound("#/sheets"))
        {
            return;
        }

        var hole = FixtureMapping.CutoutOf(cutout, imperial);
        var (small, large) = (Length.Min(hole.Width, hole.Height), Length.Max(hole.Width, hole.Height));
        var stock = SheetsMapping.Of(sheets ?? new(), new Assumptions(imperial)).Stock;
        if (!stock.Any(s => small < Length.Min(s.Width, s.Length) && large < Length.Max(s.Width, s.Length)))
        {
            faults.Add(at, "cutout_larger_than_sheet", "This hole is larger than any sheet in stock; make it an opening of the room.");
        }
    }

    // two holes that meet are one hole, or a mistake
    private static void CheckApart(IReadOnlyList<FixtureRequest> fixtures, bool imperial, FaultList faults)
    {
        var holes = new List<(int Index, Hole Hole)>();
        for (var i = 0; i < fixtures.Count; i++)
        {
            var at = $"#/fixtures/{Number(i)}";
            if (fixtures[i] is not { At: { } place, Cutout: { } cutout } || !faults.Sound($"{at}/at") || !faults.Sound($"{at}/cutout"))
            {
                continue;
            }

            var (point, size) = (RoomMapping.PointOf(place, imperial), FixtureMapping.CutoutOf(cutout, imperial));
            var hole = new Hole(at, new Uv(point.X.Units, point.Y.Units), size.Width.Units / 2, size.Height.Units / 2, size.Round, 0);
            var other = holes.FindIndex(h => h.Hole.Meets(hole));
            if (other >= 0)
            {
                faults.Add($"{at}/at", "fixtures_overlap", $"The hole of this fixture overlaps that of the fixture at {holes[other].Hole.FixtureId}.",
                    ("other", holes[other].Hole.FixtureId));
            }

            holes.Add((i, hole));
        }
    }

    private static void CheckGrid(PlanRequest request, bool imperial, FaultList faults)
    {
        if (request.LightGrid is not { } grid || !faults.Sound("#/lightGrid"))
        {
            return;
        }

        var pair = grid.Rows is not null || grid.Columns is not null;
        if ((grid.Count is null ? 0 : 1) + (pair ? 1 : 0) + (grid.Lux is null ? 0 : 1) != 1)
        {
            faults.Add("#/lightGrid", "grid_how_many", "A grid is asked for in one way: by count, by rows and columns, or by lux.");
        }

        if (pair && (grid.Rows is null || grid.Columns is null))
        {
            faults.Add(grid.Rows is null ? "#/lightGrid/rows" : "#/lightGrid/columns", "required", "Rows and columns go together.");
        }

        CheckMany(grid, request.Room, imperial, faults);
        if (grid.Lux is not null && grid.Lumens is null)
        {
            faults.Add("#/lightGrid/lumens", "required", "The light wanted needs the lumens of one fixture.");
        }

        if (grid.Fixture!.At is not null)
        {
            faults.Add("#/lightGrid/fixture/at", "grid_fixture_placed", "The grid finds the places; leave this out.");
        }

        CheckCutout(grid.Fixture.Cutout, "#/lightGrid/fixture/cutout", request.Sheets, imperial, faults);
        var start = FixtureMapping.GridIdOf(grid) + "-";
        var taken = (request.Fixtures ?? []).Select(FixtureMapping.IdOf)
            .FirstOrDefault(id => id.StartsWith(start, StringComparison.Ordinal) && int.TryParse(id.AsSpan(start.Length), NumberStyles.None, CultureInfo.InvariantCulture, out _));
        if (taken is not null)
        {
            faults.Add("#/lightGrid/fixture/id", "id_repeated", $"The grid's lights are called {start}1 and so on, and a fixture has the id \"{taken}\" already.", ("id", taken));
        }
    }

    // how many lights the wish comes to, for the smallest factors' sake before anything is laid out
    private static void CheckMany(LightGridRequest grid, RoomRequest? room, bool imperial, FaultList faults)
    {
        var lights = grid is { Rows: { } rows, Columns: { } columns } ? rows * columns : 0;
        if (grid is { Lux: { } lux, Lumens: { } lumens } && room?.Outline is { } corners && faults.Sound("#/room/outline"))
        {
            var side = (decimal)Length.FromMillimetres(1000).Units;
            var area = (decimal)RingFaults.TwiceArea(RoomMapping.OpenRing(corners, imperial)) / (2 * side * side);
            lights = LumenMethod.LightsFor(lux, area, lumens, grid.Utilisation ?? 0.6m, grid.Maintenance ?? 0.8m);
        }

        if (lights > ServiceLimits.MaxFixtures)
        {
            faults.Add(grid.Lux is null ? "#/lightGrid/rows" : "#/lightGrid/lux", "grid_too_many",
                $"This asks for {Number(lights)} lights; at most {Number(ServiceLimits.MaxFixtures)} are laid out.",
                ("most", Number(ServiceLimits.MaxFixtures)), ("count", Number(lights)));
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether places lie in the room and in none of its openings; where the room is not sound nothing is said.</summary>
    private sealed class RoomHeld(RoomRequest? room, bool imperial, FaultList faults)
    {
        private readonly IReadOnlyList<Point>? _outline = room?.Outline is { } corners && faults.Sound("#/room/outline")
            ? RoomMapping.OpenRing(corners, imperial) : null;

        private readonly List<(string At, IReadOnlyList<Point> Ring)> _openings = [.. (room?.Openings ?? [])
            .Select((o, i) => (At: $"#/room/openings/{Number(i)}", o.Outline))
            .Where(o => o.Outline is not null && faults.Sound(o.At))
            .Select(o => (o.At, RoomMapping.OpenRing(o.Outline!, imperial)))];

        public void Check(string at, string what, Point place)
        {
            if (_outline is null || !faults.Sound(at))
            {
                return;
            }

            if (!RingFaults.Holds(_outline, place))
            {
                faults.Add(at, $"{what}_outside_room", $"This {what} does not lie inside the room.");
                return;
            }

            var opening = _openings.FindIndex(o => RingFaults.Holds(o.Ring, place));
            if (opening >= 0)
            {
                faults.Add(at, $"{what}_in_opening", $"This {what} lies inside the opening at {_openings[opening].At}.", ("opening", _openings[opening].At));
            }
        }
    }
}
