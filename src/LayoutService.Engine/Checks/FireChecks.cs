using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>Membrane under the floor, draftstopping and fireblocking (IRC R302.11 to R302.13; NBC 9.10.16.).</summary>
internal static class FireChecks
{
    public static IEnumerable<Check> Of(CheckBench bench)
    {
        if (bench.Book.Has("floor-membrane"))
        {
            yield return Membrane(bench);
        }

        yield return Draftstop(bench);
        if (bench.Book.Has("draftstop-length") && bench.Facts.Floor.ConcealedLength is { } length)
        {
            var most = bench.Limit("draftstop-length");
            var check = bench.Lengths("draftstop-length", CheckComparison.AtMost, length, most, [], Divide);
            yield return check.Status == CheckStatus.Pass || bench.Facts.Floor.Joists == JoistKind.OpenWebTruss
                ? check
                : check with { Status = CheckStatus.NotChecked, Note = OneSpace, Remedy = null };
        }

        if (bench.Book.Has("fireblock-vertical"))
        {
            var tall = bench.Limit("fireblock-vertical");
            yield return bench.Facts.Floor.WallHeight is { } height
                ? bench.Lengths("fireblock-vertical", CheckComparison.AtMost, height, tall, [], Sentence.Of("fireblock_midway", "Put fireblocking midway up furred and framed walls this tall."))
                : bench.NotChecked("fireblock-vertical", CheckComparison.AtMost, tall.Source, tall.Value, ["#/room/heights"]);
        }

        var block = bench.Limit("fireblock-horizontal");
        yield return bench.NotChecked(
            "fireblock-horizontal", CheckComparison.AtMost, block.Source, block.Value, ["#/room/walls"],
            Sentence.Of("fireblock_walls_to_bays", "Where a furred or framed wall is open to the joist bays, the opening is fireblocked."))
            with
        {
            Where = bench.Facts.Bulkheads,
        };
    }

    private static Sentence Divide => Sentence.Of("divide_concealed_space", "Divide the space above the ceiling with draftstops.");

    private static Sentence OneSpace => Sentence.Of(
        "straps_join_bays", "Straps join the bays of a solid floor: ask the inspector whether this counts as one concealed space.");

    // Dimension lumber of nominal 10 in depth and more needs no membrane.
    private static Check Membrane(CheckBench bench)
    {
        var limit = bench.Limit("floor-membrane");
        var floor = bench.Facts.Floor;
        var check = bench.Lengths(
            "floor-membrane", CheckComparison.AtLeast, bench.Facts.Board.Thickness * bench.Facts.Board.Layers, limit, [],
            Sentence.Of("use_half_inch_board", "Use board of 1/2 in or thicker, or ask whether an exception holds."));
        if (check.Status == CheckStatus.Pass || floor.Joists != JoistKind.Sawn)
        {
            return check;
        }

        var deep = bench.Limit("floor-membrane-joist-depth");
        return floor.JoistDepth is not { } depth
            ? check with { Status = CheckStatus.NotChecked, Missing = ["#/joistFields/0/depth"], Remedy = null }
            : depth >= deep.Value
                ? check with
                {
                    Status = CheckStatus.Pass,
                    Remedy = null,
                    Note = Sentence.Of("deep_joists_need_no_membrane", "Joists this deep need no membrane."),
                }
                : check;
    }

    private static Check Draftstop(CheckBench bench)
    {
        var (figure, source) = bench.Book.Limit("draftstop-area");
        var unit = bench.Imperial ? "ft2" : "m2";
        var area = decimal.Round(Figure.Of(bench.Facts.Floor.ConcealedArea, FigureUnit.Parse("m2")).In(unit), 6);
        var limit = decimal.Round(figure.In(unit), 6);
        var open = bench.Facts.Floor.Joists is JoistKind.OpenWebTruss;
        var status = area <= limit ? CheckStatus.Pass : open ? CheckStatus.Fail : CheckStatus.NotChecked;
        return new Check
        {
            Rule = "draftstop-area",
            Source = source,
            Status = status,
            Comparison = CheckComparison.AtMost,
            Value = area,
            Limit = limit,
            Unit = unit,
            Note = status == CheckStatus.NotChecked
                ? OneSpace
                : null,
            Remedy = status == CheckStatus.Fail
                ? Divide
                : null,
        };
    }
}
