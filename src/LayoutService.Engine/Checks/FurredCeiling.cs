using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// Whether straps and board are the ceiling on wood furring that earns the longer joist spans (NBC 9.23.9.4.(6)): board of
/// 12.7 mm, and 19 × 89 mm straps to 600 mm or 19 × 64 mm straps to 400 mm on centre.
/// </summary>
internal static class FurredCeiling
{
    public static IReadOnlyList<Sentence> Lacks(CheckBench bench)
    {
        if (bench.Facts.Straps is not { } straps)
        {
            return [Sentence.Of("furred_ceiling_needs_straps", "The longer span is printed for a ceiling on wood straps.")];
        }

        var lacks = new List<Sentence>();
        var board = bench.Limit("furred-ceiling-board").Value;
        if (bench.Facts.Board.Thickness < board)
        {
            lacks.Add(Sentence.Of("furred_ceiling_needs_board", $"The longer span is printed for board of {bench.Text(board)} or thicker.", ("least", bench.Text(board))));
        }

        var narrow = bench.Dressed(Figure.Parse("64 mm"), straps.Face);
        var wide = bench.Dressed(Figure.Parse("89 mm"), straps.Face);
        if (straps.Face < narrow || straps.Thickness < Thick(bench, straps))
        {
            lacks.Add(Sentence.Of(
                "furred_ceiling_needs_wider_straps", $"The longer span is printed for straps of {bench.Text(Thick(bench, straps))} by {bench.Text(narrow)} at least.",
                ("thickness", bench.Text(Thick(bench, straps))), ("face", bench.Text(narrow))));
        }

        var most = Spacing(bench, straps.Face >= wide ? "furred-ceiling-one-by-four" : "furred-ceiling-one-by-three");
        if (straps.RowSpacing > most)
        {
            lacks.Add(Sentence.Of("furred_ceiling_needs_closer_rows", $"The longer span is printed for rows of such straps {bench.Text(most)} apart at most.", ("most", bench.Text(most))));
        }

        return lacks;
    }

    /// <summary>True when the straps are the bracing that the tables call strapping: 19 × 64 mm, no row further than 2100 mm from the next (9.23.9.4.(1)).</summary>
    public static bool Restrains(CheckBench bench) =>
        bench.Facts.Straps is { } straps
        && straps.Thickness >= Thick(bench, straps)
        && straps.Face >= bench.Dressed(bench.Book.Limit("restraint-strap-face").Value, straps.Face)
        && straps.RowSpacing <= bench.Limit("restraint-strap-distance").Value;

    private static Length Thick(CheckBench bench, StrapFacts straps) => bench.Dressed(bench.Book.Limit("restraint-strap-thickness").Value, straps.Thickness);

    private static Length Spacing(CheckBench bench, string rule) => NominalModule.Of(bench.Book.Limit(rule).Value);
}
