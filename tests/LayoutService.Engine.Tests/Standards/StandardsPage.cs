using System.Text;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Standards;

/// <summary>Writes docs/standards.md from the tables: every rule and row with its value, source, confidence and use.</summary>
internal static class StandardsPage
{
    public static string Write(IReadOnlySet<string> checkedRules)
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

            **Use.** *check*: a plan is held against it. *default*: planned by when the caller does not say. *catalogue*: served for
            reference by `GET /v1/rules`; nothing else reads it yet.

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

        page.Append("\n## Rules\n\nA caller may set any of them by id in `rules`, in the unit shown.\n\n| rule | says | value | for | basis, confidence | source | use |\n|---|---|---|---|---|---|---|\n");
        foreach (var rule in RuleCatalogue.Current.Rules)
        {
            foreach (var value in rule.Values)
            {
                var figure = (value.Value?.Printed ?? "none") + (value.Imperial is null ? "" : $" ({value.Imperial})");
                var use = checkedRules.Contains(rule.Id) ? "check" : rule.Default ? "default" : "catalogue";
                Line(
                    page, $"`{rule.Id}`", rule.Title + (value.When is null ? "" : $": {value.When}"), $"{rule.Comparison} {figure}",
                    value.Rulesets.Count == RuleCatalogue.Current.Rulesets.Count ? "all" : string.Join(", ", value.Rulesets),
                    Mark(value.Source), Cite(value.Source), use);
            }
        }

        page.Append("\n## Materials\n\n| kind | name | figures | basis, confidence | source |\n|---|---|---|---|---|\n");
        foreach (var material in MaterialCatalogue.Of(tables).Where(material => material.Kind != "finishing"))
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
            page.Append($"\n## {table.Title}\n\n{Mark(table.Source)}. {Cite(table.Source)}\n\n| species, grade | depth | braced by | spacing | clear span |\n|---|---|---|---|---|\n");
            foreach (var row in table.Rows)
            {
                Line(page, $"{row.Species}, {row.Grade}", row.Depth.Printed, row.Bracing, row.Spacing.Printed, row.Span.Printed);
            }
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
