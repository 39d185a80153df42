namespace LayoutService.Api.Documents;

/// <summary>What stands in a column.</summary>
internal enum ColumnKind
{
    Text,
    Number,
    Flag,
}

/// <summary>A column: its name, what stands in it, and what that means.</summary>
internal sealed record Column(string Name, ColumnKind Kind, string Meaning);

/// <summary>
/// A flat table that is written as CSV or as a sheet of a workbook. Columns never change their order; new ones come last.
/// </summary>
/// <param name="Name">Word of <c>view</c>, and name of the file.</param>
/// <param name="Title">What it is, as a sentence.</param>
/// <param name="Columns">The columns in order.</param>
/// <param name="Rows">The cells of each row, in the order of the columns: text, decimal, whole number, flag or null.</param>
internal sealed record Table(string Name, string Title, IReadOnlyList<Column> Columns, Func<OrderSheet, IEnumerable<object?[]>> Rows);
