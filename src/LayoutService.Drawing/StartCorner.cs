using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Drawing;

/// <summary>
/// Where the tape is held for the marks of the rows: the outline's lowest point along the joists, with an arrow in the
/// direction that the marks run.
/// </summary>
internal static class StartCorner
{
    /// <summary>For each direction that joists run in: the corner, and the direction of the marks in the caller's own x and y.</summary>
    public static IEnumerable<(Point Corner, double X, double Y)> Of(Survey survey) =>
        survey.JoistFields.Select(field => (double)field.RunDegrees).Distinct().Select(degrees => Of(survey, degrees));

    private static (Point Corner, double X, double Y) Of(Survey survey, double degrees)
    {
        var turn = degrees * Math.PI / 180;
        var (x, y) = (Math.Cos(turn), Math.Sin(turn));
        var corner = survey.Room.Outline
            .OrderBy(p => Math.Round((p.X.Units * x) + (p.Y.Units * y)))
            .ThenBy(p => p.X.Units)
            .ThenBy(p => p.Y.Units)
            .First();
        return (corner, x, y);
    }

    public static void Draw(SvgInk ink, PlanView view, Survey survey, LabelField labels)
    {
        foreach (var (corner, x, y) in Of(survey))
        {
            Draw(ink, view, corner, x, y, labels);
        }
    }

    private static void Draw(SvgInk ink, PlanView view, Point corner, double x, double y, LabelField labels)
    {
        var start = view[corner];
        var tip = view[new Point(corner.X + Along(x), corner.Y + Along(y))];
        var size = Math.Max(1e-9, Math.Sqrt(Math.Pow(tip.X - start.X, 2) + Math.Pow(tip.Y - start.Y, 2)));
        var (dx, dy) = ((tip.X - start.X) / size, (tip.Y - start.Y) / size);
        ink.Group("start-corner", "Marks of the rows are measured from here");
        ink.Circle(start, 6, ("stroke-width", "1.6"), ("fill", "#ffffff"));
        ink.Circle(start, 2, ("fill", "#1a1a1a"));
        ink.Ring(
            [
                new(start.X + (dx * 22), start.Y + (dy * 22)),
                new(start.X + (dx * 9) - (dy * 5), start.Y + (dy * 9) + (dx * 5)),
                new(start.X + (dx * 9) + (dy * 5), start.Y + (dy * 9) - (dx * 5)),
            ],
            ("fill", "#1a1a1a"));
        const string text = "near edges from here";
        var half = Lettering.Width(text, Lettering.Small) / 2;
        Label.Write(
            ink,
            labels,
            text,
            Lettering.Small,
            [
                new(start.X - half - 10, start.Y + 16), new(start.X + half + 10, start.Y + 16), new(start.X - half - 10, start.Y + 30),
                new(start.X + half + 10, start.Y + 30), new(start.X, start.Y + 44), new(start.X, start.Y - 30),
            ],
            null);
        ink.EndGroup();

        static Length Along(double part) => Length.FromMillimetres((decimal)Math.Round(1000 * part));
    }
}
