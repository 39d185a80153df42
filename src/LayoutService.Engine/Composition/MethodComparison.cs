using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>How the board can be carried.</summary>
public enum CeilingMethod
{
    /// <summary>On straps, packed where undersides were read: what the plan is.</summary>
    Strapped,

    /// <summary>Screwed to the joists.</summary>
    Direct,

    /// <summary>On resilient channel across the joists.</summary>
    Channel,
}

/// <summary>
/// One way to carry the board, with the figures a person chooses by. Strapped and direct are both laid out; of channel is said what
/// follows from the survey. <see cref="StrapCost"/> is what straps, nailers, their fasteners and packing cost.
/// </summary>
public sealed record MethodCompared(
    CeilingMethod Method, bool Planned, Length? FinishedHeight, int? StrapPieces, Length? ButtJointLength, decimal? Cost, decimal? StrapCost,
    IReadOnlyList<Check> Checks, Sentence Sound, IReadOnlyList<Sentence> Notes);

/// <summary>
/// Strapped, direct or on channel, side by side: the plan's own figures, those of the other way as it would be planned, and for
/// channel the finished height and the checks that hang on it. Made when it is asked for.
/// </summary>
public static class MethodComparison
{
    /// <summary>Operations after which the way that is not the plan's is left without figures: some seconds.</summary>
    private const long MostWork = 200_000_000;

    /// <summary>Depth of resilient channel: 1/2 in (13 mm). Common practice, no source.</summary>
    private static readonly Length ChannelDepth = Length.FromInches(0.5m);

    private static readonly string[] Rules = ["row-spacing", "headroom", "headroom-over-area", "plane"];
    private static readonly string[] StrapCodes =
        [TakeoffCodes.Strap, TakeoffCodes.StrapCulls, TakeoffCodes.Nailer, TakeoffCodes.NailerCulls, TakeoffCodes.Shim, TakeoffCodes.StrapScrew, TakeoffCodes.ScabScrew, TakeoffCodes.ScabAdhesive, TakeoffCodes.MasonryFastener, TakeoffCodes.NailerFastener];

    public static IReadOnlyList<MethodCompared> Of(CeilingPlan plan, Survey survey)
    {
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var isDirect = survey.Strapping.Direct;
        var other = Other(survey);
        var (strapped, direct) = isDirect ? (other, plan) : (plan, other);
        var onJoists = isDirect ? plan.Summary.FinishedHeight : plan.Summary.FinishedHeight + survey.Strapping.Thickness;
        var facts = Facts(book, strapped, plan, survey, onJoists);
        var channel = onJoists - ChannelDepth;
        return
        [
            Way(
                CeilingMethod.Strapped, !isDirect, strapped, isDirect ? plan.Summary.FinishedHeight - survey.Strapping.Thickness : null, [],
                Sentence.Of("straps_no_sound_isolation", "Plain wood straps do not isolate sound."),
                []),
            Way(
                CeilingMethod.Direct, isDirect, direct, onJoists, [.. CeilingChecks.Of(book, facts).Where(c => Rules.Contains(c.Rule))],
                Sentence.Of("direct_no_sound_isolation", "Board screwed to the joists carries every footstep."),
                [
                    Sentence.Of("direct_copies_joists", "The board copies the joists: nothing is packed, butt ends want a joist behind their whole width, and cables need holes bored or another way across."),
                ]),
            new(
                CeilingMethod.Channel, false, channel, 0, null, null, null,
                [.. CeilingChecks.Of(book, facts with { Headroom = facts.Headroom with { FinishedHeight = channel } }).Where(c => Rules.Contains(c.Rule) && c.Rule != "row-spacing")],
                Sentence.Of("channel_isolates", "Resilient channel isolates sound as long as no screw reaches a joist through it."),
                [
                    Sentence.Of(
                        "channel_by_maker", $"The height counts channel {(survey.Units == UnitSystem.Imperial ? "1/2 in" : "13 mm")} deep. Its spacing, its load and its fasteners are its maker's; it copies the joists, and nothing else may hang from it.",
                        ("depth", survey.Units == UnitSystem.Imperial ? "1/2 in" : "13 mm")),
                ]),
        ];
    }

    // a way that cannot be laid out has what follows from the survey alone
    private static MethodCompared Way(
        CeilingMethod method, bool planned, CeilingPlan? plan, Length? finished, IReadOnlyList<Check> checks, Sentence sound, IReadOnlyList<Sentence> notes) => plan is null
        ? new(method, planned, finished, method == CeilingMethod.Direct ? 0 : null, null, null, null, checks, sound,
            [.. notes, Sentence.Of("method_not_laid_out", "It cannot be laid out on these joists with this stock.")])
        : new(
            method, planned, plan.Summary.FinishedHeight, plan.Summary.StrapPieces, plan.Summary.ButtJointLength, plan.Summary.Cost, StrapCost(plan),
            [.. plan.Checks.Where(c => Rules.Contains(c.Rule))], sound, notes);

    private static CeilingPlan? Other(Survey survey) =>
        (LayoutEngine.Plan(survey with { Strapping = survey.Strapping with { Direct = !survey.Strapping.Direct } }, new WorkMeter(MostWork)) as PlanOutcome.Made)?.Plan;

    private static CheckFacts Facts(RuleBook book, CeilingPlan? strapped, CeilingPlan plan, Survey survey, Length? finished)
    {
        IEnumerable<Survey> floors = plan.Parts.Count == 0 ? [survey] : plan.Parts.Select(p => p.Survey);
        var (room, bay) = floors.Select(FramedRoom.Of).Select(r => (Room: r, Bay: WidestBay.Of(r))).MaxBy(f => f.Bay?.Width.Units ?? 0);
        return new CheckFacts
        {
            Units = survey.Units,
            Straps = null,
            Board = new BoardFacts
            {
                Type = survey.Sheets.Type,
                Thickness = survey.Sheets.Thickness,
                Layers = survey.Sheets.Layers,
                Textured = survey.Sheets.Textured,
                SupportSpacing = bay?.Width ?? new Length(room.Frame.SizeV),
                Supports = bay?.Joists(room) ?? [],
                ScrewLength = ScrewLengths.ForBoard((survey.Sheets.Thickness * survey.Sheets.Layers) + survey.Room.Through, survey.Ruleset).Length,
                BehindBoard = survey.Room.Through,
                ScrewSpacing = new Length(BoardScrews.Apart),
                ScrewEdge = new Length(BoardScrews.EdgeDistance),
            },
            Headroom = CheckWriter.Headroom(survey, finished, []),
            Floor = new FloorFacts
            {
                Joists = room.Field.Kind,
                ConcealedArea = 0,
                GreatestStep = strapped?.Strapping.Plane?.StepFound,
                StepAt = strapped?.Strapping.Plane?.StepRows ?? [],
            },
            SurveyTolerance = book.Limit("survey-tolerance").Value.Length,
        };
    }

    private static decimal? StrapCost(CeilingPlan plan) => plan.Takeoff.Lines.Where(l => StrapCodes.Contains(l.Code)).Select(l => l.Amount).OfType<decimal>().ToList() is { Count: > 0 } amounts
        ? amounts.Sum()
        : null;
}
