using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>One joist asked for: its centre across, its face, the stretch along that it runs over, and the depth that batts may fill beside it, mm.</summary>
public readonly record struct AskedJoist(double Centre, double Face, Stretch Along, double Free)
{
    public Stretch Across => new(Centre - (Face / 2), Centre + (Face / 2));
}

/// <summary>
/// The joists of all fields, mm in the frame; and the supports that they make at a place along them: joists whose faces touch
/// are one support. A field with a region has each joist from the region's lowest to its highest place within the joist's face.
/// </summary>
public sealed class AskedJoists
{
    private const double Touching = 0.1;
    private readonly Dictionary<double, IReadOnlyList<Stretch>> known = [];

    public AskedJoists(JsonElement fields, double unit, Frame frame, IReadOnlyList<Uv> outline)
    {
        Face = fields[0].Member("face").Length(unit) ?? (unit > 1 ? 38.1 : 38);
        Free = [.. fields.EnumerateArray().Select(f => FreeDepth(f, unit))];
        Members = fields.EnumerateArray().SelectMany(f => Lay(f, unit, frame, outline)).OrderBy(j => j.Centre).ToList();
        Centres = Members.Select(m => m.Centre).ToList();
    }

    /// <summary>Nailing face of the first field, mm (38, or 1-1/2 in, where not given).</summary>
    public double Face { get; }

    public IReadOnlyList<AskedJoist> Members { get; }

    /// <summary>Depth that batts may fill beside the joists of each field: 9-1/4 in (235 mm) where it was not measured, less 1-1/2 in (38 mm) for each flange of an I-joist.</summary>
    public IReadOnlyList<double> Free { get; }

    /// <summary>Depth of the bay that a place lies in: the shallower of the joists at its sides.</summary>
    public double FreeAt(double along, double across)
    {
        var here = Members.Where(m => m.Along.From <= along && along < m.Along.To).ToList();
        var (low, high) = (here.Where(m => m.Centre < across).ToList(), here.Where(m => m.Centre >= across).ToList());
        return new[] { low.Count == 0 ? (double?)null : low.MaxBy(m => m.Centre).Free, high.Count == 0 ? null : high.MinBy(m => m.Centre).Free }
            .Min() ?? Free.Min();
    }

    /// <summary>Centre lines across, ascending, mm from the outline's lowest.</summary>
    public IReadOnlyList<double> Centres { get; }

    /// <summary>True when two joists make one support somewhere.</summary>
    public bool AnyDoubled => Members.Any(m => Members.Any(o => o != m && o.Centre >= m.Centre && o.Across.From - m.Across.To <= Touching && o.Along.Overlaps(m.Along, 0)));

    /// <summary>Supports across, ascending, at a place along the joists.</summary>
    public IReadOnlyList<Stretch> Supports(double along)
    {
        if (!known.TryGetValue(along, out var found))
        {
            known[along] = found = Merged(Members.Where(m => m.Along.From <= along && along < m.Along.To));
        }

        return found;
    }

    private static double FreeDepth(JsonElement field, double unit) =>
        (field.Member("depth").Length(unit) ?? (unit > 1 ? 9.25 * 25.4 : 235)) - (field.Member("kind").Text() == "i-joist" ? 2 * (unit > 1 ? 38.1 : 38) : 0);

    private static IEnumerable<AskedJoist> Lay(JsonElement field, double unit, Frame frame, IReadOnlyList<Uv> outline)
    {
        var face = field.Member("face").Length(unit) ?? (unit > 1 ? 38.1 : 38);
        var ring = field.Member("region") is { ValueKind: JsonValueKind.Array } region
            ? region.Ring(unit).Select(p => frame.At(p.X, p.Y)).ToList() : null;
        foreach (var centre in CentresOf(field, unit, outline.Max(p => p.V)))
        {
            if (ring is null)
            {
                yield return new(centre, face, new(double.NegativeInfinity, double.PositiveInfinity), FreeDepth(field, unit));
            }
            else if (Reach(ring, centre - (face / 2), centre + (face / 2)) is { } along && along.Length > 0)
            {
                yield return new(centre, face, along, FreeDepth(field, unit));
            }
        }
    }

    private static IEnumerable<double> CentresOf(JsonElement field, double unit, double extent)
    {
        if (field.Member("positions") is { } positions)
        {
            return positions.EnumerateArray().Select(p => LengthText.Millimetres(p, unit)).ToList();
        }

        var spacing = field.Member("spacing").Length(unit) ?? 400;
        var first = field.Member("first").Length(unit) ?? 0;
        var count = (int)Math.Floor((extent - first + 0.01) / spacing) + 1;
        return Enumerable.Range(0, Math.Max(0, count)).Select(i => first + (i * spacing));
    }

    // the part of a polygon between two levels, by clipping it at each (Sutherland and Hodgman, 1974): its extent along
    private static Stretch? Reach(IReadOnlyList<Uv> ring, double low, double high)
    {
        var clipped = Clip(Clip(ring, p => p.V - low), p => high - p.V);
        return clipped.Count == 0 ? null : new Stretch(clipped.Min(p => p.U), clipped.Max(p => p.U));
    }

    private static List<Uv> Clip(IReadOnlyList<Uv> ring, Func<Uv, double> inside)
    {
        var kept = new List<Uv>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var (da, db) = (inside(a), inside(b));
            if (da >= 0)
            {
                kept.Add(a);
            }

            if (da >= 0 != db >= 0)
            {
                var t = da / (da - db);
                kept.Add(new(a.U + (t * (b.U - a.U)), a.V + (t * (b.V - a.V))));
            }
        }

        return kept;
    }

    private static List<Stretch> Merged(IEnumerable<AskedJoist> joists)
    {
        var merged = new List<Stretch>();
        foreach (var face in joists.Select(j => j.Across))
        {
            if (merged.Count > 0 && face.From - merged[^1].To <= Touching)
            {
                merged[^1] = new Stretch(merged[^1].From, Math.Max(merged[^1].To, face.To));
            }
            else
            {
                merged.Add(face);
            }
        }

        return merged;
    }
}
