using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>What hangs, as a designer counts it: the board's design dead load, the insulation on it, the straps' own weight.</summary>
internal static class HangingLoad
{
    private const decimal Gravity = 9.80665m;

    /// <summary>A figure as a decimal; what a caller's own rule drives beyond 10⁹ stays there.</summary>
    public static decimal Capped(double value) => double.IsNaN(value) ? 0m : (decimal)Math.Clamp(value, -1e9, 1e9);

    /// <summary>Board and insulation, kPa; null when the board's design load is not known.</summary>
    public static decimal? OnBoard(CheckBench bench)
    {
        var board = bench.Facts.Board;
        foreach (var row in bench.Book.Tables.Boards.Rows)
        {
            var same = row.Kind == board.Type && Math.Abs(row.Thickness.Length.Units - board.Thickness.Units) <= Length.PerMillimetre / 2;
            if (same && row.DesignLoad is { } load)
            {
                var mass = (load.In("kg/m2") * board.Layers) + (bench.Facts.InsulationMassPerArea ?? 0m);
                return mass * Gravity / 1000m;
            }
        }

        return null;
    }

    /// <summary>Line load on one strap, N/mm: its share of board and insulation at the widest row spacing, and its own weight.</summary>
    public static decimal OnStrap(CheckBench bench, StrapFacts straps, decimal onBoard)
    {
        var wood = bench.Book.Tables.LumberWeights.Rows[^1].Weight.In("kN/m3");
        var own = wood * straps.Thickness.Millimetres * straps.Face.Millimetres / 1_000_000m;
        return (onBoard * straps.RowSpacing.Millimetres / 1000m) + own;
    }
}
