using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// Bending and sag of a strap at the widest real bay under what hangs. A piece that carries the bay alone counts as one span,
/// one that runs on over the next bay as two.
/// </summary>
internal static class StrapStrengthChecks
{
    public static IEnumerable<Check> Of(CheckBench bench)
    {
        if (bench.Facts.Straps is not { SupportSpacing: { } apart } straps)
        {
            yield break;
        }

        var sag = bench.Book.Limit("strap-deflection");
        var bend = bench.Book.Limit("strap-bending");
        if (HangingLoad.OnBoard(bench) is not { } onBoard)
        {
            var unknown = Sentence.Of("board_weight_unknown", "The tables give no design load for a board of this type and thickness.");
            yield return bench.NotChecked("strap-deflection", CheckComparison.AtMost, sag.Source, null, ["#/sheets/thickness"], unknown);
            yield return bench.NotChecked("strap-bending", CheckComparison.AtMost, bend.Source, null, ["#/sheets/thickness"], unknown) with { Unit = StressUnit(bench) };
            yield break;
        }

        var load = (double)HangingLoad.OnStrap(bench, straps, onBoard);
        var (span, next) = ((double)apart.Millimetres, (double?)straps.NextSpan?.Millimetres);
        var (thick, face) = ((double)straps.Thickness.Millimetres, (double)straps.Face.Millimetres);
        var modulus = (double)bench.Book.Limit("strap-modulus").Value.In("MPa");
        var creep = (double)bench.Book.Limit("creep").Value.Value;
        var sagged = creep * StrapBeam.Sag(load, span, next, modulus * face * thick * thick * thick / 12);
        yield return bench.Lengths(
            "strap-deflection", CheckComparison.AtMost, Length.FromMillimetres(decimal.Round(HangingLoad.Capped(sagged), 3)),
            new(Length.FromMillimetres(decimal.Round(HangingLoad.Capped((double)(apart.Millimetres * sag.Value.Value)), 3)), sag.Source), straps.Supports,
            Stiffer, note: Note(bench, straps, load));

        var stress = (decimal)(StrapBeam.Moment(load, span, next) / (face * thick * thick / 6));
        yield return Stress(bench, straps, stress, bend) with { Note = Note(bench, straps, load) };
    }

    private static Sentence Stiffer => Sentence.Of(
        "strap_sags_in_wide_bay", "Put blocking midway in this bay so that straps are carried there, or use a thicker strap.");

    private static Check Stress(CheckBench bench, StrapFacts straps, decimal stress, Cited<Figure> share)
    {
        var book = bench.Book;
        var strength = book.Limit("strap-bending-value").Value.In("MPa") * book.Limit("bending-load-duration").Value.Value;
        if (book.Has("bending-resistance-factor"))
        {
            // Limit states: the factored resistance over the load factor is what the unfactored load may reach.
            strength = strength * book.Limit("bending-resistance-factor").Value.Value / Math.Max(0.001m, book.Limit("dead-load-factor").Value.Value);
        }

        var unit = StressUnit(bench);
        var limit = HangingLoad.Capped((double)(strength * share.Value.Value * share.Value.Unit.Factor));
        return new Check
        {
            Rule = "strap-bending",
            Source = share.Source,
            Status = stress <= limit ? CheckStatus.Pass : CheckStatus.Fail,
            Comparison = CheckComparison.AtMost,
            Value = decimal.Round(Figure.Of(stress, FigureUnit.Parse("MPa")).In(unit), 3),
            Limit = decimal.Round(Figure.Of(limit, FigureUnit.Parse("MPa")).In(unit), 3),
            Unit = unit,
            Where = straps.Supports,
            Remedy = stress <= limit ? null : Stiffer,
        };
    }

    private static string StressUnit(CheckBench bench) => bench.Imperial ? "psi" : "MPa";

    private static Sentence Note(CheckBench bench, StrapFacts straps, double load)
    {
        var said = bench.Imperial
            ? string.Create(CultureInfo.InvariantCulture, $"{load * 1000 / 14.593903:0.##} lb/ft")
            : string.Create(CultureInfo.InvariantCulture, $"{load * 1000:0.#} N/m");
        return straps.NextSpan is { } next
            ? Sentence.Of(
                "strap_as_two_spans", $"Counted as two spans, the next one {bench.Text(next)}, under {said} for good.",
                ("next", bench.Text(next)), ("load", said))
            : Sentence.Of("strap_as_one_span", $"Counted as one span under {said} for good: a piece ends on both sides of this bay.", ("load", said));
    }
}
