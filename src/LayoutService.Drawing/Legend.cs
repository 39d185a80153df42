using LayoutService.Engine;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Drawing;

/// <summary>What each line means, of the lines that are there.</summary>
internal static class Legend
{
    public const double RowHeight = 20;
    private const double Sample = 34;

    public static IReadOnlyList<(string Text, (string, string)[] Marks)> Entries(CeilingPlan plan, bool services)
    {
        var entries = new List<(string, (string, string)[])>
        {
            ("wall", [("stroke-width", "3")]),
            ("joist", [("stroke", "#8a8a8a"), ("stroke-width", "1"), ("stroke-dasharray", "7 3")]),
            ("strap", [("stroke", "#b0b0b0"), ("stroke-width", "8")]),
        };
        if (plan.Strapping.Rows.Count > 0)
        {
            entries.Add(("marks: near edge of each strap, from the ringed corner", []));
        }

        if (services)
        {
            entries.Add(("duct, pipe, beam or cable", [("stroke", "#4a4a4a"), ("stroke-width", "1"), ("stroke-dasharray", "9 3 2 3")]));
        }

        if (plan.Strapping.Nailers.Count > 0)
        {
            entries.Add(("nailer or ledger", [("stroke-dasharray", "2 2"), ("stroke-width", "2")]));
        }

        if (plan.Strapping.Scabs.Count > 0)
        {
            entries.Add(("ring: joint with a scab", []));
        }

        Add(BoardJointKind.Butt, "butt joint", ("stroke-width", "3"));
        Add(BoardJointKind.Tapered, "tapered joint", ("stroke-width", "1"), ("stroke-dasharray", "12 5"));
        Add(BoardJointKind.CutEdge, "cut edge in a joint", ("stroke-width", "1.8"), ("stroke-dasharray", "8 3 2 3"));
        Add(BoardJointKind.Control, "control joint", SheetLayer.ControlJoint);
        if (plan.Joists.Breaks.Count > 0)
        {
            entries.Add(("joists change direction", BreakLayer.Marks));
        }

        if (plan.Sheets.Pieces.Any(p => p.MeasureInPlace))
        {
            entries.Add(("* measure in place", []));
        }

        if (plan.Strapping.Rows.Any(row => row.Pieces.Any(piece => piece.FastenAfter.Count > 0)))
        {
            entries.Add(("strap fastened last, over batts", [("stroke-width", "1.2"), ("stroke-dasharray", "6 3")]));
        }

        if (plan.Bulkheads.Bulkheads.Count > 0)
        {
            entries.Add(("bulkhead, hatched", [("stroke", "#6a6a6a"), ("stroke-width", "1.6"), ("stroke-dasharray", "3 3")]));
        }

        if (plan.Sheets.Pieces.Any(p => p.Cutouts.Count > 0))
        {
            entries.Add(("hole: along, across from the dot in a corner of its piece, as it hangs", []));
        }

        if (plan.Fixtures.Fixtures.Any(f => f.Shift.Units > 0))
        {
            entries.Add(("small ring and line: where a hole was asked for", []));
        }

        if (plan.Fixtures.Fixtures.Any(f => f.Status == FixtureStatus.Conflict))
        {
            entries.Add(("hole with something in its way", [("stroke-width", "2.2"), ("stroke-dasharray", "4 2")]));
        }

        if (plan.Fixtures.Grid is not null)
        {
            entries.Add(("a way for the cable", [("stroke-width", "1"), ("stroke-dasharray", "1 4")]));
        }

        return entries;

        void Add(BoardJointKind kind, string text, params (string, string)[] marks)
        {
            if (plan.Sheets.Joints.Any(j => j.Kind == kind))
            {
                entries.Add((text, marks));
            }
        }
    }

    public static int Rows(IReadOnlyList<(string Text, (string, string)[] Marks)> entries, double width) =>
        entries.Count == 0 ? 0 : Lay(entries, width).Max(p => p.Row) + 1;

    public static void Draw(SvgInk ink, IReadOnlyList<(string Text, (string, string)[] Marks)> entries, Spot corner, double width)
    {
        if (entries.Count == 0)
        {
            return;
        }

        ink.Group("legend", null);
        foreach (var ((text, marks), (x, row)) in entries.Zip(Lay(entries, width)))
        {
            var y = corner.Y + (row * RowHeight) + 8;
            var left = corner.X + x;
            if (marks.Length > 0)
            {
                ink.Line(new(left, y), new(left + Sample, y), marks);
            }

            ink.Text(new(left + (marks.Length > 0 ? Sample + 6 : 0) + (Lettering.Width(text, Lettering.Size) / 2), y), text);
        }

        ink.EndGroup();
    }

    private static List<(double X, int Row)> Lay(IReadOnlyList<(string Text, (string, string)[] Marks)> entries, double width)
    {
        var places = new List<(double, int)>();
        var (x, row) = (0d, 0);
        foreach (var (text, marks) in entries)
        {
            var size = Lettering.Width(text, Lettering.Size) + (marks.Length > 0 ? Sample + 6 : 0) + 18;
            if (x > 0 && x + size > width - 40)
            {
                (x, row) = (0, row + 1);
            }

            places.Add((x, row));
            x += size;
        }

        return places;
    }
}
