using System.Text.Json.Nodes;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Rooms;

/// <summary>
/// Makes of a room with one joist field, along x or y, the same room over a beam: beyond the beam the joists are shifted by one
/// thickness, and over it they lap by 150 mm or meet end to end. Null where the joists of the request run otherwise.
/// </summary>
public static class LappedFields
{
    public static string? Over(string request, int seed)
    {
        var dice = new Dice((ulong)seed * 2654435761UL + 5);
        dice.Bits();
        var room = Rewriting.Copy(request);
        var unit = Rewriting.Unit(room);
        var field = room["joistFields"]![0]!.AsObject();
        var alongX = field["run"]?.GetValue<string>() == "x" || field["runDegrees"]?.GetValue<decimal>() == 0;
        if (!alongX && field["run"]?.GetValue<string>() != "y" && field["runDegrees"]?.GetValue<decimal>() != 90)
        {
            return null;
        }

        var ring = Rewriting.Rings(room).First().Ring.Select(p => Rewriting.Point(p!, unit)).ToList();
        var (low, high) = (ring.Min(p => alongX ? p.X : p.Y), ring.Max(p => alongX ? p.X : p.Y));
        var (left, right) = (ring.Min(p => alongX ? p.Y : p.X), ring.Max(p => alongX ? p.Y : p.X));
        var face = field["face"] is { } given ? Rewriting.Millimetres(given, unit) : unit > 1 ? 38.1m : 38m;
        // off the steps that rows are placed on, so that no row lies on the end of a joist
        var step = unit > 1 ? 1.5875m : 1m;
        var beam = low + (Math.Floor((high - low) * dice.Whole(30, 70) / 100 / step) * step) + (step / 2);
        var lap = dice.Chance(60) ? Math.Floor(75 / step) * step : 0;
        var other = field.DeepClone().AsObject();
        Shift(other, face, right - left, unit);
        if (dice.Chance(50))
        {
            // a shallower addition, or I-joists: batts beyond the beam lie in another depth
            other["depth"] = Rewriting.Number(unit > 1 ? 184.15m : 184m, unit);
            other["kind"] = dice.Chance(50) ? "sawn" : "i-joist";
        }

        field["id"] = "near";
        other["id"] = "far";
        field["region"] = Region(low - 500, beam + lap);
        other["region"] = Region(beam - lap, high + 500);
        room["joistFields"] = new JsonArray(field.DeepClone(), other);
        return room.ToJsonString();

        JsonArray Region(decimal from, decimal to)
        {
            var corners = new[] { (from, left - 100), (to, left - 100), (to, right + 100), (from, right + 100) };
            return new JsonArray([.. corners.Select(c => (JsonNode)new JsonArray(
                Rewriting.Number(alongX ? c.Item1 : c.Item2, unit), Rewriting.Number(alongX ? c.Item2 : c.Item1, unit)))]);
        }
    }

    private static void Shift(JsonObject field, decimal by, decimal extent, decimal unit)
    {
        if (field["positions"] is JsonArray positions)
        {
            field["positions"] = new JsonArray([.. positions.Select(p => Rewriting.Millimetres(p!, unit) + by).Where(p => p < extent).Select(p => Rewriting.Number(p, unit))]);
        }
        else
        {
            field["first"] = Rewriting.Number(Rewriting.Millimetres(field["first"]!, unit) + by, unit);
        }
    }
}
