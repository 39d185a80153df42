namespace LayoutService.Engine.Insulation;

/// <summary>
/// Resistance of the joist layer by parallel paths: through batts, through joists, and through the air of bays left open,
/// weighted by area. Board, floor and surface films are not in it.
/// </summary>
public static class ParallelPaths
{
    /// <summary>m²·K/W; areas in one unit, whichever. The joists' share is the framing fraction.</summary>
    public static decimal Rsi(IEnumerable<(double Area, decimal Rsi)> batts, double joists, double open, decimal woodRsi, decimal airRsi)
    {
        var (area, flow) = (joists + open, (joists / (double)woodRsi) + (open / (double)airRsi));
        foreach (var (part, rsi) in batts)
        {
            area += part;
            flow += part / (double)rsi;
        }

        return flow <= 0 ? 0 : decimal.Round((decimal)(area / flow), 6);
    }
}
