namespace LayoutService.Engine.Standards;

/// <summary>The rows of the grids of one ruleset, as values of the rules that look them up.</summary>
internal static class GridRows
{
    public static IEnumerable<(GridRule Rule, RuleValue Value)> Of(RuleBook book)
    {
        (GridRule, RuleValue) Say(GridRule rule, string when, Figure? value, Citation source) =>
            (rule, new RuleValue([book.Ruleset], when, value, null, rule.UnitIn(book.Country), source));

        foreach (var table in book.Tables.Furring.Where(table => table.SpeaksFor(book.Ruleset)))
        {
            foreach (var row in table.Rows)
            {
                var when = (row.RowSpacing is null ? "rows at any spacing" : $"rows to {row.RowSpacing}")
                    + (row.SupportSpacing is null ? " on continuous backing" : $" on supports to {row.SupportSpacing}");
                yield return Say(GridRules.StrapThickness, when, row.Thickness, book.Cite(row.Source, table.Source));
                yield return Say(GridRules.StrapFace, when, row.Face, book.Cite(row.Source, table.Source));
            }

            var widest = book.WidestFurringSupports();
            yield return Say(GridRules.StrapSupports, "any strap", widest.Value, widest.Source);
        }

        foreach (var table in book.Tables.BoardSpans.Where(table => table.SpeaksFor(book.Ruleset)))
        {
            foreach (var row in table.Rows)
            {
                yield return Say(GridRules.RowSpacing, $"{row.Thickness} {row.Board}, {row.Orientation}, {row.Surface}", row.MaxSpacing, book.Cite(row.Source, table.Source));
            }
        }

        foreach (var table in book.Tables.Heights.Where(table => table.SpeaksFor(book.Ruleset)))
        {
            foreach (var row in table.Rows.Where(row => row.Rulesets?.Contains(book.Ruleset) ?? true))
            {
                var rule = row.Space == "stair" ? GridRules.HeadroomStair : row.Obstruction ? GridRules.HeadroomUnder : row.Share.Value < 100 ? GridRules.HeadroomOverArea : GridRules.Headroom;
                var when = row.Space + (row.ExistingBuilding ? ", existing building" : "") + (row.SecondarySuite ? ", secondary suite" : "")
                    + (row.Share.Value < 100 ? $", over {row.Share}" : "");
                yield return Say(rule, when, row.Least, book.Cite(row.Source, table.Source));
            }
        }

        foreach (var row in book.Tables.BoardInsulation.Rows)
        {
            yield return Say(GridRules.InsulationLoad, $"{row.Thickness} {row.Board}, supports to {row.SupportSpacing}", row.MostMass, book.Cite(row.Source, book.Tables.BoardInsulation.Source));
        }

        foreach (var table in book.Tables.JoistSpans.Where(table => table.SpeaksFor(book.Ruleset)))
        {
            yield return Say(GridRules.FloorSpan, $"{table.Title}: {table.Rows.Count} spans, listed one by one among the materials", null, book.Cite(null, table.Source));
        }

        var penetration = book.Tables.BoardPenetration;
        if (!penetration.SpeaksFor(book.Ruleset))
        {
            yield return Say(GridRules.RatedPenetration, "any rating", null, GridRules.ListedAssembly);
        }

        foreach (var row in penetration.Rows.Where(row => row.Rating != "none" && penetration.SpeaksFor(book.Ruleset)))
        {
            yield return Say(GridRules.RatedPenetration, $"rating of {row.Rating}", row.Screws, book.Cite(row.Source, penetration.Source));
        }
    }
}
