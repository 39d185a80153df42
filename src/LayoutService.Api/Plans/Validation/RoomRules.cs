using System.Globalization;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of the room: a simple outline of a sensible size, and openings that lie apart inside it.</summary>
internal static class RoomRules
{
    private const string Outline = "#/room/outline";

    public static void Check(RoomRequest room, bool imperial, FaultList faults)
    {
        IReadOnlyList<Point>? outline = null;
        if (room.Outline is { } corners && faults.Sound(Outline))
        {
            var ring = RoomMapping.OpenRing(corners, imperial);
            RingRules.Check(ring, Outline, 3, ServiceLimits.MaxCorners, faults);
            if (faults.Sound(Outline))
            {
                CheckSize(ring, faults);
            }

            outline = faults.Sound(Outline) ? ring : null;
        }

        CheckOpenings(room, imperial, outline, faults);
        CheckWalls(room, outline, faults);
        CheckHeights(room, imperial, outline, faults);
    }

    private static void CheckSize(IReadOnlyList<Point> ring, FaultList faults)
    {
        var width = ring.Max(p => p.X) - ring.Min(p => p.X);
        var depth = ring.Max(p => p.Y) - ring.Min(p => p.Y);
        var longest = Length.FromMillimetres(ServiceLimits.MaxSideMetres * 1000m);
        if (Length.Max(width, depth) > longest)
        {
            faults.Add(Outline, "room_too_long", $"The room may be at most {ServiceLimits.MaxSideMetres} m long; check the units.",
                ("most", Number(ServiceLimits.MaxSideMetres)), ("unit", "m"));
            return;
        }

        var metre = (Int128)Length.FromMillimetres(1000).Units;
        if (RingFaults.TwiceArea(ring) > 2 * ServiceLimits.MaxAreaSquareMetres * metre * metre)
        {
            faults.Add(Outline, "room_too_large", $"The room may be at most {ServiceLimits.MaxAreaSquareMetres} m² large; check the units.",
                ("most", Number(ServiceLimits.MaxAreaSquareMetres)), ("unit", "m2"));
        }
    }

    private static void CheckOpenings(RoomRequest room, bool imperial, IReadOnlyList<Point>? outline, FaultList faults)
    {
        var openings = room.Openings ?? [];
        IdRules.CheckUnique(openings.Select(RoomMapping.IdOf), "#/room/openings", faults);
        var rings = new List<(int Index, IReadOnlyList<Point> Ring)>();
        for (var i = 0; i < openings.Count; i++)
        {
            var at = $"#/room/openings/{Number(i)}/outline";
            if (openings[i].Outline is not { } corners || !faults.Sound(at))
            {
                continue;
            }

            var ring = RoomMapping.OpenRing(corners, imperial);
            RingRules.Check(ring, at, 3, ServiceLimits.MaxOpeningCorners, faults);
            if (!faults.Sound(at))
            {
                continue;
            }

            if (outline is not null && !RingFaults.Inside(ring, outline))
            {
                faults.Add(at, "opening_outside_room", "This opening does not lie wholly inside the room.");
            }

            rings.Add((i, ring));
        }

        CheckApart(rings, faults);
    }

    private static void CheckApart(List<(int Index, IReadOnlyList<Point> Ring)> rings, FaultList faults)
    {
        for (var i = 0; i < rings.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (RingFaults.Overlap(rings[j].Ring, rings[i].Ring))
                {
                    faults.Add($"#/room/openings/{Number(rings[i].Index)}/outline", "openings_overlap",
                        $"This opening overlaps the opening at #/room/openings/{Number(rings[j].Index)}; join the two.",
                        ("other", $"#/room/openings/{Number(rings[j].Index)}"));
                }
            }
        }
    }

    private static void CheckWalls(RoomRequest room, IReadOnlyList<Point>? outline, FaultList faults)
    {
        var seen = new HashSet<int>();
        var walls = room.Walls ?? [];
        for (var i = 0; i < walls.Count; i++)
        {
            var at = $"#/room/walls/{Number(i)}/edge";
            if (walls[i].Edge is not { } edge || !faults.Sound(at))
            {
                continue;
            }

            if (outline is not null && edge >= outline.Count)
            {
                faults.Add(at, "edge_unknown", $"The outline has edges 0 to {Number(outline.Count - 1)}; there is no edge {Number(edge)}.",
                    ("most", Number(outline.Count - 1)), ("value", Number(edge)));
            }
            else if (!seen.Add(edge))
            {
                faults.Add(at, "edge_repeated", $"Edge {Number(edge)} has a wall already.", ("value", Number(edge)));
            }
        }
    }

    private static void CheckHeights(RoomRequest room, bool imperial, IReadOnlyList<Point>? outline, FaultList faults)
    {
        var heights = room.Heights ?? [];
        for (var i = 0; i < heights.Count && outline is not null; i++)
        {
            var at = $"#/room/heights/{Number(i)}/at";
            if (heights[i].At is { } place && faults.Sound(at) && !RingFaults.Holds(outline, RoomMapping.PointOf(place, imperial)))
            {
                faults.Add(at, "height_outside_room", "This height was taken outside of the room.");
            }
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
