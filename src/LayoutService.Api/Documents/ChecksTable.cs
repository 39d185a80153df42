namespace LayoutService.Api.Documents;

/// <summary>The checks, a row for each.</summary>
internal static class ChecksTable
{
    public static readonly Table Table = new(
        "checks",
        "What was checked against which rule, a row for each check.",
        [
            new("rule", ColumnKind.Text, "Id of the rule."),
            new("status", ColumnKind.Text, "pass, marginal, fail or not-checked."),
            new("comparison", ColumnKind.Text, "at-most, at-least or equal."),
            new("value", ColumnKind.Number, "What the plan has."),
            new("limit", ColumnKind.Number, "What the rule asks for."),
            new("unit", ColumnKind.Text, "Unit of both."),
            new("where", ColumnKind.Text, "Ids of the places that decide, separated by spaces."),
            new("document", ColumnKind.Text, "Where the rule is published."),
            new("edition", ColumnKind.Text, "Its edition."),
            new("clause", ColumnKind.Text, "Its clause or table."),
            new("basis", ColumnKind.Text, "What kind of ground it stands on."),
            new("remedy", ColumnKind.Text, "What a person could change."),
        ],
        sheet => sheet.Checks.Select(check => new object?[]
        {
            check.Rule, check.Status, check.Comparison, check.Value, check.Limit, check.Unit, string.Join(' ', check.Where), check.Source.Document,
            check.Source.Edition, check.Source.Clause, check.Source.Basis, check.Remedy?.Text,
        }));
}
