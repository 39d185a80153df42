using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Likeness;

/// <summary>
/// Motions that take a room, its openings and its joists onto themselves: a room that is its own mirror image has a plan
/// and that plan's mirror image, either of which is right. For joists along x or y.
/// </summary>
public static class Symmetry
{
    public static IReadOnlyList<Motion> Of(string request)
    {
        var room = Rewriting.Copy(request);
        if (room["joistFields"]!.AsArray().Count > 1)
        {
            return [Motion.Still];
        }

        var unit = Rewriting.Unit(room);
        var rings = Rewriting.Rings(room).Select(r => r.Ring.Select(p => Rewriting.Point(p!, unit)).ToHashSet())
            .Concat(FixtureMoves.Shapes(room).Select(s => s.Select(p => Rewriting.Point(p, unit)).ToHashSet())).ToList();
        var (lowX, highX) = (rings[0].Min(p => p.X), rings[0].Max(p => p.X));
        var (lowY, highY) = (rings[0].Min(p => p.Y), rings[0].Max(p => p.Y));
        var field = room["joistFields"]![0]!;
        var alongX = field["run"]?.GetValue<string>() == "x" || field["runDegrees"]?.GetValue<decimal>() == 0;
        var joists = Joists(field, unit, alongX ? highY - lowY : highX - lowX);
        return [.. new[] { (false, false), (true, false), (false, true), (true, true) }
            .Select(flip => (flip.Item1, flip.Item2, Motion: new Motion(
                "mirror in place", flip.Item1 ? -1 : 1, 0, 0, flip.Item2 ? -1 : 1, flip.Item1 ? lowX + highX : 0, flip.Item2 ? lowY + highY : 0)))
            .Where(m => rings.All(ring => rings.Any(other => other.SetEquals(ring.Select(p => m.Motion.Move(p.X, p.Y))))))
            .Where(m => !(alongX ? m.Item2 : m.Item1) || joists.SetEquals(joists.Select(j => (alongX ? highY - lowY : highX - lowX) - j)))
            .Select(m => m.Motion)];
    }

    private static HashSet<decimal> Joists(JsonNode field, decimal unit, decimal width)
    {
        if (field["positions"] is JsonArray given)
        {
            return [.. given.Select(p => Rewriting.Millimetres(p!, unit))];
        }

        var found = new HashSet<decimal>();
        var spacing = Rewriting.Millimetres(field["spacing"]!, unit);
        for (var at = Rewriting.Millimetres(field["first"]!, unit); at <= width; at += spacing)
        {
            found.Add(at);
        }

        return found;
    }
}
