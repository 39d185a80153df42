using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>The joists of the one field, across, mm; and their supports: joists whose faces touch are one support.</summary>
public sealed class AskedJoists
{
    private const double Touching = 0.1;

    public AskedJoists(JsonElement field, double unit, double extent)
    {
        Face = field.Member("face").Length(unit) ?? (unit > 1 ? 38.1 : 38);
        if (field.Member("positions") is { } positions)
        {
            Centres = positions.EnumerateArray().Select(p => LengthText.Millimetres(p, unit)).Order().ToList();
        }
        else
        {
            var spacing = field.Member("spacing").Length(unit) ?? 400;
            var first = field.Member("first").Length(unit) ?? 0;
            var count = (int)Math.Floor((extent - first + 0.01) / spacing) + 1;
            Centres = Enumerable.Range(0, Math.Max(0, count)).Select(i => first + (i * spacing)).ToList();
        }

        Supports = Merged();
    }

    /// <summary>Nailing face, mm (38, or 1-1/2 in, where not given).</summary>
    public double Face { get; }

    /// <summary>Centre lines across, ascending, mm from the outline's lowest.</summary>
    public IReadOnlyList<double> Centres { get; }

    public IReadOnlyList<Stretch> Supports { get; }

    /// <summary>True when two joists make one support.</summary>
    public bool AnyDoubled => Supports.Count < Centres.Count;

    private List<Stretch> Merged()
    {
        var merged = new List<Stretch>();
        foreach (var face in Centres.Select(c => new Stretch(c - (Face / 2), c + (Face / 2))))
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
