using System.Text.Json.Nodes;

namespace LayoutService.Api.Documents;

/// <summary>
/// Metadata of a CSV answer by the W3C recommendation "Metadata Vocabulary for Tabular Data" (17 December 2015): columns,
/// their types and meanings, and the dialect of RFC 4180.
/// </summary>
internal static class CsvMetadata
{
    public const string MediaType = "application/csvm+json";

    public static string Address(string table) => $"/v1/csv-metadata/{table}";

    public static JsonObject Of(Table table) => new()
    {
        ["@context"] = "http://www.w3.org/ns/csvw",
        ["url"] = $"{table.Name}.csv",
        ["dc:title"] = table.Title,
        ["dialect"] = new JsonObject
        {
            ["encoding"] = "utf-8", ["delimiter"] = ",", ["quoteChar"] = "\"", ["doubleQuote"] = true, ["header"] = true,
            ["lineTerminators"] = new JsonArray("\r\n"),
        },
        ["tableSchema"] = new JsonObject
        {
            ["columns"] = new JsonArray([.. table.Columns.Select(column => (JsonNode)new JsonObject
            {
                ["name"] = column.Name,
                ["titles"] = column.Name,
                ["datatype"] = column.Kind switch { ColumnKind.Number => "decimal", ColumnKind.Flag => "boolean", _ => "string" },
                ["dc:description"] = column.Meaning,
                ["null"] = string.Empty,
            })]),
        },
    };
}
