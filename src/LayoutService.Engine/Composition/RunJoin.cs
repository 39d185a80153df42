using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Plans a room whose joists run more than one way. Problem: rows lie square to the joists, so none can go on past a line where the joists turn. Method:
/// decomposition; the room is divided along those lines, each part is planned in its own run by the same planner as a whole room,
/// with the line for a wall, and the parts are joined: ids go on from part to part, lumber and sheets are cut together, order, checks
/// and steps are of the whole. Where there are too few sticks or sheets for all parts, they are planned once more, each for what those before it left.
/// Cost: that of its parts, and of one more cut. Why not one search over all: nothing but stock is shared across such a line.
/// </summary>
internal static class RunJoin
{
    /// <summary>The plan of the whole room, or why there is none.</summary>
    /// <param name="survey">A room in which <see cref="RunParts.In"/> is true.</param>
    /// <param name="plan">Plans a room in which all joists run one way.</param>
    public static PlanOutcome Plan(Survey survey, Func<Survey, PlanOutcome> plan)
    {
        var parts = RunParts.Of(survey);
        if (parts.Obstacle is { } undivided)
        {
            return new PlanOutcome.NotPossible([undivided]);
        }

        var (lit, grid) = WithGrid(survey);
        var (surveys, crossing) = new PartSurveys(lit, parts).Of();
        if (crossing.Count > 0)
        {
            return new PlanOutcome.NotPossible(crossing);
        }

        var (made, obstacles) = PlanAll(surveys, plan);
        if (obstacles.Count == 0 && PlaneOf(survey, made) is { } plane)
        {
            surveys = [.. surveys.Select(s => s with { Part = s.Part! with { Plane = plane } })];
            (made, obstacles) = PlanAll(surveys, plan);
        }

        if (obstacles.Count > 0)
        {
            return new PlanOutcome.NotPossible(obstacles);
        }

        var (cut, uncut) = PooledCut.Of(made);
        if (cut is null && SharedStock.Limited(survey) && PlanAll(surveys, plan, sharing: true) is { Obstacles.Count: 0 } shared)
        {
            (made, cut) = (shared.Made, PooledCut.Of(shared.Made).Cut);
        }

        return cut is null ? new PlanOutcome.NotPossible(uncut) : new PlanOutcome.Made(RunWriter.Write(lit, parts, made, cut, grid));
    }

    private static (IReadOnlyList<(Survey Survey, CeilingPlan Plan)> Made, IReadOnlyList<Finding> Obstacles) PlanAll(
        IReadOnlyList<Survey> surveys, Func<Survey, PlanOutcome> plan, bool sharing = false)
    {
        var made = new List<(Survey Survey, CeilingPlan Plan)>();
        var obstacles = new List<Finding>();
        var taken = default(IdStarts);
        foreach (var part in surveys)
        {
            var numbered = part with { Part = part.Part! with { Taken = taken } };
            var offered = sharing ? SharedStock.Left(numbered, [.. made.Select(m => m.Plan)]) : numbered;
            switch (offered is null ? new PlanOutcome.NotPossible([Findings.OutOfStock("strapping")]) : plan(offered))
            {
                case PlanOutcome.Made one:
                    made.Add((numbered, one.Plan));
                    taken = After(taken, one.Plan);
                    break;
                case PlanOutcome.NotPossible none:
                    obstacles.AddRange(none.Findings);
                    break;
            }
        }

        return (made, obstacles);
    }

    private static IdStarts After(IdStarts taken, CeilingPlan plan) => new(
        taken.Joists + plan.Joists.Members.Count,
        taken.Bays + plan.Joists.Bays.Count,
        taken.Rows + plan.Strapping.Rows.Count,
        taken.Nailers + plan.Strapping.Nailers.Count,
        taken.Scabs + plan.Strapping.Scabs.Count,
        taken.Courses + plan.Sheets.Courses.Count,
        taken.Sheets + plan.Sheets.Pieces.Count,
        taken.Fills + (plan.Insulation?.Fills.Count ?? 0),
        taken.Panels + plan.Bulkheads.AccessPanels.Count);

    // one plane for all parts where one of them is packed, or where they lie further apart than straps may step; else null
    private static long? PlaneOf(Survey survey, IReadOnlyList<(Survey Survey, CeilingPlan Plan)> made)
    {
        var planes = made.Select(m => m.Plan.Strapping.Plane).OfType<Strapping.StrapPlane>().ToList();
        if (planes.Count == 0)
        {
            return null;
        }

        var from = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides).Limit("packing-from").Value.Length;
        var (low, high) = (planes.Min(p => p.Level.Units), planes.Max(p => p.Level.Units));
        return planes.Any(p => p.StepFound > from) || high - low > from.Units ? low : null;
    }

    // lights are laid over the whole room; their grid asks nothing of the joists
    private static (Survey Survey, LaidGrid? Grid) WithGrid(Survey survey)
    {
        if (survey.LightGrid is null)
        {
            return (survey, null);
        }

        var (room, grid) = GridRoom.Of(OneWay(survey));
        return (survey with { Fixtures = room.Survey.Fixtures }, grid);
    }

    /// <summary>The survey with the fields of its first run alone: a frame for what has nothing to do with joists.</summary>
    public static Survey OneWay(Survey survey) =>
        survey with { JoistFields = [.. survey.JoistFields.Where(f => f.RunDegrees == survey.JoistFields[0].RunDegrees)] };
}
