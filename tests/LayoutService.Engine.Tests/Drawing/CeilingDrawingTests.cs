using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using LayoutService.Drawing;
using LayoutService.Engine.Tests.Optimum;

namespace LayoutService.Engine.Tests.Drawing;

/// <summary>Drawings of 500 invented rooms: plain shapes only, every label readable, nothing left of what must be shown.</summary>
public sealed class CeilingDrawingTests
{
    private static readonly HashSet<string> Shapes = ["svg", "title", "desc", "g", "line", "polyline", "polygon", "rect", "circle", "text"];

    private static readonly HashSet<string> Marks =
    [
        "width", "height", "viewBox", "font-family", "font-size", "font-weight", "fill", "fill-opacity", "stroke", "stroke-width",
        "stroke-dasharray", "stroke-linejoin", "role", "id", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "points",
        "text-anchor", "transform", "paint-order",
    ];

    public static TheoryData<int> Hundreds => [.. Enumerable.Range(0, 5)];

    [Theory]
    [MemberData(nameof(Hundreds))]
    public void A_hundred_rooms_are_drawn_with_plain_shapes_and_no_two_texts_over_each_other(int hundred)
    {
        for (var seed = hundred * 100; seed < (hundred + 1) * 100; seed++)
        {
            var room = SeededSurveys.Make(seed);
            if (LayoutEngine.Plan(room.Survey) is not PlanOutcome.Made made)
            {
                continue;
            }

            var text = CeilingDrawing.Svg(made.Plan, room.Survey);
            Assert.Equal(text, CeilingDrawing.Svg(made.Plan, room.Survey));
            var svg = XDocument.Parse(text).Root!;
            Assert.All(svg.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, Shapes));
            Assert.All(svg.DescendantsAndSelf().Attributes().Where(a => !a.IsNamespaceDeclaration), a => Assert.Contains(a.Name.LocalName, Marks));
            var ids = svg.Descendants().Attributes("id").Select(a => a.Value).ToHashSet();
            Assert.All(made.Plan.Strapping.Rows, r => Assert.Contains(r.Id, ids));
            Assert.All(made.Plan.Sheets.Pieces, p => Assert.Contains(p.Id, ids));
            var labels = svg.Descendants().Where(e => e.Name.LocalName == "text").Select(Place).ToList();
            var marks = labels.Select(l => l.Text.Split("  ")[0]).ToHashSet();
            Assert.All(made.Plan.Strapping.Rows, r => Assert.Contains(r.Id, marks));
            AssertApart(labels, room);
            AssertOnPaper(labels, svg, room);
        }
    }

    [Fact]
    public void Three_dozen_rooms_with_lights_bulkheads_and_batts_are_drawn_with_all_of_them_and_no_two_texts_over_each_other()
    {
        var (holes, bulkheads, batts) = (0, 0, 0);
        for (var seed = 0; seed < 36; seed++)
        {
            var room = SeededSurveys.Make(seed);
            var survey = FullRooms.Of(room);
            if (LayoutEngine.Plan(survey) is not PlanOutcome.Made made)
            {
                continue;
            }

            var svg = XDocument.Parse(CeilingDrawing.Svg(made.Plan, survey)).Root!;
            Assert.All(svg.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, Shapes));
            Assert.All(svg.DescendantsAndSelf().Attributes().Where(a => !a.IsNamespaceDeclaration), a => Assert.Contains(a.Name.LocalName, Marks));
            var ids = svg.Descendants().Attributes("id").Select(a => a.Value).ToHashSet();
            Assert.All(made.Plan.Fixtures.Fixtures, f => Assert.Contains(f.Id, ids));
            Assert.All(made.Plan.Bulkheads.Bulkheads, b => Assert.Contains(b.Id, ids));
            Assert.All(made.Plan.Insulation?.Fills ?? [], f => Assert.Contains(f.Id, ids));
            holes += made.Plan.Fixtures.Fixtures.Count;
            bulkheads += made.Plan.Bulkheads.Bulkheads.Count;
            batts += made.Plan.Insulation?.Fills.Count ?? 0;
            var labels = svg.Descendants().Where(e => e.Name.LocalName == "text").Select(Place).ToList();
            AssertApart(labels, room);
            AssertOnPaper(labels, svg, room);
            AssertOffHoles(labels, svg, made.Plan.Fixtures.Fixtures.Select(f => f.Id).ToHashSet(), room);
        }

        Assert.True(holes >= 60 && bulkheads >= 5 && batts >= 20, $"{holes} holes, {bulkheads} bulkheads and {batts} fills were drawn");
    }

    [Fact]
    public void Layers_that_are_not_asked_for_are_not_drawn()
    {
        var room = SeededSurveys.Make(3);
        var made = Assert.IsType<PlanOutcome.Made>(LayoutEngine.Plan(room.Survey));
        var svg = XDocument.Parse(CeilingDrawing.Svg(made.Plan, room.Survey, Layers.Outline | Layers.Sheets)).Root!;
        var groups = svg.Elements().Attributes("id").Select(a => a.Value).ToList();
        Assert.Equal(["outline", "sheets", "letters"], groups);
    }

    [Fact]
    public void Nothing_is_painted_over_letters_and_no_joist_is_drawn_outside_the_walls()
    {
        var drawn = 0;
        for (var seed = 0; seed < 20; seed++)
        {
            var room = SeededSurveys.Make(seed);
            if (LayoutEngine.Plan(room.Survey) is not PlanOutcome.Made made)
            {
                continue;
            }

            drawn++;
            var svg = XDocument.Parse(CeilingDrawing.Svg(made.Plan, room.Survey)).Root!;
            var last = svg.Elements().Last();
            Assert.Equal("letters", last.Attribute("id")!.Value);
            Assert.Equal(svg.Descendants().Count(e => e.Name.LocalName == "text"), last.Elements().Count(e => e.Name.LocalName == "text"));

            // each bar has room under its middle or under one of its sides
            var walls = Corners(svg.Elements().First(e => e.Attribute("id")?.Value == "outline").Elements().First(e => e.Name.LocalName == "polygon"));
            foreach (var bar in svg.Elements().First(e => e.Attribute("id")?.Value == "joists").Descendants().Where(e => e.Name.LocalName == "polygon").Select(Corners))
            {
                var (x, y) = (bar.Average(c => c.X), bar.Average(c => c.Y));
                Assert.True(Winds(walls, x, y) || bar.Any(c => Winds(walls, (c.X + x) / 2, (c.Y + y) / 2)), $"seed {seed}: a joist at {x:F1}, {y:F1} lies outside");
            }
        }

        Assert.True(drawn > 15, $"{drawn} drawn");
    }

    private static List<(double X, double Y)> Corners(XElement polygon) =>
        [.. polygon.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',')).Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture)))];

    // by the sum of the angles that the ring turns through as seen from the place
    private static bool Winds(List<(double X, double Y)> ring, double x, double y)
    {
        var turned = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var by = Math.Atan2(b.Y - y, b.X - x) - Math.Atan2(a.Y - y, a.X - x);
            turned += by > Math.PI ? by - (2 * Math.PI) : by < -Math.PI ? by + (2 * Math.PI) : by;
        }

        return Math.Abs(turned) > 3;
    }

    [Fact]
    public void A_name_with_signs_of_XML_in_it_is_written_as_text()
    {
        var room = SeededSurveys.Make(1).Survey;
        var named = room with { Room = room.Room with { Openings = [.. room.Room.Openings.Select(o => o with { Id = "<b>&\"" })] } };
        var made = Assert.IsType<PlanOutcome.Made>(LayoutEngine.Plan(named));
        var svg = XDocument.Parse(CeilingDrawing.Svg(made.Plan, named)).Root!;
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName == "b");
        Assert.Equal(named.Room.Openings.Count > 0, svg.Descendants().Any(e => e.Value.Contains("<b>&\"", StringComparison.Ordinal)));
    }

    // DejaVu Sans: digits and most capitals are 0.64 of the size wide or less, from the font's own table
    private static (string Text, Box Box) Place(XElement text)
    {
        double Number(string name, double usual) => text.Attribute(name) is { } a ? double.Parse(a.Value, CultureInfo.InvariantCulture) : usual;
        var size = Number("font-size", 11);
        var (along, across) = (text.Value.Length * size * 0.62, size * 0.95);
        var (x, y) = (Number("x", 0), Number("y", 0));
        var box = text.Attribute("transform") is null
            ? Box.Round(new(x, y - (size * 0.35)), along, across)
            : Box.Round(new(x, y), across, along);
        return (text.Value, box);
    }

    private static void AssertApart(List<(string Text, Box Box)> labels, SeededSurvey room)
    {
        for (var i = 0; i < labels.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.False(labels[i].Box.Meets(labels[j].Box), $"{room}: \"{labels[i].Text}\" lies over \"{labels[j].Text}\"");
            }
        }
    }

    /// <summary>Round holes are circles in the group that bears the fixture's id; the small one is where it was asked for.</summary>
    private static void AssertOffHoles(List<(string Text, Box Box)> labels, XElement svg, HashSet<string> fixtures, SeededSurvey room)
    {
        static double Number(XElement circle, string name) => double.Parse(circle.Attribute(name)!.Value, CultureInfo.InvariantCulture);
        var holes = svg.Descendants().Where(e => e.Name.LocalName == "circle" && fixtures.Contains((string?)e.Parent!.Attribute("id") ?? string.Empty) && Number(e, "r") > 2)
            .Select(e => Box.Round(new(Number(e, "cx"), Number(e, "cy")), 2 * Number(e, "r"), 2 * Number(e, "r"))).ToList();
        Assert.Equal([], labels.Where(l => holes.Exists(h => h.Meets(l.Box))).Select(l => $"{room}: \"{l.Text}\" lies over a hole"));
    }

    private static void AssertOnPaper(List<(string Text, Box Box)> labels, XElement svg, SeededSurvey room)
    {
        var sizes = Regex.Match(svg.Attribute("viewBox")!.Value, @"^0 0 (\S+) (\S+)$");
        var paper = new Box(0, 0, double.Parse(sizes.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(sizes.Groups[2].Value, CultureInfo.InvariantCulture));
        Assert.All(labels, l => Assert.True(paper.Holds(l.Box), $"{room}: \"{l.Text}\" runs off the paper"));
    }
}
