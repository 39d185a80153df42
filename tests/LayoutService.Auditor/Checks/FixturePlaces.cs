using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Every fixture is answered once; it is shifted by what it says and no more than allowed; its clearances are those that
/// are drawn; its status is honest: not in conflict only when its hole keeps off straps, seams, joists that its body
/// reaches, services, walls and other holes, and in conflict only when something is within its clearance.
/// </summary>
internal static class FixturePlaces
{
    private const double Close = 0.06;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var asked = AskedFixture.Of(plan);
        var listed = plan.Json.Member("fixtures").Items().ToList();
        var given = new List<GivenFixture>();
        foreach (var fixture in listed)
        {
            var id = fixture.GetProperty("id").GetString()!;
            if (!asked.TryGetValue(id, out var wish) || given.Exists(g => g.Asked.Id == id))
            {
                report.Fault("fixtures.listed", id, $"is not asked for, or is listed twice");
                continue;
            }

            given.Add(new GivenFixture(fixture, wish, plan.Room));
        }

        foreach (var missing in plan.Json.Member("fixtures") is null ? [] : asked.Keys.Except(given.Select(g => g.Asked.Id)))
        {
            report.Fault("fixtures.listed", missing, $"is asked for and not answered");
        }

        given.ForEach(fixture => Shift(fixture, report));
        var inCeiling = given.Where(g => g.Host is null).ToList();
        foreach (var fixture in inCeiling)
        {
            Clearances(fixture, plan, report);
            Status(fixture, inCeiling, plan, report);
        }

        Counted(given, plan, report);
    }

    private static void Shift(GivenFixture fixture, AuditReport report)
    {
        if (fixture.Shift > fixture.Asked.MaxShift + Close)
        {
            report.Fault("fixtures.shift", fixture.Asked.Id, $"shifted {fixture.Shift:F2}, at most {fixture.Asked.MaxShift:F2} mm");
        }

        if (fixture.Asked.At is { } at && Math.Abs(Math.Sqrt(Math.Pow(at.U - fixture.At.U, 2) + Math.Pow(at.V - fixture.At.V, 2)) - fixture.Shift) > Close)
        {
            report.Fault("fixtures.shift", fixture.Asked.Id, $"says {fixture.Shift:F2}, lies elsewhere");
        }
    }

    private static void Clearances(GivenFixture fixture, GivenPlan plan, AuditReport report)
    {
        var half = plan.Room.Strapping.Face / 2;
        var said = fixture.Json.Member("clearances");
        Compare("strap", plan.Pieces.Select(p => fixture.To(new(p.U - half, p.U + half), new(p.Low.V, p.High.V))));
        Compare("joist", plan.Room.Joists.Members.Select(j => fixture.To(j.Along, j.Across)));
        Compare("seam", Seams(plan).Select(s => fixture.To(s.Us, s.Vs)));
        Compare("wall", plan.Room.Border.Walls.Select(w => Math.Max(0, fixture.To(w))));

        void Compare(string name, IEnumerable<double> drawn)
        {
            var nearest = drawn.DefaultIfEmpty(-1).Min();
            var stated = said.Member(name).Length(plan.Room.Unit) ?? -1;
            if (Math.Abs(nearest - stated) > Close)
            {
                report.Fault("fixtures.clearances", fixture.Asked.Id, $"{name} {stated:F2}, drawn {nearest:F2} mm");
            }
        }
    }

    private static void Status(GivenFixture fixture, List<GivenFixture> all, GivenPlan plan, AuditReport report)
    {
        var near = FixtureLimits.Broken(fixture, all, plan, Seams(plan).ToList(), false).ToList();
        if (fixture.Status is "as-asked" or "moved")
        {
            foreach (var what in near)
            {
                report.Fault("fixtures.clear", fixture.Asked.Id, $"is {fixture.Status}, and {what}");
            }

            if (fixture.Status == "moved" != fixture.Shift > 0)
            {
                report.Fault("fixtures.status", fixture.Asked.Id, $"is {fixture.Status} by {fixture.Shift:F2} mm");
            }
        }
        else if (fixture.Status != "conflict" || !FixtureLimits.Broken(fixture, all, plan, Seams(plan).ToList(), true).Any())
        {
            report.Fault("fixtures.status", fixture.Asked.Id, $"is {fixture.Status} with nothing in its way");
        }
    }

    private static void Counted(List<GivenFixture> given, GivenPlan plan, AuditReport report)
    {
        foreach (var (name, status) in new[] { ("fixturesMoved", "moved"), ("fixturesInConflict", "conflict") })
        {
            var (said, counted) = (plan.Json.Member("summary").Member(name).Decimal(), given.Count(g => g.Status == status));
            if (plan.Json.Member("fixtures") is not null && said != counted)
            {
                report.Fault("fixtures.counted", name, $"{said} stated, {counted} listed");
            }
        }

        if (given.Exists(g => g.Status == "conflict") && !plan.DeclaredFailures.Contains("fixture-conflicts"))
        {
            report.Fault("fixtures.counted", "checks", $"a fixture is in conflict and no check fails");
        }
    }

    private static IEnumerable<(Stretch Us, Stretch Vs)> Seams(GivenPlan plan) => plan.Seams.Where(s => s.Run != SeamRun.Oblique)
        .Select(s => s.Run == SeamRun.Butt ? (new Stretch(s.At, s.At), s.Stretch) : (s.Stretch, new Stretch(s.At, s.At)));
}
