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
/// One way to carry the board, with the figures a person chooses by. Only the strapped way is laid out; of the others is said what
/// follows from the survey alone. <see cref="StrapCost"/> is what straps and their fasteners and packing cost, which the others do without.
/// </summary>
public sealed record MethodCompared(
    CeilingMethod Method, bool Planned, Length? FinishedHeight, int? StrapPieces, Length? ButtJointLength, decimal? Cost, decimal? StrapCost,
    IReadOnlyList<Check> Checks, Sentence Sound, IReadOnlyList<Sentence> Notes);

/// <summary>
/// Strapped, direct or on channel, side by side: the plan's own figures, and for the others the finished height and the checks
/// that hang on it, on the joists' real spacing and on their undersides. Made when it is asked for.
/// </summary>
public static class MethodComparison
{
    /// <summary>Depth of resilient channel: 1/2 in (13 mm). Common practice, no source.</summary>
    private static readonly Length ChannelDepth = Length.FromInches(0.5m);

    private static readonly string[] Rules = ["row-spacing", "headroom", "headroom-over-area", "plane"];
    private static readonly string[] StrapCodes =
        [TakeoffCodes.Strap, TakeoffCodes.StrapCulls, TakeoffCodes.Nailer, TakeoffCodes.NailerCulls, TakeoffCodes.Shim, TakeoffCodes.StrapScrew, TakeoffCodes.ScabScrew, TakeoffCodes.ScabAdhesive, TakeoffCodes.MasonryFastener, TakeoffCodes.NailerFastener];

    public static IReadOnlyList<MethodCompared> Of(CeilingPlan plan, Survey survey)
    {
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var onJoists = plan.Summary.FinishedHeight + survey.Strapping.Thickness;
        var direct = Facts(book, plan, survey, onJoists);
        var channel = onJoists - ChannelDepth;
        return
        [
            new(
                CeilingMethod.Strapped, true, plan.Summary.FinishedHeight, plan.Summary.StrapPieces, plan.Summary.ButtJointLength, plan.Summary.Cost, StrapCost(plan),
                [.. plan.Checks.Where(c => Rules.Contains(c.Rule))],
                Sentence.Of("straps_no_sound_isolation", "Plain wood straps do not isolate sound."),
                []),
            new(
                CeilingMethod.Direct, false, onJoists, 0, null, null, null,
                [.. CeilingChecks.Of(book, direct).Where(c => Rules.Contains(c.Rule))],
                Sentence.Of("direct_no_sound_isolation", "Board screwed to the joists carries every footstep."),
                [
                    Sentence.Of("direct_copies_joists", "The board copies the joists: nothing is packed, butt ends want a joist behind their whole width, and cables need holes bored or another way across."),
                ]),
            new(
                CeilingMethod.Channel, false, channel, 0, null, null, null,
                [.. CeilingChecks.Of(book, direct with { Headroom = direct.Headroom with { FinishedHeight = channel } }).Where(c => Rules.Contains(c.Rule) && c.Rule != "row-spacing")],
                Sentence.Of("channel_isolates", "Resilient channel isolates sound as long as no screw reaches a joist through it."),
                [
                    Sentence.Of(
                        "channel_by_maker", $"The height counts channel {(survey.Units == UnitSystem.Imperial ? "1/2 in" : "13 mm")} deep. Its spacing, its load and its fasteners are its maker's; it copies the joists, and nothing else may hang from it.",
                        ("depth", survey.Units == UnitSystem.Imperial ? "1/2 in" : "13 mm")),
                ]),
        ];
    }

    private static CheckFacts Facts(RuleBook book, CeilingPlan plan, Survey survey, Length? finished)
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
                ScrewLength = ScrewLengths.ForBoard(survey.Sheets.Thickness * survey.Sheets.Layers, survey.Ruleset).Length,
                ScrewSpacing = new Length(BoardScrews.Apart),
                ScrewEdge = new Length(BoardScrews.EdgeDistance),
            },
            Headroom = CheckWriter.Headroom(survey, finished, []),
            Floor = new FloorFacts
            {
                Joists = room.Field.Kind,
                ConcealedArea = 0,
                GreatestStep = plan.Strapping.Plane?.StepFound,
                StepAt = plan.Strapping.Plane?.StepRows ?? [],
            },
            SurveyTolerance = book.Limit("survey-tolerance").Value.Length,
        };
    }

    private static decimal? StrapCost(CeilingPlan plan) => plan.Takeoff.Lines.Where(l => StrapCodes.Contains(l.Code)).Select(l => l.Amount).OfType<decimal>().ToList() is { Count: > 0 } amounts
        ? amounts.Sum()
        : null;
}
