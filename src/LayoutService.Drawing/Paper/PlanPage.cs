using LayoutService.Engine;
using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using PdfSharp.Drawing;

namespace LayoutService.Drawing.Paper;

/// <summary>A plan to a stated scale on a page of its own: straps over joists, or board with its holes.</summary>
internal sealed class PlanPage
{
    private const double Size = 7;
    private readonly PaperPages _pages;
    private readonly CeilingPlan _plan;
    private readonly Survey _survey;
    private readonly PaperScale _scale;
    private readonly LabelField _labels;
    private readonly (long X, long Y) _corner;
    private readonly XPoint _origin;

    public PlanPage(PaperPages pages, CeilingPlan plan, Survey survey, string title)
    {
        (_pages, _plan, _survey) = (pages, plan, survey);
        pages.Heading(title);
        var outline = survey.Room.Outline;
        _scale = PaperScale.Of(outline, survey.Units, pages.Width - 60, pages.Bottom - pages.At - 60);
        _corner = (outline.Min(p => p.X.Units), outline.Max(p => p.Y.Units));
        _origin = new(PaperPages.Margin + 30, pages.At + 44);
        _labels = new(new(PaperPages.Margin, pages.At, PaperPages.Margin + pages.Width, pages.Bottom));
        Bar();
    }

    public void Straps()
    {
        foreach (var joist in _plan.Joists.Members)
        {
            Bar(joist.From, joist.To, joist.Face, new XPen(XColors.Gray, 0.4) { DashStyle = XDashStyle.Dash }, null);
        }

        var face = _survey.Strapping.Face;
        foreach (var line in _plan.Joists.Breaks)
        {
            _pages.Ink.DrawLine(new XPen(XColors.Black, 1.2) { DashStyle = XDashStyle.DashDotDot }, On(line.From), On(line.To));
        }

        foreach (var nailer in _plan.Strapping.Nailers)
        {
            Bar(nailer.From, nailer.To, face, new XPen(XColors.Black, 0.5) { DashStyle = XDashStyle.Dot }, null);
        }

        foreach (var piece in _plan.Strapping.Rows.SelectMany(row => row.Pieces))
        {
            // a piece that batts lie over is fastened last: an open, dashed outline
            var last = piece.FastenAfter.Count > 0;
            Bar(piece.From, piece.To, face, new XPen(XColors.Black, 0.6) { DashStyle = last ? XDashStyle.Dash : XDashStyle.Solid }, last ? null : XBrushes.LightGray);
        }

        Walls();
        Start();
        foreach (var piece in _plan.Strapping.Rows.SelectMany(row => row.Pieces))
        {
            Label(piece.Id, Middle(piece.From, piece.To));
        }

        foreach (var nailer in _plan.Strapping.Nailers)
        {
            Label(nailer.Id, Middle(nailer.From, nailer.To));
        }

        foreach (var line in _plan.Joists.Breaks)
        {
            Label(line.Id, Middle(line.From, line.To));
        }
    }

    public void Board(int layer)
    {
        var sheets = _plan.Sheets.OfLayer(layer);
        foreach (var piece in sheets.Pieces)
        {
            _pages.Ink.DrawPolygon(new XPen(XColors.Gray, 0.3), [.. piece.Outline.Select(On)]);
        }

        foreach (var joint in sheets.Joints)
        {
            var pen = joint.Kind switch
            {
                BoardJointKind.Butt => new XPen(XColors.Black, 1.8),
                BoardJointKind.Tapered => new XPen(XColors.Black, 0.6) { DashStyle = XDashStyle.Dash },
                BoardJointKind.Control => new XPen(XColors.Black, 2.6) { DashStyle = XDashStyle.Dot },
                _ => new XPen(XColors.Black, 1) { DashStyle = XDashStyle.DashDot },
            };
            _pages.Ink.DrawLine(pen, On(joint.From), On(joint.To));
        }

        foreach (var bulkhead in _plan.Bulkheads.Bulkheads)
        {
            foreach (var ring in bulkhead.Parts.SelectMany(part => part))
            {
                _pages.Ink.DrawPolygon(new XPen(XColors.Black, 0.8) { DashStyle = XDashStyle.Dot }, [.. ring.Select(On)]);
            }

            if (bulkhead.Boards.FirstOrDefault(board => board.Face == BoardFace.Underside) is { } below)
            {
                Label($"{bulkhead.Id}, {new TapeInk(_survey.Units).Mark(bulkhead.Drop)} down", Middle(below.Outline));
            }
        }

        Walls();
        foreach (var fixture in _plan.Fixtures.Fixtures)
        {
            var at = On(fixture.At);
            var (wide, high) = (_scale.PointsPer(fixture.Wish.Cutout.Width), _scale.PointsPer(fixture.Wish.Cutout.Height));
            var pen = new XPen(XColors.Black, 0.7) { DashStyle = fixture.Status == FixtureStatus.Conflict ? XDashStyle.Dash : XDashStyle.Solid };
            var box = new XRect(at.X - (wide / 2), at.Y - (high / 2), wide, high);
            if (fixture.Wish.Cutout.Round)
            {
                _pages.Ink.DrawEllipse(pen, box);
            }
            else
            {
                _pages.Ink.DrawRectangle(pen, box);
            }

            _pages.Ink.DrawLine(XPens.Black, box.Left - 2, at.Y, box.Right + 2, at.Y);
            _pages.Ink.DrawLine(XPens.Black, at.X, box.Top - 2, at.X, box.Bottom + 2);
            _labels.Keep(new(box.Left - 2, box.Top - 2, box.Right + 2, box.Bottom + 2));
            Label(fixture.Status == FixtureStatus.Conflict ? $"{fixture.Id} (in conflict)" : fixture.Id, new(at.X, box.Bottom + 7));
        }

        foreach (var piece in sheets.Pieces)
        {
            Label(piece.MeasureInPlace ? $"{piece.Id}*" : piece.Id, Middle(piece.Outline));
        }
    }

    private void Walls()
    {
        _pages.Ink.DrawPolygon(new XPen(XColors.Black, 2), [.. _survey.Room.Outline.Select(On)]);
        foreach (var opening in _survey.Room.Openings)
        {
            _pages.Ink.DrawPolygon(new XPen(XColors.Black, 1.2), XBrushes.White, [.. opening.Outline.Select(On)], XFillMode.Alternate);
            Label(opening.Id, Middle(opening.Outline));
        }

        var say = new TapeInk(_survey.Units);
        foreach (var wall in _plan.Walls)
        {
            Label(say.Mark(wall.Length), Middle(wall.From, wall.To));
        }
    }

    // ring and arrow: where the tape is held for the row marks, and which way they run
    private void Start()
    {
        foreach (var (corner, dx, dy) in StartCorner.Of(_survey))
        {
            Start(On(corner), dx, dy);
        }
    }

    private void Start(XPoint at, double dx, double dy)
    {
        _pages.Ink.DrawEllipse(new XPen(XColors.Black, 1.2), XBrushes.White, at.X - 5, at.Y - 5, 10, 10);
        XPoint[] arrow = [new(at.X + (dx * 20), at.Y - (dy * 20)), new(at.X + (dx * 7) + (dy * 4), at.Y - (dy * 7) + (dx * 4)), new(at.X + (dx * 7) - (dy * 4), at.Y - (dy * 7) - (dx * 4))];
        _pages.Ink.DrawPolygon(XBrushes.Black, arrow, XFillMode.Alternate);
        _labels.Keep(new(arrow.Min(p => p.X) - 4, arrow.Min(p => p.Y) - 4, arrow.Max(p => p.X) + 4, arrow.Max(p => p.Y) + 4));
    }

    private void Bar()
    {
        var (x, y) = (PaperPages.Margin + 30, _pages.At + 8);
        _pages.Ink.DrawLine(new XPen(XColors.Black, 1.4), x, y, x + _scale.Bar, y);
        foreach (var end in new[] { x, x + _scale.Bar })
        {
            _pages.Ink.DrawLine(XPens.Black, end, y - 4, end, y + 4);
        }

        _pages.Text($"{_scale.BarSaid}   scale {_scale.Said}, when printed without fitting to the page; seen from above", x + _scale.Bar + 8, y + 3, 8);
        _labels.Keep(new(PaperPages.Margin, y - 8, PaperPages.Margin + _pages.Width, y + 8));
    }

    private void Bar(Point from, Point to, Length face, XPen pen, XBrush? fill)
    {
        var (a, b) = (On(from), On(to));
        XPoint[] corners = [.. Bars.Of(new(a.X, a.Y), new(b.X, b.Y), _scale.PointsPer(face)).Select(c => new XPoint(c.X, c.Y))];
        if (fill is null)
        {
            _pages.Ink.DrawPolygon(pen, corners);
        }
        else
        {
            _pages.Ink.DrawPolygon(pen, fill, corners, XFillMode.Alternate);
        }
    }

    private void Label(string text, Spot middle)
    {
        var width = _pages.WidthOf(text, Size) + 2;
        foreach (var shift in new[] { (0d, 0d), (0, 10), (0, -10), (width * 0.7, 0), (-width * 0.7, 0), (0, 20), (0, -20), (width, 10), (-width, -10) })
        {
            var box = Box.Round(new(middle.X + shift.Item1, middle.Y + shift.Item2), width, Size + 2);
            if (_labels.Take(clear: false, box))
            {
                _pages.Ink.DrawRectangle(XBrushes.White, box.Left, box.Top, box.Width, box.Height);
                _pages.Text(text, box.Left + 1, box.Bottom - 2.2, Size);
                return;
            }
        }
    }

    private XPoint On(Point point) => new(
        _origin.X + _scale.PointsPer(new Length(point.X.Units - _corner.X)),
        _origin.Y + _scale.PointsPer(new Length(_corner.Y - point.Y.Units)));

    private Spot Middle(Point from, Point to)
    {
        var (a, b) = (On(from), On(to));
        return new((a.X + b.X) / 2, (a.Y + b.Y) / 2);
    }

    private Spot Middle(IReadOnlyList<Point> ring)
    {
        var spots = ring.Select(On).ToList();
        return new((spots.Min(s => s.X) + spots.Max(s => s.X)) / 2, (spots.Min(s => s.Y) + spots.Max(s => s.Y)) / 2);
    }
}
