using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Drawing.Paper;

/// <summary>A hole where it lies on the sheet as pictured, face up: its centre from the left end and from the top edge, and its size there.</summary>
/// <param name="Hole">The hole in its piece.</param>
/// <param name="FromLeft">Centre from the left end of the sheet.</param>
/// <param name="FromTop">Centre from the top edge of the sheet.</param>
/// <param name="Wide">Along the sheet.</param>
/// <param name="High">Across the sheet.</param>
/// <param name="Lies">How the piece lies on the sheet, where that is not with its left end on the left.</param>
internal sealed record SheetHole(BoardCutout Hole, Length FromLeft, Length FromTop, Length Wide, Length High, string Lies);

/// <summary>
/// Where the holes of a piece come on the sheet that it is cut from. Face up, the end that a hole's mark calls left lies on the
/// left; where a piece must have a factory edge and has it on the other side, it lies turned half round; a piece that is cut
/// across the sheet has its left end at the top.
/// </summary>
internal static class SheetHoles
{
    public static IEnumerable<SheetHole> Of(SheetPlan sheets, CutSheet sheet, SheetCut cut, BoardPiece piece, double runDegrees)
    {
        foreach (var hole in piece.Cutouts)
        {
            var (along, across) = Reach(hole, runDegrees);
            var (long_, wide) = cut.Turned ? (cut.Width.Units, cut.Length.Units) : (cut.Length.Units, cut.Width.Units);
            var fromLeft = Said(hole, "end") == "left" ? along : long_ - along;
            var fromTop = Said(hole, "edge") == "top" ? across : wide - across;
            var (holeLong, holeWide) = Sizes(hole, runDegrees);
            if (cut.Turned)
            {
                // a quarter turn clockwise: left comes to the top, top to the right
                yield return new(hole, new(cut.X.Units + wide - fromTop), new(cut.Y.Units + fromLeft), holeWide, holeLong, ", lying across");
            }
            else if (IsTurnedRound(sheets, sheet, cut, piece, hole))
            {
                yield return new(hole, new(cut.X.Units + long_ - fromLeft), new(cut.Y.Units + wide - fromTop), holeLong, holeWide, ", turned half round");
            }
            else
            {
                yield return new(hole, new(cut.X.Units + fromLeft), new(cut.Y.Units + fromTop), holeLong, holeWide, string.Empty);
            }
        }
    }

    /// <summary>True when the one factory edge that the piece needs would else lie inside the sheet.</summary>
    private static bool IsTurnedRound(SheetPlan sheets, CutSheet sheet, SheetCut cut, BoardPiece piece, BoardCutout hole)
    {
        var (atTop, atBottom) = (cut.Y.Units == 0, cut.Y.Units + cut.Width.Units == sheet.Width.Units);
        var taper = sheets.Joints.FirstOrDefault(joint => joint.Kind == BoardJointKind.Tapered && (joint.PieceA == piece.Id || joint.PieceB == piece.Id));
        if (cut.FactoryEdges != 1 || taper is null || atTop == atBottom)
        {
            return false;
        }

        var isHoleSide = Off(hole.Corner, taper.From, taper.To) < piece.Width.Units / 2.0;
        var isTop = (Said(hole, "edge") == "top") == isHoleSide;
        return isTop != atTop;
    }

    /// <summary>From the corner that a hole is measured from to its centre, along the joists and across them.</summary>
    private static (long Along, long Across) Reach(BoardCutout hole, double runDegrees)
    {
        var (sin, cos) = Math.SinCos(runDegrees * Math.PI / 180);
        var (x, y) = ((double)(hole.Centre.X.Units - hole.Corner.X.Units), (double)(hole.Centre.Y.Units - hole.Corner.Y.Units));
        return ((long)Math.Round(Math.Abs((x * cos) + (y * sin))), (long)Math.Round(Math.Abs((y * cos) - (x * sin))));
    }

    private static (Length Along, Length Across) Sizes(BoardCutout hole, double runDegrees) =>
        Math.Abs(Math.Sin(runDegrees * Math.PI / 180)) > 0.7 ? (hole.Size.Height, hole.Size.Width) : (hole.Size.Width, hole.Size.Height);

    private static double Off(Point place, Point from, Point to)
    {
        double X(Point a) => a.X.Units - from.X.Units;
        double Y(Point a) => a.Y.Units - from.Y.Units;
        return Math.Abs((X(to) * Y(place)) - (Y(to) * X(place))) / Math.Max(1, Math.Sqrt((X(to) * X(to)) + (Y(to) * Y(to))));
    }

    private static string Said(BoardCutout hole, string name) => hole.Mark.Params.First(value => value.Key == name).Value;
}
