using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>Gathers what the checks and cautions need from the plan, and holds it against the rules of the survey's ruleset.</summary>
public static class CheckWriter
{
    public static (IReadOnlyList<Check> Checks, IReadOnlyList<Caution> Cautions, FloorStiffness? Floor) Write(
        FramedRoom room, StrappingPlan strapping, SheetPlan sheets, CutPlan cutPlan, JoistPlan joists, PlanSummary summary)
    {
        var survey = room.Survey;
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var facts = Facts(book, room, strapping, sheets, cutPlan, joists, summary);
        return (CeilingChecks.Of(book, facts), CeilingCautions.Of(book, facts), FloorSpans.Of(book, facts));
    }

    private static CheckFacts Facts(
        RuleBook book, FramedRoom room, StrappingPlan strapping, SheetPlan sheets, CutPlan cutPlan, JoistPlan joists, PlanSummary summary)
    {
        var survey = room.Survey;
        var (widest, at) = WidestSupport(room);
        IReadOnlyList<string> where = at is { } bay
            ? [JoistWriter.Name(room, room.Supports[bay].FirstMember), JoistWriter.Name(room, room.Supports[bay + 1].FirstMember)]
            : [.. joists.Members.Select(m => m.Id)];
        var services = ServiceFacts.Of(room, strapping);
        return new CheckFacts
        {
            Units = survey.Units,
            Straps = new StrapFacts
            {
                Thickness = survey.Strapping.Thickness,
                Face = survey.Strapping.Face,
                RowSpacing = strapping.WidestSpacing,
                Rows = strapping.WidestSpacingRows,
                SupportSpacing = widest,
                Supports = where,
                Fastener = StrapFastener.Screw,
                FastenerLength = ScrewLengths.ForStrap(survey.Strapping.Thickness, RuleAllowances.Of(survey).StrapScrewGrip).Length,
                FastenersPerCrossing = 2,
                NextSpan = at is { } wide ? StrapContinuity.NextSpan(room, strapping, wide) : null,
            },
            Board = new BoardFacts
            {
                Type = survey.Sheets.Type,
                Thickness = survey.Sheets.Thickness,
                Layers = survey.Sheets.Layers,
                Textured = survey.Sheets.Textured,
                SupportSpacing = strapping.WidestSpacing,
                Supports = strapping.WidestSpacingRows,
                ScrewLength = ScrewLengths.ForBoard(survey.Sheets.Thickness * survey.Sheets.Layers, survey.Ruleset).Length,
                ScrewSpacing = new Length(BoardScrews.Apart),
                ScrewEdge = new Length(BoardScrews.EdgeDistance),
                HeaviestSheet = summary.HeaviestLiftKilograms,
                HeaviestSheets = [.. cutPlan.Sheets.OrderByDescending(s => s.Width.Units * (decimal)s.Length.Units).Take(1).Select(s => s.Id)],
            },
            Headroom = new HeadroomFacts
            {
                FinishedHeight = summary.FinishedHeight,
                HeightsGiven = survey.Room.Heights.Count > 0,
                FloorBuildUpGiven = survey.Room.FloorBuildUp is not null,
                Use = survey.Room.Use,
                ExistingBuilding = survey.Room.ExistingBuilding,
                SecondarySuite = survey.Room.SecondarySuite,
                Obstructions = services.Obstructions,
            },
            Floor = new FloorFacts
            {
                Joists = room.Field.Kind,
                JoistDepth = room.Field.Depth,
                Species = room.Field.Species,
                Grade = room.Field.Grade,
                ClearSpan = room.Field.ClearSpan,
                Bridging = room.Field.Bridging,
                JoistThickness = room.Field.Face,
                JoistSpacing = at is null ? null : widest,
                ConcealedLength = new Length(Math.Max(room.Frame.SizeU, room.Frame.SizeV)),
                WallHeight = survey.Room.Heights.Count > 0 ? new Length(survey.Room.Heights.Max(h => h.FloorToJoist.Units)) : null,
                ConcealedArea = decimal.Round((decimal)sheets.Pieces.Sum(p => p.AreaSquareMetres), 3),
            },
            SurveyTolerance = book.Limit("survey-tolerance").Value.Length,
            FireRating = survey.Sheets.FireRating,
            ServicesGiven = survey.Services is not null,
            CablesInGap = services.CablesInGap,
            CableToStrap = services.CableToStrap,
            GasServices = services.Gas,
            HotServices = services.Hot,
            Unreached = services.NeedReach,
        };
    }

    // on centre between neighbouring supports, as the furring tables count it; within the room only. The bay is the index of
    // the support before it, null with fewer than two supports
    private static (Length Widest, int? Bay) WidestSupport(FramedRoom room)
    {
        long widest = 0;
        var at = 0;
        for (var i = 0; i + 1 < room.Supports.Length; i++)
        {
            var gap = room.Supports[i + 1].Middle - room.Supports[i].Middle;
            if (gap > widest)
            {
                (widest, at) = (gap, i);
            }
        }

        return room.Supports.Length < 2 ? (new Length(room.Frame.SizeV), null) : (new Length(widest), at);
    }
}
