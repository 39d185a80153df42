using LayoutService.Engine;
using LayoutService.Engine.Fixtures;

namespace LayoutService.Drawing;

/// <summary>
/// Holes with cross hairs and ids. A moved one has a thin line from where it was asked for; one with something in its way is
/// dashed and says so. On the board, a dot stands in the corner of the piece that a hole is measured from, and the two
/// distances (along the joists, then across them) beside the hole.
/// </summary>
internal static class FixtureLayer
{
    public static void Draw(SvgInk ink, CeilingPlan plan, PlanView view, LabelField labels, bool onBoard)
    {
        if (plan.Fixtures.Fixtures.Count == 0)
        {
            return;
        }

        ink.Group("fixtures", null);
        Cable(ink, plan.Fixtures, view);
        foreach (var fixture in plan.Fixtures.Fixtures)
        {
            Hole(ink, fixture, view, labels);
        }

        // one hole may lie over a seam, and so be cut in two pieces: each says where
        var marks = onBoard
            ? plan.Sheets.Pieces.SelectMany(piece => piece.Cutouts).ToLookup(cut => cut.FixtureId)
            : null;
        foreach (var cut in marks?.SelectMany(cuts => cuts) ?? [])
        {
            ink.Circle(view[cut.Corner], 3, ("fill", "#1a1a1a"));
        }

        foreach (var fixture in plan.Fixtures.Fixtures)
        {
            var name = fixture.Status == FixtureStatus.Conflict ? $"{fixture.Id} in conflict" : fixture.Id;
            if (!Beside(ink, labels, fixture, view, name, bold: true))
            {
                labels.Miss();
            }
        }

        foreach (var fixture in plan.Fixtures.Fixtures)
        {
            foreach (var cut in marks?[fixture.Id] ?? [])
            {
                string Of(string name) => cut.Mark.Params.First(value => value.Key == name).Value.Split(" (")[0];
                Beside(ink, labels, fixture, view, $"{Of("fromEnd")}, {Of("fromEdge")}", bold: false);
            }
        }

        ink.EndGroup();
    }

    /// <summary>Letters that are written before the holes are drawn stay off them where they can.</summary>
    public static void Shun(CeilingPlan plan, PlanView view, LabelField labels)
    {
        foreach (var fixture in plan.Fixtures.Fixtures)
        {
            var (wide, high) = Half(fixture, view);
            labels.Shun(Box.Round(view[fixture.At], (2 * wide) + 8, (2 * high) + 8));
        }
    }

    private static void Hole(SvgInk ink, PlannedFixture fixture, PlanView view, LabelField labels)
    {
        var at = view[fixture.At];
        var (wide, high) = Half(fixture, view);
        (string, string)[] marks = fixture.Status == FixtureStatus.Conflict
            ? [("stroke-width", "2.2"), ("stroke-dasharray", "4 2")]
            : [("stroke-width", "1.3")];
        ink.Group(fixture.Id, $"{fixture.Id}: {string.Join(' ', fixture.Reasons.Select(reason => reason.Text ?? reason.Kind))}");
        if (fixture.Shift.Units > 0)
        {
            ink.Line(view[fixture.Wish.At], at, ("stroke-width", "0.6"));
            ink.Circle(view[fixture.Wish.At], 1.6, ("stroke-width", "0.6"));
        }

        if (fixture.Wish.Cutout.Round)
        {
            ink.Circle(at, wide, marks);
        }
        else
        {
            ink.Ring([new(at.X - wide, at.Y - high), new(at.X + wide, at.Y - high), new(at.X + wide, at.Y + high), new(at.X - wide, at.Y + high)], marks);
        }

        ink.Line(new(at.X - wide - 4, at.Y), new(at.X + wide + 4, at.Y), ("stroke-width", "0.7"));
        ink.Line(new(at.X, at.Y - high - 4), new(at.X, at.Y + high + 4), ("stroke-width", "0.7"));
        ink.EndGroup();
        labels.Keep(Box.Round(at, 2 * wide, 2 * high));
    }

    private static bool Beside(SvgInk ink, LabelField labels, PlannedFixture fixture, PlanView view, string text, bool bold)
    {
        var at = view[fixture.At];
        var (wide, high) = Half(fixture, view);
        var along = wide + 7 + (Lettering.Width(text, Lettering.Small) / 2);
        var half = (Lettering.Width(text, Lettering.Small) / 2) - wide + 2;
        return Label.Write(
            ink,
            labels,
            text,
            Lettering.Small,
            [
                new(at.X, at.Y + high + 11), new(at.X, at.Y - high - 11), new(at.X + along, at.Y), new(at.X - along, at.Y),
                new(at.X, at.Y + high + 23), new(at.X, at.Y - high - 23), new(at.X + along, at.Y + 12), new(at.X - along, at.Y - 12),
                new(at.X + along, at.Y - 12), new(at.X - along, at.Y + 12), new(at.X + along, at.Y + 22), new(at.X - along, at.Y - 22), new(at.X + along, at.Y - 22),
                new(at.X - along, at.Y + 22), new(at.X, at.Y + high + 34), new(at.X, at.Y - high - 34),
                new(at.X - half, at.Y + high + 11), new(at.X + half, at.Y + high + 11), new(at.X - half, at.Y - high - 11), new(at.X + half, at.Y - high - 11),
                new(at.X - half, at.Y + high + 23), new(at.X + half, at.Y + high + 23), new(at.X - half, at.Y - high - 23), new(at.X + half, at.Y - high - 23),
                new(at.X - half, at.Y + high + 34), new(at.X + half, at.Y + high + 34), new(at.X - half, at.Y - high - 34), new(at.X + half, at.Y - high - 34),
            ],
            null,
            bold: bold);
    }

    private static (double Wide, double High) Half(PlannedFixture fixture, PlanView view) =>
        (view.Size(fixture.Wish.Cutout.Width) / 2, view.Size(fixture.Wish.Cutout.Height) / 2);

    private static void Cable(SvgInk ink, FixturePlan plan, PlanView view)
    {
        if (plan.Grid is { } grid)
        {
            var places = plan.Fixtures.ToDictionary(fixture => fixture.Id, fixture => view[fixture.At]);
            ink.Lines(grid.Cable.Order.Select(id => places[id]), ("stroke-width", "1"), ("stroke-dasharray", "1 4"));
        }
    }
}
