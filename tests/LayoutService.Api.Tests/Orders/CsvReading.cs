using System.Text;

namespace LayoutService.Api.Tests.Orders;

/// <summary>Reads RFC 4180 strictly: lines end with CRLF, quotes stand at both ends of a cell and are doubled inside.</summary>
internal static class CsvReading
{
    public static IReadOnlyList<IReadOnlyList<string>> Of(string text)
    {
        var rows = new List<IReadOnlyList<string>>();
        var row = new List<string>();
        var cell = new StringBuilder();
        for (var i = 0; i < text.Length;)
        {
            if (text[i] == '"')
            {
                for (i++; text[i] != '"' || (i + 1 < text.Length && text[i + 1] == '"'); i++)
                {
                    i += text[i] == '"' ? 1 : 0;
                    cell.Append(text[i]);
                }

                i++;
            }

            while (text[i] is not (',' or '\r'))
            {
                Assert.False(text[i] is '"' or '\n', $"A bare quote or line feed at {i}.");
                cell.Append(text[i++]);
            }

            row.Add(cell.ToString());
            cell.Clear();
            if (text[i++] == '\r')
            {
                Assert.Equal('\n', text[i++]);
                rows.Add(row);
                row = [];
            }
        }

        Assert.Empty(row);
        return rows;
    }
}
