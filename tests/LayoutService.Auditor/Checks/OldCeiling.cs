using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// An old ceiling that stays is opened over a fixture whose body or driver box the new gap does not hold, and over no other; what it
/// is opened for is named by the caution, wood between the joists with it; nothing is opened where there is none.
/// </summary>
internal static class OldCeiling
{
    private const double Close = 0.1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var said = plan.Json.Member("cautions").Items().Where(c => c.Member("code").Text() == "old_ceiling_opened").ToList();
        var named = said.SelectMany(c => c.Member("where").Items()).Select(w => w.GetString() ?? "").ToHashSet();
        var wood = plan.Room.OldCeiling == 0 ? [] : plan.Json.Member("strapping").Member("nailers").Items()
            .Where(n => n.Member("role").Text() is "ledger" or "block" or "sister").Select(n => n.Member("id").Text() ?? "")
            .Concat(plan.Bulkheads.SelectMany(b => b.Members).Where(m => m.Role == "blocking").Select(m => m.Id)).ToHashSet();
        var asked = AskedFixture.Of(plan);
        var fixtures = plan.Json.Member("fixtures").Items().Where(f => asked.ContainsKey(f.Member("id").Text() ?? ""))
            .Select(f => new GivenFixture(f, asked[f.GetProperty("id").GetString()!], plan.Room)).ToList();
        var opened = fixtures.Where(f => f.Json.Member("opensOldCeiling") is not null).Select(f => f.Asked.Id).ToHashSet();
        if (!named.SetEquals(wood.Union(opened)))
        {
            report.Fault("oldCeiling.said", "cautions", $"names {string.Join(' ', named.Order())}; it is opened for {string.Join(' ', wood.Union(opened).Order())}");
        }

        foreach (var fixture in fixtures.Where(f => !f.Asked.Panel))
        {
            if (Beyond(plan, fixture) is var beyond && Math.Abs(beyond) > Close && opened.Contains(fixture.Asked.Id) != beyond > 0)
            {
                report.Fault("oldCeiling.opened", fixture.Asked.Id, $"goes {beyond:F1} mm beyond the gap below the old ceiling, which is {(beyond > 0 ? "not " : "")}opened for it");
            }
        }
    }

    // how far the body or the driver box reaches up past the gap that is there for it
    private static double Beyond(GivenPlan plan, GivenFixture fixture)
    {
        var box = plan.Bulkheads.FirstOrDefault(b => b.Id == fixture.Host);
        if (plan.Room.OldCeiling == 0 || box is { BoardedAbove: true })
        {
            return -1;
        }

        var whole = FixtureLimits.Gap(plan) - plan.Room.OldCeiling;
        var board = box?.Board ?? FixtureLimits.Board(plan);
        var hollow = box is null ? whole - board : box.FrameBottom - box.Top;
        return Math.Max(fixture.Asked.Body - board - hollow, fixture.Asked.Box.Count > 0 ? fixture.Asked.Box[0] - hollow : double.MinValue);
    }
}
