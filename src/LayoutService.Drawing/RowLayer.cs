using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Strapping;

namespace LayoutService.Drawing;

/// <summary>Rows as solid bars, joint by joint, each piece with its id and cut length; nailers hatched across; scabs as boxes.</summary>
internal static class RowLayer
{
    // a piece no longer than this may have its letters past its ends
    private const double ShortOnPaper = 160;

    /// <summary>True when the rows lie more level than upright on the paper.</summary>
    public static bool RunLevel(Survey survey) => Math.Abs(Math.Sin(Degrees(survey) * Math.PI / 180)) > 0.7;

    /// <summary>Direction of the joists of a room, or of a part of one, in which all run one way.</summary>
    public static double Degrees(Survey survey) => (double)survey.JoistFields[0].RunDegrees;

    public static void Draw(SvgInk ink, StrappingPlan strapping, Survey survey, PlanView view, LabelField labels, TapeInk say)
    {
        ink.Group("straps", null);
        var face = view.Size(survey.Strapping.Face);
        foreach (var nailer in strapping.Nailers)
        {
            ink.Group(null, $"{nailer.Id}: {say.Cut(nailer.CutLength)}");
            ink.Ring(Bars.Of(view[nailer.From], view[nailer.To], face), ("stroke-dasharray", "2 2"));
            ink.EndGroup();
        }

        foreach (var row in strapping.Rows)
        {
            ink.Group(row.Id, About(row, say));
            foreach (var piece in row.Pieces)
            {
                // a piece that batts slide over is fastened last: dashed, and not filled
                ink.Ring(
                    Bars.Of(view[piece.From], view[piece.To], face),
                    piece.FastenAfter.Count > 0 ? [("fill", "#ffffff"), ("stroke-width", "1.2"), ("stroke-dasharray", "6 3")] : [("fill", "#e6e6e6"), ("stroke-width", "0.9")]);
                if (piece.StartJoint is JointKind.Joist or JointKind.Scab or JointKind.Block or JointKind.Lap)
                {
                    ink.Line(Across(view, piece, face, 1), Across(view, piece, face, -1), ("stroke-width", "2.4"));
                }
            }

            ink.EndGroup();
        }

        foreach (var scab in strapping.Scabs)
        {
            ink.Circle(view[scab.At], (face / 2) + 2, ("stroke-width", "1.2"));
        }

        foreach (var piece in strapping.Rows.SelectMany(r => r.Pieces))
        {
            KeepClear(labels, Bars.Of(view[piece.From], view[piece.To], face));
        }

        foreach (var piece in strapping.Rows.SelectMany(r => r.Pieces))
        {
            Letter(ink, piece, view, labels, say, face);
        }

        foreach (var nailer in strapping.Nailers)
        {
            var middle = Between(view[nailer.From], view[nailer.To]);
            Label.Write(ink, labels, nailer.Id, Lettering.Small, [middle, .. Round(middle, 14, 12), .. Round(middle, 26, 22), .. Round(middle, 40, 34)], null);
        }

        ink.EndGroup();
    }

    // letters stay off the straps that lie square on the paper
    private static void KeepClear(LabelField labels, Spot[] bar)
    {
        var box = new Box(bar.Min(c => c.X), bar.Min(c => c.Y), bar.Max(c => c.X), bar.Max(c => c.Y));
        if (Math.Min(box.Width, box.Height) < 60)
        {
            labels.Keep(box);
        }
    }

    private static string About(StrapRow row, TapeInk say)
    {
        var why = string.Join("; ", row.Reasons.Select(r => r.Text ?? (r.Of.Count == 0 ? r.Kind : $"{r.Kind} {string.Join(", ", r.Of)}")));
        return $"{row.Id}: centre {say.Mark(row.At)}. {why}";
    }

    private static Spot Across(PlanView view, RowPiece piece, double face, int side)
    {
        var (from, to) = (view[piece.From], view[piece.To]);
        var size = Math.Max(1e-9, Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2)));
        return new(from.X - ((to.Y - from.Y) / size * side * ((face / 2) + 3)), from.Y + ((to.X - from.X) / size * side * ((face / 2) + 3)));
    }

    private static void Letter(SvgInk ink, RowPiece piece, PlanView view, LabelField labels, TapeInk say, double face)
    {
        var (from, to) = (view[piece.From], view[piece.To]);
        var middle = Between(from, to);
        var upward = Math.Abs(to.Y - from.Y) > Math.Abs(to.X - from.X);
        var along = upward ? Math.Abs(to.Y - from.Y) : Math.Abs(to.X - from.X);
        var away = (face / 2) + (Lettering.Height(Lettering.Small) / 2) + 0.5;
        string[] texts = [$"{piece.Id}  {say.Cut(piece.CutLength)}", piece.Id];

        // letters of a short piece never stand on a hole: it may lie beside one
        if (!Array.Exists(texts, text => Wrote(text, true)) && (along < ShortOnPaper || !Array.Exists(texts, text => Wrote(text, false))))
        {
            labels.Miss();
        }

        bool Wrote(string text, bool clear)
        {
            if (Lettering.Width(text, Lettering.Small) > Math.Max(along, 40))
            {
                return false;
            }

            var places = new List<Spot>();
            foreach (var shift in new[] { 0, -0.2, 0.2, -0.35, 0.35 })
            {
                var (x, y) = (middle.X + (upward ? 0 : shift * along), middle.Y + (upward ? shift * along : 0));
                places.AddRange(upward ? [new(x + away, y), new(x - away, y)] : [new(x, y - away), new(x, y + away)]);
            }

            // past the ends of a short one
            var past = (along / 2) + (Lettering.Width(text, Lettering.Small) / 2) + 5;
            if (along < ShortOnPaper)
            {
                places.AddRange(upward
                    ? [new(middle.X, middle.Y - past), new(middle.X, middle.Y + past), new(middle.X + (2.2 * away), middle.Y), new(middle.X - (2.2 * away), middle.Y)]
                    : [new(middle.X - past, middle.Y), new(middle.X + past, middle.Y), new(middle.X, middle.Y - (2.2 * away)), new(middle.X, middle.Y + (2.2 * away))]);
            }

            return Label.Write(ink, labels, text, Lettering.Small, places, null, upward, bold: false, clear);
        }
    }

    /// <summary>Eight places round a middle, the corners first.</summary>
    private static Spot[] Round(Spot middle, double right, double down) =>
    [
        new(middle.X + right, middle.Y + down), new(middle.X - right, middle.Y - down), new(middle.X - right, middle.Y + down), new(middle.X + right, middle.Y - down),
        new(middle.X + right, middle.Y), new(middle.X - right, middle.Y), new(middle.X, middle.Y + down), new(middle.X, middle.Y - down),
    ];

    private static Spot Between(Spot a, Spot b) => new((a.X + b.X) / 2, (a.Y + b.Y) / 2);
}
