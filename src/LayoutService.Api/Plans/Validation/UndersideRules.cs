using System.Globalization;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of the undersides: each reading under a joist of its field and in the room; readings in every field or in none.</summary>
internal static class UndersideRules
{
    public static void Check(PlanRequest request, bool imperial, FaultList faults)
    {
        var fields = request.JoistFields ?? [];
        if (!fields.Any(f => f.Undersides is { Count: > 0 }))
        {
            return;
        }

        for (var i = 0; i < fields.Count; i++)
        {
            var at = $"#/joistFields/{Number(i)}";
            if (fields[i].Undersides is not { Count: > 0 })
            {
                faults.Add($"{at}/undersides", "undersides_missing", "Another joist field has readings of its undersides; every field needs some then.");
            }
            else if (request.Room?.Outline is { } outline && faults.Sound("#/room/outline") && faults.Sound(at))
            {
                CheckPlaces(fields[i], RoomMapping.OpenRing(outline, imperial), JoistMapping.DegreesOf(fields[i]), at, new Assumptions(imperial), faults);
            }
        }
    }

    private static void CheckPlaces(
        JoistFieldRequest field, IReadOnlyList<Point> outline, decimal degrees, string at, Assumptions assumed, FaultList faults)
    {
        var frame = PlanFrame.Of(outline, degrees);
        var reach = (assumed.Length("", "", field.Face, 1.5m, 38) / 2) + assumed.Default(1, 25);
        var region = field.Region is { Count: > 0 } corners ? RoomMapping.OpenRing(corners, assumed.Imperial) : null;
        for (var i = 0; i < field.Undersides!.Count; i++)
        {
            var place = RoomMapping.PointOf(field.Undersides[i].At!.Value, assumed.Imperial);
            var across = new Length(frame.In(place).V);
            var nearest = Nearest(field, across, assumed.Imperial);
            if (!RingFaults.Holds(outline, place) || (region is not null && !RingFaults.Holds(region, place)))
            {
                faults.Add($"{at}/undersides/{Number(i)}/at", "underside_outside_field", "This underside was read outside of the room or of its joist field.");
            }
            else if (new Length(Math.Abs((nearest - across).Units)) > reach)
            {
                faults.Add($"{at}/undersides/{Number(i)}/at", "underside_off_joist",
                    $"This underside was read at {assumed.Tape(across)} across the joists; the nearest joist of the field is at {assumed.Tape(nearest)}.",
                    ("value", assumed.Tape(across)), ("nearest", assumed.Tape(nearest)));
            }
        }
    }

    private static Length Nearest(JoistFieldRequest field, Length across, bool imperial)
    {
        if (field.Positions is { } positions)
        {
            return positions.Select(p => p.In(imperial)).MinBy(p => Math.Abs((p - across).Units));
        }

        var (first, spacing) = (field.First!.Value.In(imperial), field.Spacing!.Value.In(imperial));
        var steps = Math.Max(0, (across.Units - first.Units + (spacing.Units / 2)) / spacing.Units);
        return first + new Length(steps * spacing.Units);
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
