using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>Gathers what the checks and cautions need from the plan, and holds it against the rules of the survey's ruleset.</summary>
public static class CheckWriter
{
    public static (IReadOnlyList<Check> Checks, IReadOnlyList<Caution> Cautions) Write(
        FramedRoom room, StrappingPlan strapping, SheetPlan sheets, CutPlan cutPlan, JoistPlan joists, PlanSummary summary,
        FixturePlan fixtures, InsulationPlan? insulation = null)
    {
        var survey = room.Survey;
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var facts = FixtureFactsWriter.With(Facts(room, strapping, sheets, cutPlan, joists, summary, insulation), survey, fixtures);
        return (
            [.. CeilingChecks.Of(book, facts), .. SiteChecks.Checks(survey, summary, facts.Board.HeaviestSheets)],
            [.. CeilingCautions.Of(book, facts), .. SiteChecks.Cautions(survey)]);
    }

    private static CheckFacts Facts(
        FramedRoom room, StrappingPlan strapping, SheetPlan sheets, CutPlan cutPlan, JoistPlan joists, PlanSummary summary,
        InsulationPlan? insulation = null)
    {
        var survey = room.Survey;
        var (widest, where) = WidestSupport(room, joists);
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
                FastenerLength = ScrewLengths.ForStrap(survey.Strapping.Thickness, Allowances.Usual.StrapScrewGrip).Length,
                FastenersPerCrossing = 2,
            },
            Board = new BoardFacts
            {
                Type = survey.Sheets.Type,
                Thickness = survey.Sheets.Thickness,
                Layers = survey.Sheets.Layers,
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
            },
            Floor = new FloorFacts
            {
                Joists = room.Field.Kind,
                JoistDepth = room.Field.Depth,
                ConcealedArea = decimal.Round((decimal)sheets.Pieces.Sum(p => p.AreaSquareMetres), 3),
            },
            InsulationMassPerArea = insulation?.HeaviestKilogramsPerSquareMetre,
            ThermalInsulation = insulation?.Purpose == InsulationPurpose.Thermal,
            SurveyTolerance = Length.FromMillimetres(6),
        };
    }

    // on centre between neighbouring supports, as the furring tables count it; within the room only
    private static (Length Widest, IReadOnlyList<string> Where) WidestSupport(FramedRoom room, JoistPlan joists)
    {
        long widest = 0;
        (int From, int To)? at = null;
        foreach (var zone in room.Joists.Zones)
        {
            for (var i = zone.FirstSupport; i + 1 < zone.FirstSupport + zone.SupportCount; i++)
            {
                var (one, next) = (room.Joists.Supports[i], room.Joists.Supports[i + 1]);
                if (next.Middle - one.Middle > widest)
                {
                    (widest, at) = (next.Middle - one.Middle, (one.FirstMember, next.FirstMember));
                }
            }
        }

        var names = JoistWriter.Names(room);
        return at is { } found
            ? (new Length(widest), new[] { names[found.From], names[found.To] })
            : (new Length(room.Frame.SizeV), [.. joists.Members.Select(m => m.Id)]);
    }
}
