using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// Pull on fasteners under what hangs, against what they hold for good. The load at a crossing is that of the middle support of two equal spans, 10/8 of span × load.
/// </summary>
internal static class WithdrawalChecks
{
    private const decimal MiddleSupport = 1.25m;

    public static IEnumerable<Check> Of(CheckBench bench)
    {
        var straps = bench.Facts.Straps;
        if (straps is { SupportSpacing: null } || HangingLoad.OnBoard(bench) is not { } onBoard)
        {
            yield break;
        }

        var steel = bench.Facts.Floor.Joists == JoistKind.Steel;
        if (steel)
        {
            yield return Steel(bench, straps is null ? "board-screw-withdrawal" : "strap-withdrawal");
        }
        else if (straps is { SupportSpacing: { } apart })
        {
            var crossing = HangingLoad.OnStrap(bench, straps, onBoard) * apart.Millimetres * MiddleSupport;
            var nail = straps.Fastener == StrapFastener.Nail;
            yield return Pull(
                bench, "strap-withdrawal", crossing / Math.Max(1, straps.FastenersPerCrossing),
                FastenerHold.Of(bench.Book, nail, nail ? "strap-nail-diameter" : "strap-screw-diameter", JoistGravity(bench), straps.FastenerLength - straps.Thickness - straps.Through),
                straps.Supports);
        }

        if (steel && straps is null)
        {
            yield break;
        }

        // into the strap, which is thinner than the screw may be long, or into the joist
        var board = bench.Facts.Board;
        var into = board.ScrewLength - (board.Thickness * board.Layers) - board.BehindBoard;
        var each = onBoard * board.SupportSpacing.Millimetres * MiddleSupport * board.ScrewSpacing.Millimetres / 1000m;
        yield return Pull(
            bench, "board-screw-withdrawal", each,
            FastenerHold.Of(
                bench.Book, false, "board-screw-diameter", straps is null ? JoistGravity(bench) : bench.Book.Limit("strap-gravity").Value.Value,
                straps is null ? into : Length.Min(into, straps.Thickness)),
            board.Supports);
    }

    private static Check Steel(CheckBench bench, string rule) => bench.NotChecked(
        rule, CheckComparison.AtMost, bench.Book.Limit(rule).Source, null, [],
        Sentence.Of("steel_joist_fasteners", "What a screw holds in steel is the screw maker's figure.")) with { Unit = ForceUnit(bench) };

    private static decimal JoistGravity(CheckBench bench)
    {
        foreach (var row in bench.Book.Tables.WoodGravities.Rows)
        {
            if (row.Species == bench.Facts.Floor.Species)
            {
                return row.Gravity.Value;
            }
        }

        return bench.Book.Limit("joist-gravity").Value.Value;
    }

    private static Check Pull(CheckBench bench, string rule, decimal pull, decimal holds, IReadOnlyList<string> where)
    {
        var (share, source) = bench.Book.Limit(rule);
        var limit = HangingLoad.Capped((double)(holds * share.Value * share.Unit.Factor));
        var unit = ForceUnit(bench);
        return new Check
        {
            Rule = rule,
            Source = source,
            Status = pull <= limit ? CheckStatus.Pass : CheckStatus.Fail,
            Comparison = CheckComparison.AtMost,
            Value = decimal.Round(Figure.Of(pull, FigureUnit.Parse("N")).In(unit), 2),
            Limit = decimal.Round(Figure.Of(limit, FigureUnit.Parse("N")).In(unit), 2),
            Unit = unit,
            Where = where,
            Remedy = pull <= limit ? null : Sentence.Of("more_or_longer_fasteners", "Use more fasteners at each place, or longer ones."),
        };
    }

    private static string ForceUnit(CheckBench bench) => bench.Imperial ? "lbf" : "N";
}
