using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Steps;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>Gathers what the checks and cautions need from the plan, and holds it against the rules of the survey's ruleset.</summary>
public static class CheckWriter
{
    public static (IReadOnlyList<Check> Checks, IReadOnlyList<Caution> Cautions, FloorStiffness? Floor) Write(
        FramedRoom room, StrappingPlan strapping, SheetPlan sheets, BulkheadPlan boxes, CutPlan cutPlan, JoistPlan joists, PlanSummary summary,
        IReadOnlyList<ServiceCover> covers, IReadOnlyList<Obstruction> obstructions, FixturePlan fixtures, InsulationPlan? insulation = null)
    {
        var survey = room.Survey;
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var facts = FixtureFactsWriter.With(Facts(book, room, strapping, sheets, boxes, cutPlan, joists, summary, covers, obstructions, insulation), survey, fixtures);
        return (
            [.. CeilingChecks.Of(book, facts), .. SiteChecks.Checks(survey, summary, facts.Board.HeaviestSheets)],
            [.. CeilingCautions.Of(book, facts), .. SiteChecks.Cautions(survey)],
            FloorSpans.Of(book, facts));
    }

    private static CheckFacts Facts(
        RuleBook book, FramedRoom room, StrappingPlan strapping, SheetPlan sheets, BulkheadPlan boxes, CutPlan cutPlan, JoistPlan joists, PlanSummary summary,
        IReadOnlyList<ServiceCover> covers, IReadOnlyList<Obstruction> obstructions, InsulationPlan? insulation = null)
    {
        var survey = room.Survey;
        var bay = WidestBay.Of(room);
        var widest = bay?.Width ?? new Length(room.Frame.SizeV);
        IReadOnlyList<string> where = bay is { } found ? found.Joists(room) : [.. joists.Members.Select(m => m.Id)];
        var services = ServiceFacts.Of(room, strapping);
        var plane = survey.Strapping.Direct ? DirectPlane.Of(room) : null;
        return new CheckFacts
        {
            Units = survey.Units,
            Straps = survey.Strapping.Direct ? null : new StrapFacts
            {
                Thickness = survey.Strapping.Thickness,
                Face = survey.Strapping.Face,
                RowSpacing = strapping.WidestSpacing,
                Rows = strapping.WidestSpacingRows,
                SupportSpacing = widest,
                Supports = where,
                Fastener = StrapFastener.Screw,
                FastenerLength = ScrewLengths.ForStrap(survey.Strapping.Thickness + survey.Room.Through, RuleAllowances.Of(survey).StrapScrewGrip).Length,
                Through = survey.Room.Through,
                FastenersPerCrossing = 2,
                NextSpan = bay?.NextSpan(room, strapping),
            },
            Board = new BoardFacts
            {
                Type = survey.Sheets.Type,
                Thickness = survey.Sheets.Thickness,
                Layers = survey.Sheets.Layers,
                LayerOffset = LayerSearch.Least(sheets),
                Stagger = survey.Sheets.MinStagger is { } asked && ButtStagger.Of(room, sheets, asked) is { } kept ? (asked, kept.Least, kept.Pieces) : null,
                Textured = survey.Sheets.Textured,
                SupportSpacing = survey.Strapping.Direct ? widest : strapping.WideTrim?.Span ?? strapping.WidestSpacing,
                Supports = survey.Strapping.Direct ? where : strapping.WideTrim?.Rows ?? strapping.WidestSpacingRows,
                ScrewLength = ScrewLengths.ForBoard((survey.Sheets.Thickness * survey.Sheets.Layers) + survey.BehindBoard, survey.Ruleset).Length,
                BehindBoard = survey.BehindBoard,
                ScrewSpacing = new Length(BoardScrews.Apart),
                ScrewEdge = new Length(BoardScrews.EdgeDistance),
                HeaviestSheet = summary.HeaviestLiftKilograms,
                HeaviestSheets = [.. cutPlan.Sheets.OrderByDescending(s => s.Width.Units * (decimal)s.Length.Units).Take(1).Select(s => s.Id)],
            },
            Headroom = Headroom(survey, summary.FinishedHeight, obstructions),
            Floor = new FloorFacts
            {
                Joists = room.Field.Kind,
                JoistDepth = room.Field.Depth,
                Species = Shared(room, field => field.Species),
                Grade = Shared(room, field => field.Grade),
                ClearSpan = Shared(room, field => field.ClearSpan),
                Bridging = Shared(room, field => field.Bridging),
                JoistThickness = room.Field.Face,
                JoistSpacing = bay?.Width,
                ConcealedLength = new Length(Math.Max(Math.Max(room.Frame.SizeU, room.Frame.SizeV), survey.Part?.Extent ?? 0)),
                WallHeight = survey.Room.Heights.Count > 0 ? new Length(survey.Room.Heights.Max(h => h.FloorToJoist.Units)) : null,
                GreatestStep = plane is null ? strapping.Plane?.StepLeft : new Length(plane.Step),
                StepFound = plane is null ? strapping.Plane?.StepFound : new Length(plane.Step),
                StepAt = plane?.Joists ?? strapping.Plane?.StepRows ?? [],
                ConcealedArea = decimal.Round((decimal)sheets.OfLayer(1).Pieces.Sum(p => p.AreaSquareMetres), 3),
            },
            WallsLined = survey.Room.OutlineOnFinish,
            OpenEdges = [.. survey.Room.OpenEdges.Select(room.EdgeId)],
            Existing = survey.Room.Existing,
            OldCeilingOpened = survey.Room.Through > Length.Zero ? [.. OldCeilingSteps.Wood(strapping, boxes)] : [],
            ExistingMassPerArea = ExistingMass(survey.Room.Existing),
            WarmSide = WarmSide.Of(survey.Room),
            GarageBelow = survey.Room.Below?.Use == NeighbourUse.Garage,
            Sisters = [.. strapping.Nailers.Where(n => n.Role == NailerRole.Sister).Select(n => n.Id)],
            InsulationMassPerArea = insulation?.HeaviestKilogramsPerSquareMetre,
            ThermalInsulation = insulation?.Purpose == InsulationPurpose.Thermal,
            SurveyTolerance = book.Limit("survey-tolerance").Value.Length,
            FireRating = survey.Sheets.FireRating,
            ServicesGiven = survey.Services is not null,
            CablesInGap = services.CablesInGap,
            CableToStrap = services.CableToStrap,
            Bulkheads = [.. boxes.Bulkheads.Select(b => b.Id)],
            Covers = covers,
            GasServices = services.Gas,
            HotServices = services.Hot,
            Chimneys = [.. survey.Room.Openings.Where(o => o.Kind == OpeningKind.Chimney).Select(o => o.Id)],
            Unreached = [.. services.NeedReach.Except(boxes.AccessPanels.Where(p => !p.InConflict).Select(p => p.ServiceId))],
        };
    }

    /// <summary>What headroom is held to.</summary>
    internal static HeadroomFacts Headroom(Survey survey, Length? finished, IReadOnlyList<Obstruction> obstructions) => new()
    {
        FinishedHeight = finished,
        HeightsGiven = survey.Room.Heights.Count > 0,
        FloorBuildUpGiven = survey.Room.FloorBuildUp is not null,
        Use = survey.Room.Use,
        ExistingBuilding = survey.Room.ExistingBuilding,
        SecondarySuite = survey.Room.SecondarySuite,
        Obstructions = obstructions,
        Stairs = [.. survey.Room.Openings.Select((o, i) => (o, i)).Where(o => o.o.Kind == OpeningKind.Stair).Select(o => new StairFact(
            o.o.Id, o.i, o.o.Headroom - survey.JoistToBoard - (survey.Sheets.Thickness * survey.Sheets.Layers)))],
    };

    // plaster and tile differ too much to say
    private static decimal? ExistingMass(ExistingCeiling? existing) => existing?.Material switch
    {
        ExistingMaterial.Gypsum => MassTable.Published.BoardKilogramsPerSquareMetre("regular", existing.Thickness),
        ExistingMaterial.Wood => MassTable.Published.LumberKilogramsPerCubicMetre * existing.Thickness.Millimetres / 1000m,
        _ => null,
    };

    // A stamp speaks for the floor when every field has the same one.
    private static T? Shared<T>(FramedRoom room, Func<JoistField, T?> stamp)
    {
        var fields = room.Survey.JoistFields;
        return fields.All(field => Equals(stamp(field), stamp(fields[0]))) ? stamp(fields[0]) : default;
    }
}
