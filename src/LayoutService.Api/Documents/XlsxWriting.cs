using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;

namespace LayoutService.Api.Documents;

/// <summary>
/// Writes tables as the sheets of a workbook (ISO/IEC 29500, SpreadsheetML): texts in the cells, numbers as numbers, no styles,
/// no formulas. Written here because it is five small parts in an archive whose bytes are then the same for the same plan;
/// libraries for it stamp the time of writing.
/// </summary>
internal static class XlsxWriting
{
    public const string MediaType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/package/2006/relationships";
    private const string OfficeRelations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Types = "application/vnd.openxmlformats-officedocument.spreadsheetml";

    /// <summary>The earliest time that the archive can hold; the plan knows no clock.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Of(IReadOnlyList<Table> tables, OrderSheet sheet)
    {
        using var kept = new MemoryStream();
        using (var archive = new ZipArchive(kept, ZipArchiveMode.Create, leaveOpen: true))
        {
            var numbers = Enumerable.Range(1, tables.Count).ToList();
            Add(archive, "[Content_Types].xml",
                $"<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"{Types}.sheet.main+xml\"/>{string.Concat(numbers.Select(n => $"<Override PartName=\"/xl/worksheets/sheet{n}.xml\" ContentType=\"{Types}.worksheet+xml\"/>"))}</Types>");
            Add(archive, "_rels/.rels",
                $"<Relationships xmlns=\"{Relations}\"><Relationship Id=\"rId1\" Type=\"{OfficeRelations}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Add(archive, "xl/workbook.xml",
                $"<workbook xmlns=\"{Main}\" xmlns:r=\"{OfficeRelations}\"><sheets>{string.Concat(numbers.Select(n => $"<sheet name=\"{tables[n - 1].Name}\" sheetId=\"{n}\" r:id=\"rId{n}\"/>"))}</sheets></workbook>");
            Add(archive, "xl/_rels/workbook.xml.rels",
                $"<Relationships xmlns=\"{Relations}\">{string.Concat(numbers.Select(n => $"<Relationship Id=\"rId{n}\" Type=\"{OfficeRelations}/worksheet\" Target=\"worksheets/sheet{n}.xml\"/>"))}</Relationships>");
            foreach (var n in numbers)
            {
                Add(archive, $"xl/worksheets/sheet{n}.xml", Sheet(tables[n - 1], sheet));
            }
        }

        return kept.ToArray();
    }

    private static string Sheet(Table table, OrderSheet sheet)
    {
        var text = new StringBuilder($"<worksheet xmlns=\"{Main}\"><sheetData>");
        var number = 1;
        Row(text, number++, table.Columns.Select(column => (object?)column.Name));
        foreach (var row in table.Rows(sheet))
        {
            Row(text, number++, row);
        }

        return text.Append("</sheetData></worksheet>").ToString();
    }

    private static void Row(StringBuilder text, int number, IEnumerable<object?> cells)
    {
        text.Append(CultureInfo.InvariantCulture, $"<row r=\"{number}\">");
        var column = 0;
        foreach (var cell in cells)
        {
            var at = $"{(char)('A' + column++)}{number.ToString(CultureInfo.InvariantCulture)}";
            text.Append(cell switch
            {
                null => string.Empty,
                string said => $"<c r=\"{at}\" t=\"inlineStr\"><is><t xml:space=\"preserve\">{SecurityElement.Escape(XmlText.Of(said))}</t></is></c>",
                bool flag => $"<c r=\"{at}\" t=\"b\"><v>{(flag ? 1 : 0)}</v></c>",
                _ => $"<c r=\"{at}\"><v>{Convert.ToString(cell, CultureInfo.InvariantCulture)}</v></c>",
            });
        }

        text.Append("</row>");
    }

    private static void Add(ZipArchive archive, string name, string xml)
    {
        var entry = archive.CreateEntry(name, CompressionLevel.Fastest);
        entry.LastWriteTime = NoTime;
        using var stream = entry.Open();
        stream.Write(Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n" + xml));
    }
}
