using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// What a fixture is too near to. Strictly, a little too near does not count; loosely, holes count as their boxes and what
/// lies askew counts from 150 mm off, which is enough to explain a conflict that the plan tells.
/// </summary>
internal static class FixtureLimits
{
    private const double Close = 0.06;

    public static IEnumerable<string> Broken(
        GivenFixture fixture, List<GivenFixture> all, GivenPlan plan, List<(Stretch Us, Stretch Vs)> seams, bool loosely)
    {
        var asked = fixture.Asked;
        var half = plan.Room.Strapping.Face / 2;
        if (plan.Pieces.Any(p => Near(new(p.U - half, p.U + half), new(p.Low.V, p.High.V), asked.Clear)))
        {
            yield return "a strap is within its clearance";
        }

        if (seams.Any(s => Near(s.Us, s.Vs, asked.Clear)))
        {
            yield return "a seam is within its clearance";
        }

        if (JoistLimit(fixture, plan, loosely) is { } joist)
        {
            yield return joist;
        }

        if (plan.Room.Border.Walls.Any(w => fixture.To(w) < asked.Edge + (loosely ? 0.5 * asked.HalfU : -Close)) || (!loosely && !Inside(fixture, plan)))
        {
            yield return "a wall is within its clearance";
        }

        foreach (var other in all.Where(o => o != fixture))
        {
            var clear = Math.Max(asked.Clear, other.Asked.Clear);
            if (loosely ? fixture.Squarely(other.Us, other.Vs) < clear + Close : fixture.To(other) < clear - Close)
            {
                yield return $"{other.Asked.Id} is within its clearance";
            }
        }

        foreach (var service in plan.Room.Json.Member("services").Items().Where(s => !(asked.Panel && AccessReach.NeedsReach(s))))
        {
            if (ServiceReach.Near(service, fixture, plan.Room, Gap(plan), loosely ? 150 : -Close))
            {
                yield return "a service is within its clearance";
            }
        }

        bool Near(Stretch us, Stretch vs, double clear) =>
            loosely ? fixture.Squarely(us, vs) < clear + Close : fixture.To(us, vs) < clear - Close;
    }

    /// <summary>All layers of the ceiling's board.</summary>
    public static double Board(GivenPlan plan) =>
        (plan.Room.Json.Member("sheets").Member("thickness").Length(plan.Room.Unit) ?? 12.7) * plan.Room.Sheets.Layers;

    /// <summary>From the finished face up to the joists: board, strap and an old ceiling that stays.</summary>
    public static double Gap(GivenPlan plan)
    {
        var (json, unit, board) = (plan.Room.Json, plan.Room.Unit, Board(plan));
        var strap = json.Member("strapping").Member("size");
        var thickness = strap.Member("thickness").Length(unit)
            ?? (strap.Member("name").Text() is { } name && name.StartsWith('2') ? plan.Room.Imperial ? 38.1 : 38 : plan.Room.Imperial ? 19.05 : 19);
        return plan.Room.OldCeiling + (plan.Room.Strapping.Direct ? board : board + thickness);
    }

    private static string? JoistLimit(GivenFixture fixture, GivenPlan plan, bool loosely)
    {
        var asked = fixture.Asked;
        if (asked.Body > Gap(plan) + 0.01)
        {
            // 13 mm for a light not rated for contact (1/2 in in the US rulesets), else the survey's 6 mm
            var keep = asked.Light && !asked.Contact ? loosely ? 13.1 : 12.7 : loosely ? 6.1 : 6;
            if (plan.Room.Joists.Members.Any(j => fixture.To(j.Along, j.Across) < keep - Close))
            {
                return "a joist is within its body's clearance";
            }
        }

        if (asked.Box.Count == 0)
        {
            return null;
        }

        return !BoxPasses(fixture, plan, loosely ? -0.5 : 0.5) || (loosely && NarrowBay(fixture, plan)) ? "its driver box does not pass, or finds no bay" : null;
    }

    // some bay over or beside the hole is too narrow for the box laid flat: enough to explain a conflict
    private static bool NarrowBay(GivenFixture fixture, GivenPlan plan)
    {
        var faces = plan.Room.Joists.Supports(fixture.At.U);
        var from = plan.Room.Border.Walls.Min(w => w.Vs.From);
        foreach (var to in faces.Select(f => f.From).Append(plan.Room.Border.Walls.Max(w => w.Vs.To)))
        {
            if (new Stretch(from - 20, to + 20).Overlaps(fixture.Vs, 0) && to - from < fixture.Asked.Box[1] + 0.5)
            {
                return true;
            }

            from = faces.Where(f => f.From <= to).Select(f => f.To).DefaultIfEmpty(from).Max();
        }

        return false;
    }

    // looks for a place of the box's end in what the joists leave open of the hole, a quarter millimetre at a time
    private static bool BoxPasses(GivenFixture fixture, GivenPlan plan, double slack)
    {
        var asked = fixture.Asked;
        var over = plan.Room.Joists.Members.Where(j => j.Along.Overlaps(fixture.Us, 0)).Select(j => j.Across).Where(s => s.To > fixture.Vs.From && s.From < fixture.Vs.To).ToList();
        return new[] { (asked.Box[0], asked.Box[1]), (asked.Box[1], asked.Box[0]) }.Any(end => Places(end.Item1).Any(at => Passes(at, end.Item1, end.Item2)));

        IEnumerable<double> Places(double across)
        {
            for (var at = fixture.Vs.From - slack; at + across <= fixture.Vs.To + slack; at += 0.25)
            {
                yield return at;
            }
        }

        bool Passes(double at, double across, double along)
        {
            if (over.Exists(s => s.To > at + (0.6 * slack) && s.From < at + across - (0.6 * slack)))
            {
                return false;
            }

            if (!asked.Round)
            {
                return along <= (2 * asked.HalfU) + slack;
            }

            var reach = Math.Max(Math.Abs(at - fixture.At.V), Math.Abs(at + across - fixture.At.V));
            return reach <= asked.HalfU + slack && 2 * Math.Sqrt(Math.Max(0, Math.Pow(asked.HalfU + slack, 2) - (reach * reach))) + slack >= along;
        }
    }

    private static bool Inside(GivenFixture fixture, GivenPlan plan) =>
        plan.Room.Border.AcrossAt(fixture.At.U).Any(p => p.From < fixture.At.V && fixture.At.V < p.To);
}
