using System.Globalization;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Geometry;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of the partitions: a line inside the room, and a top that may carry it.</summary>
internal static class PartitionRules
{
    public static void Check(PlanRequest request, bool imperial, FaultList faults)
    {
        var partitions = request.Partitions ?? [];
        IdRules.CheckUnique(partitions.Select(PartitionMapping.IdOf), "#/partitions", faults);
        var outline = request.Room?.Outline is { } corners && faults.Sound("#/room/outline") ? RoomMapping.OpenRing(corners, imperial) : null;
        for (var i = 0; i < partitions.Count; i++)
        {
            var at = $"#/partitions/{Number(i)}";
            if (partitions[i] is { Rated: true, Top: PartitionTopWord.Board or PartitionTopWord.Straps })
            {
                faults.Add($"{at}/top", "rated_wall_to_joists", $"A rated wall goes to the joists; its top is not fastened to the {(partitions[i].Top == PartitionTopWord.Board ? "board" : "straps")}.");
            }
            else if (partitions[i].Top == PartitionTopWord.Straps && request.Strapping?.Method == StrappingMethodWord.Direct)
            {
                faults.Add($"{at}/top", "no_straps_over_plate", "The board goes straight to the joists, so there are no straps to fasten a plate to; say joists or board.");
            }

            if (faults.Sound($"{at}/line"))
            {
                CheckLine([.. partitions[i].Line!.Select(p => RoomMapping.PointOf(p, imperial))], $"{at}/line", outline, faults);
            }
        }
    }

    private static void CheckLine(IReadOnlyList<Point> line, string at, IReadOnlyList<Point>? outline, FaultList faults)
    {
        for (var i = 0; i < line.Count; i++)
        {
            if (i > 0 && line[i] == line[i - 1])
            {
                faults.Add($"{at}/{Number(i)}", "path_corner_repeated", "This corner is the same place as the one before it.");
            }

            if (outline is not null && !RingFaults.Holds(outline, line[i]))
            {
                faults.Add($"{at}/{Number(i)}", "partition_outside_room", "This corner of the partition lies outside of the room.");
            }
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
