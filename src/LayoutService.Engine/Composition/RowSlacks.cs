using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// How far one row may still move on the day, towards the outline's lowest coordinate along the joists and away from it, all other
/// rows in place, and what holds it each way: <c>wall</c>, <c>spacing</c>, <c>clear-gap</c>, <c>butt</c>, <c>fixture</c>, or <c>fixed</c> where it was
/// cut or backed for its own place (an oblique wall, an opening, a bulkhead, a block, joists of several fields).
/// </summary>
public sealed record RowSlack(string RowId, Length TowardsLow, string HeldLow, Length TowardsHigh, string HeldHigh);

/// <summary>
/// Works out the slack of every row of a plan from the plan alone: each rule that a row keeps leaves a stretch in which it still keeps
/// it, and the slack is what is common to all. Rows side by side are found strip by strip between the ends of straps. Cost:
/// strips × rows. Where it cannot be told what a row is held by, it has none.
/// </summary>
public static class RowSlacks
{
    private static readonly string[] Fixing = ["cut_at_opening", "trimmed_at_hole", "tight_to_bulkhead", "carries_bulkhead"];

    /// <summary>Edge of a hole from a strap where the fixture does not say: 13 mm. Common practice, no source.</summary>
    private static readonly Length HoleToStrap = Length.FromMillimetres(13);

    public static IReadOnlyList<RowSlack> Of(CeilingPlan plan, Survey survey) => plan.Parts.Count == 0
        ? Of(plan, survey, survey.Room.Outline)
        : [.. plan.Parts.SelectMany(part => Of(part.Plan, part.Survey, survey.Room.Outline))];

    // rows of a part of a room are measured from the room's outline
    private static IReadOnlyList<RowSlack> Of(CeilingPlan plan, Survey survey, IReadOnlyList<Point> outline)
    {
        var frame = PlanFrame.Of(outline, survey.JoistFields[0].RunDegrees);
        var rules = RowRules.Of(survey.Strapping);
        var rows = plan.Strapping.Rows.Select(row => new MovingRow(row, frame)).ToList();
        var byId = rows.ToDictionary(r => r.Row.Id);
        BesideEachOther(rows, rules);
        foreach (var row in rows)
        {
            AtItsPlace(row, plan.Strapping, survey.JoistFields.Count > 1);
        }

        foreach (var end in plan.Sheets.Pieces.SelectMany(p => p.Ends))
        {
            foreach (var row in end.Backing.Where(byId.ContainsKey).Select(id => byId[id]))
            {
                var off = (end.At - row.Row.At).Units;
                row.Hold(rules.ButtTolerance - off, rules.ButtTolerance + off, "butt");
            }
        }

        foreach (var fixture in plan.Fixtures.Fixtures)
        {
            foreach (var row in rows)
            {
                PastHole(row, fixture, frame, rules);
            }
        }

        return [.. rows.Select(r => r.Slack())];
    }

    private static void BesideEachOther(List<MovingRow> rows, RowRules rules)
    {
        var marks = rows.SelectMany(r => r.Across).SelectMany(s => new[] { s.Lo, s.Hi }).Distinct().Order().ToList();
        for (var i = 0; i + 1 < marks.Count; i++)
        {
            var strip = new Span(marks[i], marks[i + 1]);
            var here = rows.Where(r => r.Across.Any(s => s.Holds(strip))).OrderBy(r => r.Row.At.Units).ToList();
            for (var n = 0; n < here.Count; n++)
            {
                here[n].First |= n == 0;
                here[n].Last |= n == here.Count - 1;
                if (n > 0 && here[n].Row.At.Units - here[n - 1].Row.At.Units is var apart && apart <= rules.MaxSpacing)
                {
                    here[n].Hold(apart - rules.MinGap, long.MaxValue, "clear-gap");
                    here[n].Hold(long.MaxValue, rules.MaxSpacing - apart, "spacing");
                    here[n - 1].Hold(long.MaxValue, apart - rules.MinGap, "clear-gap");
                    here[n - 1].Hold(rules.MaxSpacing - apart, long.MaxValue, "spacing");
                }
            }
        }
    }

    private static void AtItsPlace(MovingRow row, StrappingPlan plan, bool fields)
    {
        var tight = row.Row.Reasons.Any(r => r.Code?.StartsWith("tight_to_", StringComparison.Ordinal) == true);
        if (fields || row.Row.Reasons.Any(r => Fixing.Contains(r.Code)) || row.Row.Pieces.Any(p => p.StartBevel is not null || p.EndBevel is not null)
            || plan.Nailers.Any(n => n.Role == NailerRole.Block && n.Reasons.Any(r => r.Of.Contains(row.Row.Id)))
            || (!tight && (row.First || row.Last)))
        {
            row.Hold(0, 0, "fixed");
        }
        else if (tight)
        {
            row.Hold(row.First && !row.Last ? 0 : row.Last && !row.First ? RowRules.ClearGap : 0, row.First && !row.Last ? RowRules.ClearGap : 0, "wall");
        }
    }

    private static void PastHole(MovingRow row, PlannedFixture fixture, PlanFrame frame, RowRules rules)
    {
        var at = frame.In(fixture.At);
        var half = Math.Max(fixture.Wish.Cutout.Width.Units, fixture.Wish.Cutout.Height.Units) / 2;
        var clear = half + Length.Max(HoleToStrap, fixture.Wish.EdgeClearance).Units + rules.Half;
        if (row.Across.Any(s => s.Overlaps(new Span(at.V - half, at.V + half))))
        {
            var off = at.U - row.Row.At.Units;
            row.Hold(off < 0 ? -off - clear : long.MaxValue, off >= 0 ? off - clear : long.MaxValue, "fixture");
        }
    }

    // a row with what it may move by, narrowed rule by rule
    private sealed class MovingRow(StrapRow row, PlanFrame frame)
    {
        private (long By, string Held) _low = (long.MaxValue, "spacing");
        private (long By, string Held) _high = (long.MaxValue, "spacing");

        public StrapRow Row => row;

        public IReadOnlyList<Span> Across { get; } =
            [.. row.Pieces.Select(p => (A: frame.In(p.From).V, B: frame.In(p.To).V)).Select(p => new Span(Math.Min(p.A, p.B), Math.Max(p.A, p.B)))];

        /// <summary>True where no row lies before it, or after it, in some strip.</summary>
        public bool First { get; set; }

        public bool Last { get; set; }

        public void Hold(long low, long high, string by)
        {
            (_low, _high) = (Narrower(_low, Math.Max(0, low), by), Narrower(_high, Math.Max(0, high), by));
        }

        // of two that hold alike the one that a tape shows is told: the wall before the spacing
        private static (long, string) Narrower((long By, string Held) known, long to, string by) =>
            to < known.By || (to == known.By && by is "wall" or "fixed") ? (to, by) : known;

        public RowSlack Slack() => new(row.Id, Said(_low.By), _low.Held, Said(_high.By), _high.Held);

        private static Length Said(long by) => by == long.MaxValue ? Length.Zero : new Length(by);
    }
}
