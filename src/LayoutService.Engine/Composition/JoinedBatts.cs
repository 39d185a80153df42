using LayoutService.Engine.Insulation;

namespace LayoutService.Engine.Composition;

/// <summary>The batts of all parts of a room as one list, with the resistance of the whole by parallel paths.</summary>
internal static class JoinedBatts
{
    /// <summary>Null when no part has any.</summary>
    public static InsulationPlan? Of(IReadOnlyList<InsulationPlan> parts)
    {
        if (parts.Count == 0)
        {
            return null;
        }

        var area = parts.Sum(p => p.AreaSquareMetres);
        var flow = parts.Sum(p => p.AreaRsi == 0 ? 0 : p.AreaSquareMetres / (double)p.AreaRsi);
        return parts[0] with
        {
            Fills = [.. parts.SelectMany(p => p.Fills)],
            Uncovered = [.. parts.SelectMany(p => p.Uncovered)],
            AreaRsi = flow <= 0 ? 0 : decimal.Round((decimal)(area / flow), 6),
            FramingFraction = area <= 0 ? 0 : decimal.Round(parts.Sum(p => p.FramingFraction * (decimal)(p.AreaSquareMetres / area)), 6),
            AreaSquareMetres = area,
            HeaviestKilogramsPerSquareMetre = parts.Max(p => p.HeaviestKilogramsPerSquareMetre),
        };
    }
}
