using System.Globalization;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of the bulkheads: one way to say where they are, edges and services that exist, and room left beside them.</summary>
internal static class BulkheadRules
{
    public static void Check(PlanRequest request, bool imperial, FaultList faults)
    {
        var bulkheads = request.Bulkheads ?? [];
        IdRules.CheckUnique(bulkheads.Select(BulkheadMapping.IdOf), "#/bulkheads", faults);
        var room = request.Room?.Outline is { } outline && faults.Sound("#/room/outline") ? RoomMapping.OpenRing(outline, imperial) : null;
        var services = (request.Services ?? []).Select(ServiceMapping.IdOf).ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < bulkheads.Count; i++)
        {
            var at = $"#/bulkheads/{Number(i)}";
            var sound = faults.Sound(at);
            if (sound)
            {
                CheckPlace(bulkheads[i], at, faults);
            }

            var placed = faults.Sound(at);
            if (room is not null && faults.Sound($"{at}/edges"))
            {
                CheckEdges(bulkheads[i], at, room, faults);
            }

            if (room is not null && placed)
            {
                CheckWidth(bulkheads[i], at, room, imperial, faults);
                CheckOutline(bulkheads[i], at, room, imperial, faults);
            }

            if (!sound)
            {
                continue;
            }

            CheckHides(bulkheads[i], at, services, faults);
            if (faults.Sound(at) && faults.Sound("#/strapping") && faults.Sound("#/sheets"))
            {
                CheckDrop(request, bulkheads[i], i, imperial, faults);
            }
        }
    }

    private static void CheckPlace(BulkheadRequest bulkhead, string at, FaultList faults)
    {
        var ways = (bulkhead.Edges is null ? 0 : 1) + (bulkhead.Hides is null ? 0 : 1) + (bulkhead.Outline is null ? 0 : 1);
        if (ways != 1)
        {
            faults.Add(at, "bulkhead_place", "A bulkhead has one of edges, hides and outline: it runs along walls, is sized from services, or has its own outline.");
            return;
        }

        if (bulkhead.Edges is not null && bulkhead.Width is null)
        {
            faults.Add($"{at}/width", "required", "A bulkhead along edges needs a width.");
        }
        else if (bulkhead.Edges is null && bulkhead.Width is not null)
        {
            faults.Add($"{at}/width", "width_not_wanted", "Only a bulkhead along edges has a width; any other takes it from what it hides or from its outline.");
        }

        if (bulkhead.Hides is null && bulkhead.Drop is null)
        {
            faults.Add($"{at}/drop", "required", "A bulkhead that hides no service by its id needs a drop.");
        }
    }

    private static void CheckEdges(BulkheadRequest bulkhead, string at, IReadOnlyList<Point> room, FaultList faults)
    {
        var seen = new HashSet<int>();
        for (var e = 0; e < (bulkhead.Edges?.Count ?? 0); e++)
        {
            var edge = bulkhead.Edges![e];
            if (edge < 0 || edge >= room.Count)
            {
                faults.Add($"{at}/edges/{Number(e)}", "edge_unknown", $"The outline has edges 0 to {Number(room.Count - 1)}; there is no edge {Number(edge)}.",
                    ("most", Number(room.Count - 1)), ("value", Number(edge)));
            }
            else if (!seen.Add(edge))
            {
                faults.Add($"{at}/edges/{Number(e)}", "edge_repeated", $"Edge {Number(edge)} stands in this list already.", ("value", Number(edge)));
            }
        }
    }

    private static void CheckWidth(BulkheadRequest bulkhead, string at, IReadOnlyList<Point> room, bool imperial, FaultList faults)
    {
        var narrowest = Length.Min(room.Max(p => p.X) - room.Min(p => p.X), room.Max(p => p.Y) - room.Min(p => p.Y));
        if (bulkhead.Width is { } width && width.In(imperial) >= narrowest)
        {
            faults.Add($"{at}/width", "bulkhead_wider_than_room", "The bulkhead is as wide as the room or wider: nothing of the ceiling would be left beside it.");
        }
    }

    private static void CheckOutline(BulkheadRequest bulkhead, string at, IReadOnlyList<Point> room, bool imperial, FaultList faults)
    {
        if (bulkhead.Outline is not { } corners)
        {
            return;
        }

        var ring = RoomMapping.OpenRing(corners, imperial);
        RingRules.Check(ring, $"{at}/outline", 3, Hosting.ServiceLimits.MaxOpeningCorners, faults);
        if (faults.Sound($"{at}/outline") && !RingFaults.Inside(ring, room))
        {
            faults.Add($"{at}/outline", "bulkhead_outside_room", "This outline does not lie wholly inside the room.");
        }
    }

    private static void CheckHides(BulkheadRequest bulkhead, string at, HashSet<string> services, FaultList faults)
    {
        for (var h = 0; h < (bulkhead.Hides?.Count ?? 0); h++)
        {
            if (!services.Contains(bulkhead.Hides![h]))
            {
                faults.Add($"{at}/hides/{Number(h)}", "service_unknown", $"There is no service \"{bulkhead.Hides[h]}\".", ("id", bulkhead.Hides[h]));
            }
        }
    }

    private static void CheckDrop(PlanRequest request, BulkheadRequest bulkhead, int index, bool imperial, FaultList faults)
    {
        var at = $"#/bulkheads/{Number(index)}";
        if (bulkhead.BoardedAbove == true && bulkhead.Hides is not null)
        {
            faults.Add($"{at}/boardedAbove", "service_through_board", "A bulkhead below a boarded ceiling hides no service that comes down from the joists.");
            return;
        }

        if (bulkhead.Drop is not { } drop)
        {
            return;
        }

        var assumed = new Assumptions(imperial);
        var survey = new Survey
        {
            Units = imperial ? UnitSystem.Imperial : UnitSystem.Metric,
            Ruleset = string.Empty,
            Effort = Effort.Quick,
            Room = new RoomSurvey { Outline = [] },
            JoistFields = [],
            Strapping = StrappingMapping.Of(request.Strapping ?? new(), assumed),
            Sheets = SheetsMapping.Of(request.Sheets ?? new(), assumed),
        };
        var least = new Length(BulkheadSolids.LeastDrop(survey, BulkheadMapping.Of(bulkhead, index, assumed)));
        if (drop.In(imperial) < least)
        {
            faults.Add($"{at}/drop", "drop_too_small", $"Two rails and a rung of this frame want a drop of {assumed.Tape(least)} or more.", ("least", assumed.Tape(least)));
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
