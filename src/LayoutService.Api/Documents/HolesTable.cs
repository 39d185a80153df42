using LayoutService.Api.Plans.Answers;

namespace LayoutService.Api.Documents;

/// <summary>The holes to cut in board, a row for each.</summary>
internal static class HolesTable
{
    public static readonly Table Table = new(
        "holes",
        "Where each hole is cut in which piece of board, a row for each hole.",
        [
            new("piece", ColumnKind.Text, "Id of the piece of board."),
            new("bulkhead", ColumnKind.Text, "The bulkhead that the piece belongs to; empty for a piece of the ceiling."),
            new("layer", ColumnKind.Number, "Its layer, from 1."),
            new("fixture", ColumnKind.Text, "What the hole is for."),
            new("mark_text", ColumnKind.Text, "Where to mark it from the piece's own corner, as seen on the finished face."),
            new("corner_x", ColumnKind.Number, "Corner that is measured from, where it hangs."),
            new("corner_y", ColumnKind.Number, "Corner that is measured from, where it hangs."),
            new("centre_x", ColumnKind.Number, "Centre of the hole, where it hangs."),
            new("centre_y", ColumnKind.Number, "Centre of the hole, where it hangs."),
            new("diameter", ColumnKind.Number, "Of a round hole."),
            new("width", ColumnKind.Number, "Of a hole with corners, along x."),
            new("height", ColumnKind.Number, "Of a hole with corners, along y."),
            new("unit", ColumnKind.Text, "Unit of every length."),
        ],
        sheet => Holes(sheet).Select(hole => new object?[]
        {
            hole.Piece, hole.Bulkhead, hole.Layer, hole.Cutout.FixtureId, hole.Cutout.MarkText, hole.Cutout.Corner.X, hole.Cutout.Corner.Y,
            hole.Cutout.Centre.X, hole.Cutout.Centre.Y, hole.Cutout.Size.Diameter, hole.Cutout.Size.Width, hole.Cutout.Size.Height, sheet.LengthUnit,
        }));

    private static IEnumerable<(string Piece, string? Bulkhead, int Layer, CutoutAnswer Cutout)> Holes(OrderSheet sheet) =>
        sheet.Pieces.SelectMany(piece => piece.Cutouts.Select(cutout => (piece.Id, (string?)null, piece.Layer, cutout)))
            .Concat(sheet.Bulkheads.SelectMany(bulkhead => bulkhead.Boards.SelectMany(board =>
                board.Cutouts.Select(cutout => (board.Id, (string?)bulkhead.Id, 1, cutout)))));
}
