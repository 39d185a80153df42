using System.Text;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Standards;

/// <summary>Writes docs/standards.md from the tables: every rule and row with its value, source, confidence and use.</summary>
internal static class StandardsPage
{
    public static string Write()
    {
        var tables = PublishedTables.Current;
        var page = new StringBuilder();
        page.Append("""
            # Standards, rules and defaults

            This page is written from the tables in `src/LayoutService.Engine/Standards/Tables` by a test that fails when the two differ
            (`StandardsPageTests`; set `WRITE_DOCS=1` to write it again). Numbers and clause references only: the wording is ours.


            """);
        page.Append($"Rules version of these tables: `{tables.RulesVersion}`.\n\n");
        page.Append("""
            **Confidence.** *high*: read in the document's own text, or in a code that adopts it. *medium*: read in another edition, or in a
            text that quotes the document, or worked out from figures that were read. *low*: from memory, or common practice that varies.
            A figure that is not *high* should be confirmed against the document before anyone claims compliance by it.

            **Basis.** *published*, *secondary* (quoted by another text), *from-memory*, *common-practice* (no standard governs it), *derived*.

            **Use.** *check*: a plan is held against it, or a check or caution is worked out with it. *default*: planned or counted by when the
            caller does not say; the member or block that it shapes stands beside it, and the bounds of a caller's own value. *plan*: the plan is
            laid out by it and it cannot be set. *reference*: served by `GET /v1/rules`; nothing in a plan reads it. *check* and *default* rules
            are set one by one in `rules`; the others are refused with `rule_fixed` and the reason.

            **Modules.** Canadian codes print 300, 400 and 600 mm for the 12, 16 and 24 in that floors are framed at. Both are read as
            one module; a check that leans on this says so in its note.

            ## Rulesets

            | id | document | edition | publisher |
            |---|---|---|---|

            """);
        foreach (var ruleset in RuleCatalogue.Current.Rulesets)
        {
            Line(page, $"`{ruleset.Id}`", ruleset.Document, ruleset.Edition ?? "", ruleset.Publisher ?? "");
        }

        page.Append("\n## Rules\n\nA caller sets those of use *check* and *default* by id in `rules`, in the unit shown.\n\n| rule | says | value | for | basis, confidence | source | use |\n|---|---|---|---|---|---|---|\n");
        foreach (var rule in RuleCatalogue.Current.Rules)
        {
            foreach (var value in rule.Values)
            {
                var figure = (value.Value?.Printed ?? "none") + (value.Imperial is null ? "" : $" ({value.Imperial})");
                var use = RuleUses.Of(rule.Id).ToString().ToLowerInvariant()
                    + (RuleUses.Bounds(rule.Id) is { } bounds ? $": {bounds.UsedIn}, {bounds.Least:0.####} to {bounds.Most:0.####}" : "");
                Line(
                    page, $"`{rule.Id}`", rule.Title + (value.When is null ? "" : $": {value.When}"), $"{rule.Comparison} {figure}",
                    value.Rulesets.Count == RuleCatalogue.Current.Rulesets.Count ? "all" : string.Join(", ", value.Rulesets),
                    Mark(value.Source), Cite(value.Source), use);
            }
        }

        page.Append("\n## Materials\n\n| kind | name | figures | basis, confidence | source |\n|---|---|---|---|---|\n");
        foreach (var material in MaterialCatalogue.Of(tables).Where(material => material.Kind is not ("finishing" or "joist-span" or "design-load" or "compressed-batt")))
        {
            Line(page, material.Kind, material.Name, string.Join("; ", material.Figures.Select(figure => $"{figure.Name} {figure.Value}")), Mark(material.Source), Cite(material.Source));
        }

        page.Append("\n## Weights that a designer counts\n\n| part | load | basis, confidence | source |\n|---|---|---|---|\n");
        foreach (var table in new[] { tables.DeadLoads, tables.InsulationWeights })
        {
            foreach (var row in table.Rows)
            {
                var source = row.Source?.Over(table.Source) ?? table.Source;
                Line(page, row.Part, row.Load.Printed, Mark(source), Cite(source));
            }
        }

        var batts = tables.CompressedBatts;
        page.Append($"\n## {batts.Title}\n\n{Mark(batts.Source)}. {Cite(batts.Source)}\n\n| batt | thickness | in a depth of | is worth |\n|---|---|---|---|\n");
        foreach (var row in batts.Rows)
        {
            Line(page, row.Nominal.Printed, row.Thickness.Printed, row.Depth.Printed, row.Resistance.Printed);
        }

        foreach (var table in tables.JoistSpans)
        {
            page.Append($"\n## {table.Title}\n\n{Mark(table.Source)}. {Cite(table.Source)}\n\n| species, grade | depth | braced by | clear span at 300, 400, 600 mm |\n|---|---|---|---|\n");
            foreach (var joist in table.Rows.GroupBy(row => (row.Species, row.Grade, row.Depth, row.Bracing)))
            {
                Line(page, $"{joist.Key.Species}, {joist.Key.Grade}", joist.Key.Depth.Printed, joist.Key.Bracing, string.Join(", ", joist.OrderBy(row => row.Spacing.Value).Select(row => row.Span.Printed)));
            }
        }

        page.Append("\n## Why some rules cannot be set\n\n| rule | why |\n|---|---|\n");
        foreach (var rule in RuleCatalogue.Current.Rules.Where(rule => RuleUses.Of(rule.Id) == RuleUse.Plan))
        {
            Line(page, $"`{rule.Id}`", RuleUses.WhyFixed(rule.Id)!);
        }

        page.Append("\n## Superseded\n\nKept so that an older job can be read; no plan reads them.\n\n| table | row | figure | source |\n|---|---|---|---|\n");
        foreach (var row in tables.SupersededFurring.Rows)
        {
            Line(page, tables.SupersededFurring.Title, $"rows to {row.RowSpacing}, " + (row.SupportSpacing is null ? "continuous backing" : $"supports to {row.SupportSpacing}"), $"{row.Thickness} × {row.Face}", Cite(tables.SupersededFurring.Source));
        }

        foreach (var row in tables.SupersededHeights.Rows)
        {
            Line(page, tables.SupersededHeights.Title, row.Space + (row.Obstruction ? ", under beams and ducts" : ""), row.Least.Printed, Cite(tables.SupersededHeights.Source));
        }

        return page.ToString();
    }

    private static void Line(StringBuilder page, params string[] cells) =>
        page.Append("| ").AppendJoin(" | ", cells.Select(cell => cell.Replace("|", "\\|"))).Append(" |\n");

    private static string Mark(Citation source) => $"{Word(source.Basis)}, {source.Confidence.ToString().ToLowerInvariant()}";

    private static string Word(Basis basis) => basis switch
    {
        Basis.FromMemory => "from-memory",
        Basis.CommonPractice => "common-practice",
        Basis.SetByCaller => "set-by-caller",
        _ => basis.ToString().ToLowerInvariant(),
    };

    private static string Cite(Citation source) =>
        string.Join(", ", new[] { source.Document, source.Edition, source.Clause }.Where(part => !string.IsNullOrEmpty(part)))
        + (source.Note is null ? "" : $" ({source.Note.TrimEnd('.')})");
}
