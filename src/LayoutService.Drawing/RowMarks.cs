using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Strapping;

namespace LayoutService.Drawing;

/// <summary>
/// The marks of the rows in the margin: id and where the tape shows the near edge. Marks that would crowd each other are
/// moved apart, and a thin line leads from each to its row.
/// </summary>
internal sealed class RowMarks
{
    private const double Step = 13;
    private readonly List<(StrapRow Row, TapeMark Mark, string Text)> _marks;

    private readonly string _group;

    private RowMarks(List<(StrapRow, TapeMark, string)> marks, string group) => (_marks, _group) = (marks, group);

    /// <summary>Marks of the rows that lie level on the paper, or of those that stand upright.</summary>
    public static RowMarks Of(CeilingPlan plan, Survey survey, bool level, TapeInk say)
    {
        var rows = plan.Parts.Count == 0
            ? RowLayer.RunLevel(survey) == level ? plan.Strapping.Rows : []
            : plan.Parts.Where(p => RowLayer.RunLevel(p.Survey) == level).SelectMany(p => p.Plan.Strapping.Rows);
        return new([.. rows.Where(r => r.Marks.Count > 0).Select(r => (r, r.Marks[0], $"{r.Id}  {say.Mark(r.Marks[0].NearEdge)}"))], plan.Parts.Count == 0 || level ? "marks" : "marks-upright");
    }

    /// <summary>How far into the margin the marks reach.</summary>
    public double Room => _marks.Count == 0 ? 0 : _marks.Max(m => Lettering.Width(m.Text, Lettering.Size)) + 34;

    /// <summary>How much of the margin all marks take side by side.</summary>
    public double Span => _marks.Count * Step;

    public void Draw(SvgInk ink, PlanView view, bool level, Spot corner, LabelField labels)
    {
        if (_marks.Count == 0)
        {
            return;
        }

        ink.Group(_group, null);
        var rows = _marks
            .Select(m => (m.Text, End: Ends(view, m.Row, m.Mark, level)))
            .OrderBy(m => level ? m.End.Y : m.End.X)
            .ToList();
        var places = Spread(
            [.. rows.Select(m => level ? m.End.Y : m.End.X)],
            level ? view.Room.Top : view.Room.Left,
            level ? corner.Y : corner.X);
        for (var i = 0; i < rows.Count; i++)
        {
            var size = Lettering.Width(rows[i].Text, Lettering.Size);
            if (level)
            {
                var middle = new Spot(view.Room.Left - 46 - (size / 2), places[i]);
                labels.Keep(Box.Round(middle, size, Step - 0.5));
                ink.Text(middle, rows[i].Text);
                ink.Line(new(view.Room.Left - 42, places[i]), rows[i].End, ("stroke-width", "0.5"), ("stroke", "#5a5a5a"));
            }
            else
            {
                var middle = new Spot(places[i], corner.Y + 46 + (size / 2));
                labels.Keep(Box.Round(middle, Step - 0.5, size));
                ink.Text(middle, rows[i].Text, upward: true);
                ink.Line(new(places[i], corner.Y + 42), rows[i].End, ("stroke-width", "0.5"), ("stroke", "#5a5a5a"));
            }
        }

        ink.EndGroup();
    }

    // the near edge at the end that is nearest to the margin: half a face from the centre, towards where the tape comes from
    private static Spot Ends(PlanView view, StrapRow row, TapeMark mark, bool level)
    {
        var ends = row.Pieces.SelectMany(p => new[] { p.From, p.To }).ToList();
        var end = level ? ends.MinBy(e => view[e].X) : ends.MaxBy(e => view[e].Y);
        var back = row.At - mark.NearEdge;
        var edge = level ? end with { Y = end.Y - back } : end with { X = end.X - back };
        return view[edge];
    }

    // in order, a step apart, as near to where they are wished as the ends allow: one pass up, one pass down
    private static double[] Spread(double[] wished, double low, double high)
    {
        var places = new double[wished.Length];
        var last = low - Step;
        for (var i = 0; i < wished.Length; i++)
        {
            last = places[i] = Math.Max(wished[i], last + Step);
        }

        var next = Math.Max(high, low + ((wished.Length - 1) * Step)) + Step;
        for (var i = wished.Length - 1; i >= 0; i--)
        {
            next = places[i] = Math.Min(places[i], next - Step);
        }

        return places;
    }
}
