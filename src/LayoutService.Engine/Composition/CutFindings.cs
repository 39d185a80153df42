using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Why an order cannot be cut. Where: ids of the wanted pieces.</summary>
public static class CutFindings
{
    private const int MostNamed = 5;

    public static Finding LongerThanStock(IReadOnlyList<string> pieces, string longest) => new(
        Sentence.Of(
            "piece_longer_than_stock",
            $"{Named(pieces)}: longer than any stock gives; the longest gives {longest}.",
            ("pieces", Named(pieces)),
            ("longest", longest)),
        pieces,
        [
            Sentence.Of("longer_stock", "Offer a longer stock."),
            Sentence.Of("shorter_pieces", "Make the piece of two, with a joint."),
        ]);

    public static Finding LargerThanStock(IReadOnlyList<string> pieces) => new(
        Sentence.Of("piece_larger_than_stock", $"{Named(pieces)}: too wide or too long for every sheet in stock, as it must lie.", ("pieces", Named(pieces))),
        pieces,
        [
            Sentence.Of("larger_sheets", "Offer a larger sheet."),
            Sentence.Of("let_turn", "Let the piece be turned, or keep fewer factory edges."),
        ]);

    public static Finding OutOfStock(string use, IReadOnlyList<string> pieces, int count) => new(
        Sentence.Of(
            "out_of_stock",
            $"No way was found to cut every piece of the {use} from the quantities given: {Named(pieces)} ({Number(count)} in all) stay without stock.",
            ("use", use),
            ("pieces", Named(pieces)),
            ("count", Number(count))),
        pieces,
        [Sentence.Of("more_stock", "Offer more of the stock, or another size.")]);

    /// <summary>As on a tape in inches; in millimetres with its decimals.</summary>
    public static string Say(Length length, UnitSystem units) => units == UnitSystem.Imperial
        ? TapeText.Imperial(length, TapeRounding.Down)
        : string.Create(CultureInfo.InvariantCulture, $"{length.Millimetres:0.####} mm");

    private static string Named(IReadOnlyList<string> pieces)
    {
        var named = string.Join(", ", pieces.Take(MostNamed));
        return pieces.Count <= MostNamed ? named : $"{named} and {Number(pieces.Count - MostNamed)} more";
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
