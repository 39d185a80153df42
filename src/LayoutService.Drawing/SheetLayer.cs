using LayoutService.Engine.Sheets;

namespace LayoutService.Drawing;

/// <summary>
/// The pieces of board with their ids and sizes. Seams are told apart by line: a butt is heavy and solid, a tapered seam a
/// fine long dash, a cut edge dash and dots; a piece that is measured in place is hatched with dots at its edge.
/// </summary>
internal static class SheetLayer
{
    /// <summary>The line of a control joint.</summary>
    public static readonly (string, string)[] ControlJoint = [("stroke-width", "5"), ("stroke-dasharray", "2 4")];

    /// <summary>How far from its middle a piece's label may stand, in shares of the piece.</summary>
    private static readonly double[] Shares = [0, 0.15, -0.15, 0.3, -0.3, 0.4, -0.4];

    public static void Draw(SvgInk ink, SheetPlan sheets, PlanView view, LabelField labels, TapeInk say)
    {
        ink.Group("sheets", null);
        foreach (var joint in sheets.Joints)
        {
            labels.Shun(view[joint.From], view[joint.To]);
        }

        foreach (var piece in sheets.Pieces)
        {
            ink.Group(piece.Id, piece.MeasureInPlace ? $"{piece.Id}: measure in place" : piece.Id);
            ink.Ring(piece.Outline.Select(p => view[p]), ("fill", "#ffffff"), ("fill-opacity", "0"), ("stroke-width", "0.4"), ("stroke", "#9a9a9a"));
            ink.EndGroup();
        }

        foreach (var joint in sheets.Joints)
        {
            (string, string)[] marks = joint.Kind switch
            {
                BoardJointKind.Butt => [("stroke-width", "3")],
                BoardJointKind.Tapered => [("stroke-width", "1"), ("stroke-dasharray", "12 5")],
                BoardJointKind.Control => ControlJoint,
                _ => [("stroke-width", "1.8"), ("stroke-dasharray", "8 3 2 3")],
            };
            ink.Line(view[joint.From], view[joint.To], marks);
        }

        foreach (var piece in sheets.Pieces)
        {
            Letter(ink, piece, view, labels, say);
        }

        ink.EndGroup();
    }

    private static void Letter(SvgInk ink, BoardPiece piece, PlanView view, LabelField labels, TapeInk say)
    {
        var box = view.BoxOf(piece.Outline);
        var middle = Inside(piece, view) ?? box.Middle;
        var within = box.Grown(-1);
        var name = piece.MeasureInPlace ? $"{piece.Id}*" : piece.Id;
        var size = $"{say.Cut(piece.Width)} × {say.Cut(piece.Length)}";
        var upward = box.Width < box.Height && Lettering.Width(size, Lettering.Small) > box.Width;
        var middles = Shares.SelectMany(down => Shares.Select(right => new Spot(middle.X + (right * box.Width), middle.Y + (down * box.Height)))).ToList();
        if (Label.WritePair(ink, labels, name, size, middles, within, upward, clear: true))
        {
            return;
        }

        if (Label.Write(ink, labels, name, Lettering.Size, middles, within, upward, bold: true, clear: true))
        {
            Label.Write(ink, labels, size, Lettering.Small, middles, within, upward, bold: false, clear: true);
        }
        else if (!Label.WritePair(ink, labels, name, size, middles, within, upward, clear: false)
            && !Label.Write(ink, labels, name, Lettering.Size, middles, within, upward, bold: true)
            && !Label.Write(ink, labels, name, Lettering.Small, [middle, new(box.Middle.X, box.Middle.Y)], null, upward, bold: true))
        {
            labels.Miss();
        }
    }

    // the middle of an L lies outside of it: the middle of its longest level cut does not
    private static Spot? Inside(BoardPiece piece, PlanView view)
    {
        var ring = piece.Outline.Select(p => view[p]).ToList();
        var levels = ring.Select(c => c.Y).Distinct().Order().ToList();
        Spot? best = null;
        var most = 0d;
        for (var i = 0; i + 1 < levels.Count; i++)
        {
            var y = (levels[i] + levels[i + 1]) / 2;
            var cuts = new List<double>();
            for (var k = 0; k < ring.Count; k++)
            {
                var (a, b) = (ring[k], ring[(k + 1) % ring.Count]);
                if (a.Y <= y != b.Y <= y)
                {
                    cuts.Add(a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y)));
                }
            }

            cuts.Sort();
            for (var k = 0; k + 1 < cuts.Count; k += 2)
            {
                var worth = (cuts[k + 1] - cuts[k]) * (levels[i + 1] - levels[i]);
                if (worth > most)
                {
                    (most, best) = (worth, new((cuts[k] + cuts[k + 1]) / 2, y));
                }
            }
        }

        return best;
    }
}
