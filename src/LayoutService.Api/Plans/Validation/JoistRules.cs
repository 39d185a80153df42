using System.Globalization;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of the joist fields: one way of saying where the joists are, all of them over the room.</summary>
internal static class JoistRules
{
    public static void Check(PlanRequest request, bool imperial, FaultList faults)
    {
        var fields = request.JoistFields ?? [];
        IdRules.CheckUnique(fields.Select(JoistMapping.IdOf), "#/joistFields", faults);
        for (var i = 0; i < fields.Count; i++)
        {
            var at = At(i);
            CheckChoices(fields[i], at, faults);
            JoistStampRules.Check(fields[i], at, imperial, faults);
            CheckRegion(request, fields[i], at, imperial, faults);
        }

        for (var i = 0; i < fields.Count; i++)
        {
            if (faults.Sound(At(i)))
            {
                CheckPlaces(request, fields[i], i, imperial, faults);
            }
        }
    }

    private static void CheckRegion(PlanRequest request, JoistFieldRequest field, string at, bool imperial, FaultList faults)
    {
        if (field.Region is not { Count: > 0 } region)
        {
            if (request.JoistFields!.Count > 1)
            {
                faults.Add($"{at}/region", "required", "Where there are several joist fields, each says what part of the room it covers.");
            }

            return;
        }

        if (!faults.Sound($"{at}/region"))
        {
            return;
        }

        var ring = RoomMapping.OpenRing(region, imperial);
        RingRules.Check(ring, $"{at}/region", 3, ServiceLimits.MaxOpeningCorners, faults);
        if (faults.Sound($"{at}/region") && request.Room?.Outline is { } outline && faults.Sound("#/room/outline")
            && !RingFaults.Overlap(ring, RoomMapping.OpenRing(outline, imperial)))
        {
            faults.Add($"{at}/region", "region_outside_room", "This region does not lie over the room.");
        }
    }

    private static void CheckPlaces(PlanRequest request, JoistFieldRequest field, int index, bool imperial, FaultList faults)
    {
        var at = At(index);
        var assumed = new Assumptions(imperial);
        var face = assumed.Length("", "", field.Face, 1.5m, 38);
        var extent = request.Room?.Outline is { } outline && faults.Sound("#/room/outline")
            ? new Length(PlanFrame.Of(RoomMapping.OpenRing(outline, imperial), JoistMapping.DegreesOf(field)).SizeV)
            : (Length?)null;
        if (field.Positions is { } positions)
        {
            CheckPositions([.. positions.Select(p => p.In(imperial))], face, extent, at, assumed, faults);
        }
        else
        {
            CheckSpacing(field.Spacing!.Value.In(imperial), field.First!.Value.In(imperial), face, extent, at, assumed, faults);
        }
    }

    private static void CheckChoices(JoistFieldRequest field, string at, FaultList faults)
    {
        if (field.Run is null && field.RunDegrees is null)
        {
            faults.Add($"{at}/run", "required", "Either run or runDegrees is needed.");
        }
        else if (field.Run is not null && field.RunDegrees is not null)
        {
            faults.Add($"{at}/runDegrees", "one_or_the_other", "Give run or runDegrees, not both.");
        }

        if (field.Positions is not null)
        {
            if (field.Spacing is not null || field.First is not null)
            {
                faults.Add($"{at}/positions", "one_or_the_other", "Give positions, or spacing and first, not both.");
            }
        }
        else if (field.Spacing is null && field.First is null)
        {
            faults.Add($"{at}/positions", "required", "Either positions, or spacing and first, are needed.");
        }
        else if (field.Spacing is null)
        {
            faults.Add($"{at}/spacing", "required", "The joists have a first centre line, but no spacing.");
        }
        else if (field.First is null)
        {
            faults.Add($"{at}/first", "required", "The joists have a spacing, but no first centre line.");
        }
    }

    private static void CheckPositions(
        IReadOnlyList<Length> positions, Length face, Length? extent, string at, Assumptions assumed, FaultList faults)
    {
        for (var i = 0; i < positions.Count && extent is not null; i++)
        {
            CheckOver(positions[i], face, extent.Value, $"{at}/positions/{Number(i)}", assumed, faults);
        }

        var order = Enumerable.Range(0, positions.Count).OrderBy(i => positions[i]).ThenBy(i => i).ToList();
        for (var k = 1; k < order.Count; k++)
        {
            if (positions[order[k]] - positions[order[k - 1]] < face / 2)
            {
                var (later, earlier) = (Math.Max(order[k], order[k - 1]), Math.Min(order[k], order[k - 1]));
                faults.Add($"{at}/positions/{Number(later)}", "joists_overlap",
                    $"This joist lies more than half over the joist at {at}/positions/{Number(earlier)}; its face is {assumed.Tape(face)}.",
                    ("other", $"{at}/positions/{Number(earlier)}"), ("face", assumed.Tape(face)));
            }
        }
    }

    private static void CheckSpacing(
        Length spacing, Length first, Length face, Length? extent, string at, Assumptions assumed, FaultList faults)
    {
        if (spacing < face)
        {
            faults.Add($"{at}/spacing", "joists_overlap", $"Joists {assumed.Tape(spacing)} apart on centre overlap; their face is {assumed.Tape(face)}.",
                ("spacing", assumed.Tape(spacing)), ("face", assumed.Tape(face)));
        }

        if (extent is not { } width)
        {
            return;
        }

        CheckOver(first, face, width, $"{at}/first", assumed, faults);
        if (spacing > Length.Zero && width.Units / spacing.Units >= ServiceLimits.MaxJoists)
        {
            faults.Add($"{at}/spacing", "too_many_joists", $"There may be at most {ServiceLimits.MaxJoists} joists over a room.",
                ("most", Number(ServiceLimits.MaxJoists)));
        }
    }

    /// <summary>A joist belongs to the room when its face reaches over it.</summary>
    private static void CheckOver(Length centre, Length face, Length extent, string at, Assumptions assumed, FaultList faults)
    {
        if (centre + (face / 2) <= Length.Zero || centre - (face / 2) >= extent)
        {
            faults.Add(at, "joist_outside_room",
                $"This joist lies outside of the room, which is from 0 to {assumed.Tape(extent)} across the joists; it is at {assumed.Tape(centre)}.",
                ("most", assumed.Tape(extent)), ("value", assumed.Tape(centre)));
        }
    }

    private static string At(int field) => $"#/joistFields/{Number(field)}";

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
