using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Every hole stands on every board piece that it lies in and on no other: its centre where the fixture is, its size as
/// asked, its corner a corner of the piece (or of its box where that has none), and its mark the distance between them.
/// </summary>
internal static class FixtureCutouts
{
    private const double Close = 0.06;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var asked = AskedFixture.Of(plan);
        var given = plan.Json.Member("fixtures").Items().Where(f => f.Member("bulkheadId") is null)
            .Where(f => asked.ContainsKey(f.Member("id").Text() ?? ""))
            .Select(f => new GivenFixture(f, asked[f.Member("id").Text()!], plan.Room)).ById(g => g.Asked.Id);
        var pieces = plan.Json.Member("sheets").Member("pieces").Items().ById(p => p.Member("id").Text() ?? "");
        foreach (var board in plan.Boards)
        {
            var cutouts = pieces[board.Id].Member("cutouts").Items().ToList();
            foreach (var fixture in given.Values)
            {
                var own = cutouts.Where(c => c.Member("fixtureId").Text() == fixture.Asked.Id).ToList();
                var (within, touches) = (Within(board, fixture), Touches(board, fixture));
                if (own.Count > 1 || (own.Count == 0 && within) || (own.Count == 1 && !touches))
                {
                    report.Fault("cutouts.listed", board.Id, $"{own.Count} holes for {fixture.Asked.Id}, which lies {(within ? "in it" : touches ? "partly in it" : "elsewhere")}");
                }

                own.ForEach(c => Drawn(c, board, fixture, plan, report));
            }

            foreach (var stray in cutouts.Where(c => !given.ContainsKey(c.Member("fixtureId").Text() ?? "")))
            {
                report.Fault("cutouts.listed", board.Id, $"a hole for {stray.Member("fixtureId").Text()}, which is not planned");
            }
        }
    }

    private static void Drawn(JsonElement cutout, GivenBoard board, GivenFixture fixture, GivenPlan plan, AuditReport report)
    {
        Sized(cutout, board.Id, fixture, plan, report);
        var (cx, cy) = cutout.GetProperty("corner").Point(plan.Room.Unit);
        var corner = plan.Room.Frame.At(cx, cy);
        var onBox = (Math.Abs(corner.U - board.Us.From) <= Close || Math.Abs(corner.U - board.Us.To) <= Close)
            && (Math.Abs(corner.V - board.Vs.From) <= Close || Math.Abs(corner.V - board.Vs.To) <= Close);
        if (!onBox)
        {
            report.Fault("cutouts.corner", board.Id, $"{fixture.Asked.Id} is measured from no corner of the piece");
        }
    }

    /// <summary>The hole lies where the fixture is and has the size asked for.</summary>
    public static void Sized(JsonElement cutout, string board, GivenFixture fixture, GivenPlan plan, AuditReport report)
    {
        var unit = plan.Room.Unit;
        var (x, y) = cutout.GetProperty("centre").Point(unit);
        if (Math.Abs(x - fixture.X) > Close || Math.Abs(y - fixture.Y) > Close)
        {
            report.Fault("cutouts.centre", board, $"{fixture.Asked.Id} is cut at {x:F2}, {y:F2}, the fixture is at {fixture.X:F2}, {fixture.Y:F2}");
        }

        var size = cutout.Member("size");
        var (width, height) = ((size.Member("diameter") ?? size.Member("width")).Length(unit), (size.Member("diameter") ?? size.Member("height")).Length(unit));
        if (width is not { } w || height is not { } h || Math.Abs(w - fixture.Asked.Width) > Close || Math.Abs(h - fixture.Asked.Height) > Close)
        {
            report.Fault("cutouts.size", board, $"{fixture.Asked.Id} is cut {width:F2} by {height:F2} mm");
        }
    }

    private static bool Touches(GivenBoard board, GivenFixture fixture) => fixture.Squarely(board.Us, board.Vs) <= Close;

    /// <summary>Wholly inside, and no edge of the piece through it.</summary>
    private static bool Within(GivenBoard board, GivenFixture fixture) =>
        fixture.Us.From > board.Us.From && fixture.Us.To < board.Us.To && fixture.Vs.From > board.Vs.From && fixture.Vs.To < board.Vs.To
        && new Border([board.Ring]).AcrossAt(fixture.At.U).Any(p => p.From < fixture.At.V && fixture.At.V < p.To);
}
