using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Standards;

/// <summary>Looks up what the floor tables print for a sawn joist (NBC Tables 9.23.4.2.-A and -B; 1.9 kPa residential floor).</summary>
public static class JoistSpans
{
    /// <summary>Words of the tables for what braces a joist, from the shortest span to the longest.</summary>
    public static readonly IReadOnlyList<string> Bracings =
        ["strapping", "bridging", "strapping-and-bridging", "furred-ceiling", "furred-ceiling-and-bridging"];

    /// <summary>True when the ruleset has floor tables.</summary>
    public static bool HasJoistSpans(this RuleBook book) => book.Tables.JoistSpans.Any(table => table.SpeaksFor(book.Ruleset));

    /// <summary>The printed spacing that speaks for joists this far apart on centre; null beyond the tables' widest.</summary>
    public static Figure? JoistModule(this RuleBook book, Length apart)
    {
        Figure? best = null;
        foreach (var row in book.Tables.JoistSpans[0].Rows)
        {
            if (NominalModule.Of(row.Spacing) >= apart && (best is null || row.Spacing.Length < best.Length))
            {
                best = row.Spacing;
            }
        }

        return best;
    }

    /// <summary>The printed span, or null where the tables have no such row. A depth within 1 mm of the printed one is that size.</summary>
    public static Cited<Figure>? JoistSpan(this RuleBook book, string species, string grade, Length depth, Figure module, string bracing)
    {
        foreach (var table in book.Tables.JoistSpans.Where(table => table.SpeaksFor(book.Ruleset)))
        {
            foreach (var row in table.Rows)
            {
                if (row.Bracing == bracing && row.Species == species && row.Grade == grade && row.Spacing == module
                    && Math.Abs(row.Depth.Length.Units - depth.Units) <= Length.PerMillimetre)
                {
                    return new(row.Span, book.Cite(row.Source, table.Source));
                }
            }
        }

        return null;
    }
}
