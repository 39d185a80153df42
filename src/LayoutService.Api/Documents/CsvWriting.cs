using System.Globalization;
using System.Text;

namespace LayoutService.Api.Documents;

/// <summary>
/// Writes a table as RFC 4180: a header line, CRLF after every line, quotes where a cell needs them, decimal points. A text
/// that a spreadsheet would take for a formula (it begins with =, +, -, @, a tab or a return) gets an apostrophe in front, as
/// OWASP's page on CSV injection advises; numbers are written as they are.
/// </summary>
internal static class CsvWriting
{
    public const string MediaType = "text/csv";

    public static byte[] Of(Table table, OrderSheet sheet)
    {
        var text = new StringBuilder();
        Line(text, table.Columns.Select(column => (object?)column.Name));
        foreach (var row in table.Rows(sheet))
        {
            Line(text, row);
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Line(StringBuilder text, IEnumerable<object?> cells) =>
        text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    private static string Cell(object? value) => value switch
    {
        null => string.Empty,
        string said => Quoted(Harmless(said)),
        bool flag => flag ? "true" : "false",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    /// <summary>A text that no spreadsheet reads as a formula.</summary>
    public static string Harmless(string text) => text.Length > 0 && (text[0] is '=' or '+' or '-' or '@' or '\t' or '\r') ? "'" + text : text;

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny("\",\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
