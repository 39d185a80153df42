using LayoutService.Api.Plans.Answers;

namespace LayoutService.Api.Documents;

/// <summary>The cut list, a row for each piece in the order in which it is cut.</summary>
internal static class CutListTable
{
    public static readonly Table Table = new(
        "cut-list",
        "What is cut from each length and sheet, a row for each piece, in the order of the cuts.",
        [
            new("kind", ColumnKind.Text, "length or sheet."),
            new("stock", ColumnKind.Text, "Id of the length or sheet in the cut plan."),
            new("stock_id", ColumnKind.Text, "Which stock it is."),
            new("size", ColumnKind.Text, "Size of the wood."),
            new("stock_length", ColumnKind.Number, "Length as bought."),
            new("stock_width", ColumnKind.Number, "Width of a sheet as bought."),
            new("cut", ColumnKind.Number, "Number of the cut, from 1."),
            new("piece", ColumnKind.Text, "Id of the piece."),
            new("length", ColumnKind.Number, "Length to cut."),
            new("length_text", ColumnKind.Text, "The same as tape text, rounded down."),
            new("width", ColumnKind.Number, "Width to cut, of a board piece."),
            new("width_text", ColumnKind.Text, "The same as tape text, rounded down."),
            new("x", ColumnKind.Number, "Where it lies along the sheet."),
            new("y", ColumnKind.Number, "Where it lies across the sheet."),
            new("turned", ColumnKind.Flag, "True when it lies with its length across the sheet."),
            new("unit", ColumnKind.Text, "Unit of every length."),
        ],
        sheet => sheet.CutPlan.Stock.SelectMany(s => Stick(s, sheet.LengthUnit))
            .Concat(sheet.CutPlan.SheetStock.SelectMany(s => Board(s, sheet.LengthUnit))));

    private static IEnumerable<object?[]> Stick(StickAnswer stick, string unit) => stick.Cuts.Select((cut, i) => new object?[]
    {
        "length", stick.Id, stick.StockId, stick.Size, stick.Length, null, i + 1, cut.PieceId, cut.Length, cut.LengthText, null, null, null, null, null, unit,
    });

    private static IEnumerable<object?[]> Board(CutSheetAnswer sheet, string unit) => sheet.Cuts.Select((cut, i) => new object?[]
    {
        "sheet", sheet.Id, sheet.StockId, null, sheet.Length, sheet.Width, i + 1, cut.PieceId, cut.Length, cut.LengthText, cut.Width, cut.WidthText, cut.X, cut.Y,
        cut.Turned, unit,
    });
}
