using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Published;

/// <summary>
/// Tables that have been transcribed once only. A second transcription is a file of this name under Tables/ with the columns
/// <c>row,item,value</c>; the rows and items of each are described in Tables/README.md. As soon as the file is there it is compared.
/// </summary>
internal static class AwaitedTranscriptions
{
    private static readonly PublishedTables Tables = PublishedTables.Current;

    public static readonly IReadOnlyDictionary<string, Func<IEnumerable<string>>> ByFile = new SortedDictionary<string, Func<IEnumerable<string>>>(StringComparer.Ordinal)
    {
        ["wood-values"] = () => Tables.WoodValues.Rows.SelectMany(row => new[]
        {
            $"{row.Species} {row.Grade} | modulus | {row.Modulus}", $"{row.Species} {row.Grade} | bending | {row.Bending}",
        }),
        ["span-table-a-grades"] = () => Spans(0),
        ["span-table-b-grades"] = () => Spans(1),
        ["finish-levels"] = () => Tables.FinishLevels.Rows.SelectMany(row => new[]
        {
            $"level {row.Level} | joint coats | {row.JointCoats.Value:0}", $"level {row.Level} | fastener coats | {row.FastenerCoats.Value:0}",
        }),
        ["on-2012-furring"] = () => Tables.SupersededFurring.Rows.Select(row =>
            $"{row.RowSpacing} {row.SupportSpacing?.Printed ?? "continuous"} | section | {row.Thickness.Value:0}x{row.Face.Value:0} mm"),
        ["irc-2015-heights"] = () => Tables.SupersededHeights.Rows.Select(row => $"{row.Space}{(row.Obstruction ? " under obstructions" : "")} | height | {row.Least}"),
        ["strap-strength"] = () => Rules("strap-strength"),
        ["sound"] = () => Rules("sound"),
        ["services"] = () => Rules("services"),
    };

    // Only the rows that the first CSV files (one grade) do not hold.
    private static IEnumerable<string> Spans(int table) => Tables.JoistSpans[table].Rows
        .Where(row => row.Grade != "No.1 and No.2" || (table == 1 && row.Depth.Value < 184 && !(row.Species == "S-P-F" && row.Depth.Value == 140)))
        .Select(row => $"{row.Species} {row.Grade} 38x{row.Depth.Value:0} | {row.Bracing} {row.Spacing.Value:0} | {row.Span.Value:0.00}");

    private static IEnumerable<string> Rules(string table) => Tables.Rules.Single(rules => rules.Id == table).Rows
        .Select(row => $"{row.Rule} {string.Join(" ", row.Rulesets ?? [])}".TrimEnd() + $" | value | {row.Value}");
}
