using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>Board span, fasteners and load (NBC 9.29.5; IRC R702.3.5).</summary>
internal static class BoardChecks
{
    private static readonly Citation Asked = new() { Document = "The request", Basis = Basis.SetByCaller, Confidence = Confidence.High };

    public static IEnumerable<Check> Of(CheckBench bench)
    {
        var board = bench.Facts.Board;
        yield return Span(bench, board);
        yield return bench.Lengths(
            "board-screw-spacing", CheckComparison.AtMost, board.ScrewSpacing, bench.Limit("board-screw-spacing"), [],
            Sentence.Of("set_screws_closer", "Set the screws closer."));
        yield return bench.Lengths(
            "board-screw-edge", CheckComparison.AtLeast, board.ScrewEdge, bench.Limit("board-screw-edge"), [],
            Sentence.Of("set_screws_further_in", "Set the screws further from the board's edge."));

        var thickness = (Nominal(bench, board.Thickness) * board.Layers) + board.BehindBoard;
        var into = bench.Limit("board-screw-penetration");
        var wood = board.ScrewLength - thickness;
        yield return bench.Lengths(
            "board-screw-penetration", CheckComparison.AtLeast, wood, into, [],
            Sentence.Of(
                "use_longer_board_screw", $"Use a screw of {bench.Text(thickness + into.Value)} or longer.",
                ("length", bench.Text(thickness + into.Value))));

        if (bench.Facts.Straps is { } straps)
        {
            yield return bench.Lengths(
                "screw-tip", CheckComparison.AtLeast, thickness + straps.Thickness - board.ScrewLength, bench.Limit("screw-tip"), [],
                Sentence.Of(
                    "use_shorter_board_screw", $"Use a screw of {bench.Text(thickness + straps.Thickness)} or shorter, so that its tip stays in the strap.",
                    ("length", bench.Text(thickness + straps.Thickness))));
        }

        if (board.LayerOffset is { } layers)
        {
            yield return bench.Lengths(
                "layer-seam-offset", CheckComparison.AtLeast, layers.Least, bench.Limit("layer-seam-offset"),
                layers.Pieces, Sentence.Of("shift_layer", "Offer another sheet width or length, so that the seams of this layer lie off those below it."));
        }

        if (board.Stagger is { } stagger)
        {
            // butts are told as drawn: rounding leaves a unit either way
            yield return bench.Lengths(
                "butt-stagger-rows", CheckComparison.AtLeast, stagger.Asked - stagger.Least <= new Length(1) ? Length.Max(stagger.Least, stagger.Asked) : stagger.Least,
                new(stagger.Asked, Asked), stagger.Pieces,
                Sentence.Of("less_stagger", "Offer another sheet width or length, or ask for less stagger: an opening that lies wholly inside a course has a butt through it."));
        }

        if (bench.Facts.FireRating is { } rating)
        {
            yield return Rated(bench, rating, wood);
        }

        if (bench.Facts.InsulationMassPerArea is { } mass and > 0)
        {
            yield return bench.Lengths(
                "board-under-insulation", CheckComparison.AtLeast, Nominal(bench, board.Thickness), bench.Limit("board-under-insulation"), [],
                Sentence.Of("use_thicker_board", "Use a thicker board."));
            yield return Load(bench, board, mass);
        }
    }

    private static Check Span(CheckBench bench, BoardFacts board)
    {
        var rule = GridRules.RowSpacing;
        var orientation = board.Perpendicular ? "perpendicular" : "parallel";
        var printed = bench.Book.BoardSpan(board.Thickness, board.Type, orientation, board.Textured ? "ceiling-textured" : "ceiling-painted");
        var closer = Sentence.Of("set_supports_closer", "Set the supports closer, or use a thicker board.");
        if (bench.Book.Override(rule.Id) is { } own)
        {
            return bench.Lengths(
                rule.Id, CheckComparison.AtMost, board.SupportSpacing, bench.Own(rule, new(Length.Zero, own.Source)), board.Supports, closer);
        }

        if (printed is null)
        {
            var table = bench.Book.Tables.BoardSpans.First(table => table.SpeaksFor(bench.Book.Ruleset));
            return bench.NotChecked(
                rule.Id, CheckComparison.AtMost, bench.Book.Cite(null, table.Source), null, ["#/sheets/thickness"],
                Sentence.Of("board_not_in_table", "The table does not know a board of this type and thickness."));
        }

        if (printed.Value is null)
        {
            return bench.NotChecked(rule.Id, CheckComparison.AtMost, printed.Source, null, []) with
            {
                Status = CheckStatus.Fail,
                Value = bench.Say(board.SupportSpacing),
                Where = board.Supports,
                Remedy = Sentence.Of("board_not_permitted", "The table does not permit this board, this way round and with this finish, on a ceiling: use a thicker board."),
            };
        }

        var (limit, note) = bench.Module(printed.Value, board.SupportSpacing);
        return bench.Lengths(
            rule.Id, CheckComparison.AtMost, board.SupportSpacing, new(limit, printed.Source), board.Supports, closer, note: note);
    }

    // A plain strap is 19 mm thick: no rated ceiling's 30 to 60 mm of wood can be had in it.
    private static Check Rated(CheckBench bench, string rating, Length inWood)
    {
        var rule = GridRules.RatedPenetration;
        var table = bench.Book.Tables.BoardPenetration;
        var row = table.SpeaksFor(bench.Book.Ruleset) ? table.Rows.FirstOrDefault(row => row.Rating == rating) : null;
        var asListed = Sentence.Of("rated_by_listed_assembly", "A fire rating comes from a tested assembly: build that assembly as it is listed.");
        if (row is null && bench.Book.Override(rule.Id) is null)
        {
            return bench.NotChecked(rule.Id, CheckComparison.AtLeast, GridRules.ListedAssembly, null, [], asListed);
        }

        var held = bench.Facts.Straps is { } straps ? Length.Min(inWood, straps.Thickness) : inWood;
        var limit = bench.Own(rule, new(row?.Screws.Length ?? Length.Zero, bench.Book.Cite(row?.Source, table.Source)));
        var shallow = bench.Facts.Straps is { } wood && wood.Thickness < limit.Value
            ? Sentence.Of("strap_too_thin_for_rating", $"No screw can have more wood than the strap's {bench.Text(wood.Thickness)}.", ("thickness", bench.Text(wood.Thickness)))
            : null;
        return bench.Lengths(rule.Id, CheckComparison.AtLeast, held, limit, [], asListed, note: shallow);
    }

    private static Check Load(CheckBench bench, BoardFacts board, decimal mass)
    {
        var unit = bench.Imperial ? "lb/ft2" : "kg/m2";
        var rule = GridRules.InsulationLoad;
        var said = decimal.Round(Figure.Of(mass, FigureUnit.Parse("kg/m2")).In(unit), 6);
        var most = bench.Book.InsulationOnBoard(board.Thickness, board.Type, board.SupportSpacing);
        var own = bench.Book.Override(rule.Id);
        var limit = own is null ? most?.Value.In(unit) : Figure.Of(own.Value, FigureUnit.Parse(rule.UnitIn(bench.Book.Country))).In(unit);
        return new Check
        {
            Rule = rule.Id,
            Source = own?.Source ?? most?.Source ?? bench.Book.Tables.BoardInsulation.Source,
            Status = limit is null ? CheckStatus.NotChecked : said <= limit ? CheckStatus.Pass : CheckStatus.Fail,
            Comparison = CheckComparison.AtMost,
            Value = said,
            Limit = limit is { } known ? decimal.Round(known, 6) : null,
            Unit = unit,
            Where = board.Supports,
            Missing = limit is null ? ["#/sheets/thickness"] : [],
            Remedy = said <= limit ? null : Sentence.Of("lighter_insulation", "Use lighter insulation, closer supports or a thicker board."),
        };
    }

    // 15.9 mm in a metric request is the 5/8 in board.
    private static Length Nominal(CheckBench bench, Length thickness)
    {
        foreach (var row in bench.Book.Tables.Boards.Rows)
        {
            if (row.MetricThickness.Length == thickness)
            {
                return row.Thickness.Length;
            }
        }

        return thickness;
    }
}
