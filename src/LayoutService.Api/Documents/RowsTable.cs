using LayoutService.Api.Plans.Answers;

namespace LayoutService.Api.Documents;

/// <summary>The rows of straps, a row for each piece.</summary>
internal static class RowsTable
{
    public static readonly Table Table = new(
        "rows",
        "Where each row of straps is marked and how it is pieced, a row for each piece.",
        [
            new("row", ColumnKind.Text, "Id of the row."),
            new("at", ColumnKind.Number, "Centre of the row along the joists."),
            new("at_text", ColumnKind.Text, "The same as tape text."),
            new("start_mark_text", ColumnKind.Text, "Near edge of the strap at the row's start, as tape text."),
            new("end_mark_text", ColumnKind.Text, "Near edge of the strap at the row's end, as tape text."),
            new("piece", ColumnKind.Text, "Id of the piece."),
            new("cut_length", ColumnKind.Number, "Length to cut."),
            new("cut_length_text", ColumnKind.Text, "The same as tape text, rounded down."),
            new("stock_id", ColumnKind.Text, "The stock that it is cut from."),
            new("start_joint", ColumnKind.Text, "What its start meets."),
            new("end_joint", ColumnKind.Text, "What its end meets."),
            new("unit", ColumnKind.Text, "Unit of every length."),
        ],
        sheet => sheet.Rows.SelectMany(row => row.Pieces.Select(piece => new object?[]
        {
            row.Id, row.At, row.AtText, Mark(row, "start"), Mark(row, "end"), piece.Id, piece.CutLength, piece.CutLengthText, piece.StockId,
            piece.StartJoint, piece.EndJoint, sheet.LengthUnit,
        })));

    private static string? Mark(RowAnswer row, string end) => row.Marks.FirstOrDefault(mark => mark.End == end)?.NearEdgeText;
}
