using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Which length of screw to buy: the shortest on sale that reaches far enough, so that its tip stays as far as it can from
/// whatever lies behind.
/// </summary>
public static class ScrewLengths
{
    /// <summary>Board screws on sale. Common practice, no source.</summary>
    private static readonly (string Name, Length Length)[] BoardScrews =
    [
        ("1in", Eighths(8)), ("1-1/8in", Eighths(9)), ("1-1/4in", Eighths(10)), ("1-5/8in", Eighths(13)), ("2in", Eighths(16)),
        ("2-1/4in", Eighths(18)), ("2-1/2in", Eighths(20)), ("3in", Eighths(24)),
    ];

    /// <summary>Wood screws on sale. Common practice, no source.</summary>
    private static readonly (string Name, Length Length)[] WoodScrews =
    [
        ("3/4in", Eighths(6)), ("1in", Eighths(8)), ("1-1/4in", Eighths(10)), ("1-1/2in", Eighths(12)), ("1-3/4in", Eighths(14)),
        ("2in", Eighths(16)), ("2-1/2in", Eighths(20)), ("3in", Eighths(24)), ("3-1/2in", Eighths(28)), ("4in", Eighths(32)),
    ];

    /// <summary>True for the name of a length that is on sale, such as <c>1-1/8in</c>.</summary>
    public static bool IsName(string id) => BoardScrews.Concat(WoodScrews).Any(screw => screw.Name == id);

    /// <summary>
    /// Depth that a board screw must reach into the wood: 15 mm (NBC 2020 subsection 9.29.5), 5/8 in (IRC R702.3.5.1).
    /// A tenth of a millimetre is let off the latter, because 5/8 in board is sold as 15.9 mm.
    /// </summary>
    private static Length BoardGrip(string ruleset) => ruleset.StartsWith("ca-", StringComparison.Ordinal)
        ? Length.FromMillimetres(15)
        : Eighths(5) - Length.FromMillimetres(0.1m);

    /// <summary>Board screw through <paramref name="board"/>, the thickness of all layers down to the strap.</summary>
    public static (string Name, Length Length) ForBoard(Length board, string ruleset) =>
        Shortest(BoardScrews, board + BoardGrip(ruleset));

    /// <summary>Wood screw through the strap that takes <paramref name="grip"/> in the joist.</summary>
    public static (string Name, Length Length) ForStrap(Length strap, Length grip) => Shortest(WoodScrews, strap + grip);

    /// <summary>Longest wood screw that stops 1/8 in or more inside the back of a scab on a strap of the same thickness.</summary>
    public static (string Name, Length Length) ForScab(Length strap)
    {
        var chosen = WoodScrews[0];
        foreach (var screw in WoodScrews)
        {
            if (screw.Length <= strap + strap - Eighths(1))
            {
                chosen = screw;
            }
        }

        return chosen;
    }

    private static (string Name, Length Length) Shortest((string Name, Length Length)[] onSale, Length reach)
    {
        foreach (var screw in onSale)
        {
            if (screw.Length >= reach)
            {
                return screw;
            }
        }

        return onSale[^1];
    }

    private static Length Eighths(long count) => new(Length.PerInch / 8 * count);
}
