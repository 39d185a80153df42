using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Steps;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>Puts the whole answer together from what was chosen and cut.</summary>
public static class PlanWriter
{
    public static CeilingPlan Write(
        FramedRoom room, ChosenCeiling chosen, IReadOnlyList<BoardPart> parts, IReadOnlyList<BoardSeam> seams, CutLumber lumber, CutBoard board,
        CutBulkheads bulkheads, IReadOnlyList<PlacedFixture> placed, LaidGrid? grid)
    {
        var survey = room.Survey;
        var strapWriter = new StrappingWriter(room, chosen, lumber);
        var boarded = chosen.BoardRoom ?? room;
        var sheetWriter = new SheetWriter(boarded, chosen, parts, chosen.BoardRoom is null ? [] : DirectLumber.Ledgers(room, lumber.Nailers));
        IReadOnlyList<PlacedFixture> inCeiling = room.Solids.Count == 0 ? placed : [.. placed.Where(p => p.Host < 0)];
        var boxWriter = new BulkheadWriter(room, bulkheads, placed);
        var joists = JoistWriter.Joists(room);
        var backing = Backing(room, chosen, strapWriter.RowIds);
        IReadOnlyList<PlacedFixture> inBoard = chosen.BoardRoom is null ? inCeiling : [.. inCeiling.Select(p => p with { Hole = p.Hole.Turned() })];
        var (insulation, strapping) = InsulationJoin.Of(
            room, chosen, lumber, strapWriter, strapWriter.Write(sheetWriter.ButtsOnLine(), StockOfPieces(lumber)), joists, inCeiling);
        var sheets = sheetWriter.Write(backing, seams, board.StockOf, new CutoutMarks(boarded, inBoard));
        var finished = FinishedHeight(room, lumber);
        var holes = new FixtureWriter(room, chosen, bulkheads, placed).Write(strapWriter.RowIds, chosen.BoardRoom is null ? seams : [.. seams.Select(s => s.Turned())], strapping);
        var fixtures = new FixturePlan(holes, GridRoom.Write(room, grid, placed, holes, finished), MountWriter.Write(room, strapping));
        var cutPlan = CutPlanWriter.Write(room, lumber, strapWriter, board, sheetWriter, bulkheads, boxWriter);
        var boxes = boxWriter.Write(strapWriter.RowIds, board.StockOf, parts.Count, finished);
        var walls = JoistWriter.Walls(room);
        var partitions = PartitionWriter.Write(room, chosen, lumber, strapWriter.RowIds, strapWriter.NailerIds);
        Func<Length, string> say = l => room.Say(l.Units);
        var facts = new TakeoffFacts
        {
            Strapping = strapping,
            Sheets = sheets,
            CutPlan = cutPlan,
            Fixtures = fixtures,
            Bulkheads = boxes,
            StrappingWish = survey.Strapping,
            SheetWish = survey.Sheets,
            Insulation = insulation,
            InsulationWish = survey.Insulation,
            Prices = survey.Prices,
            Through = survey.Room.Through,
            Ruleset = survey.Ruleset,
            Units = survey.Units,
            TapeText = say,
            Allowances = RuleAllowances.Of(survey),
            Masses = RuleAllowances.Masses(survey),
        };
        var takeoff = TakeoffCounter.Count(facts);
        var covers = ServiceFindings.Covers(room);
        var obstructions = ServiceFindings.Obstructions(room, boxes, covers, finished);
        var summary = Summary(room, strapping, sheets, obstructions, cutPlan, takeoff, facts.Masses, finished);
        var (checks, cautions, floor) = CheckWriter.Write(room, strapping, sheets, boxes, cutPlan, joists, summary, covers, obstructions, fixtures, insulation);
        return new CeilingPlan
        {
            Summary = summary with
            {
                FixturesMoved = fixtures.Fixtures.Count(f => f.Status == FixtureStatus.Moved),
                FixturesInConflict = fixtures.Fixtures.Count(f => f.Status == FixtureStatus.Conflict),
                ChecksFailed = checks.Count(c => c.Status == CheckStatus.Fail),
            },
            Checks = checks,
            Cautions = cautions,
            Floor = floor,
            Walls = walls,
            Joists = joists,
            Strapping = strapping,
            Sheets = sheets,
            Fixtures = fixtures,
            Insulation = insulation,
            Bulkheads = boxes,
            CutPlan = cutPlan,
            Takeoff = takeoff,
            WrittenSteps = new(() => WorkSteps.Write(strapping, sheets, cutPlan, joists, survey.Units, say, walls, insulation, fixtures, boxes, partitions, survey.Room.Existing, survey.Strapping.Direct, room.SayCut, survey.Crew)),
            Partitions = partitions,
            Unwished = (chosen.Layout.Penalty, lumber.UnwishedBreaks),
            CheckWithin = (whole, cut, board) => CheckWriter.Write(room, strapping, board, boxes, cut, joists, whole, covers, obstructions, fixtures, insulation),
            PricedAlternatives = new(() => [.. PlanAlternatives.Of(boarded, chosen, board, sheets, bulkheads), .. FixtureShifts.Of(room, chosen, placed, fixtures, strapping)]),
        };
    }

    // behind each line that butts may stand on: its row, or the joists that the board is screwed to
    private static IReadOnlyList<IReadOnlyList<string>> Backing(FramedRoom room, ChosenCeiling chosen, string[] rowIds)
    {
        if (chosen.BoardRoom is null)
        {
            return [.. rowIds.Select(id => (IReadOnlyList<string>)[id])];
        }

        var names = JoistWriter.Names(room);
        return [.. chosen.Joists.Select(j => (IReadOnlyList<string>)[.. j.Members.OrderBy(m => room.Frame.AcrossIn(room.Joists.Members[m].At)).Select(m => names[m])])];
    }

    /// <summary>Mass of the heaviest sheet bought, kg.</summary>
    internal static decimal HeaviestLift(Survey survey, CutPlan cutPlan, MassTable masses) => cutPlan.Sheets
        .DistinctBy(s => (s.Width, s.Length))
        .Select(s => masses.SheetKilograms(survey.Sheets.Type, survey.Sheets.Thickness, s.Width, s.Length))
        .DefaultIfEmpty(0m)
        .Max();

    private static Dictionary<(int, RunPiece), string> StockOfPieces(CutLumber lumber)
    {
        var found = new Dictionary<(int, RunPiece), string>();
        foreach (var stick in lumber.StrapSticks)
        {
            foreach (var (run, piece, _) in stick.Cuts)
            {
                if (run >= 0)
                {
                    found[(run, lumber.Runs[run].Pieces[piece])] = stick.Stock.Id;
                }
            }
        }

        return found;
    }

    // from the lowest height taken, brought to the plane of the straps where undersides were read
    private static Length? FinishedHeight(FramedRoom room, CutLumber lumber) =>
        room.Survey.Room.FloorBuildUp is { } buildUp && LevelJoin.LowestHeight(room, room.Survey.Strapping.Direct ? DirectPlane.Of(room)?.Lowest : lumber.Levels?.Plan.Plane) is { } lowest
            ? lowest - buildUp - room.Survey.JoistToBoard - (room.Survey.Sheets.Thickness * room.Survey.Sheets.Layers)
            : null;

    private static PlanSummary Summary(
        FramedRoom room, StrappingPlan strapping, SheetPlan sheets, IReadOnlyList<Obstruction> obstructions, CutPlan cutPlan, TakeoffPlan takeoff, MassTable masses, Length? finished)
    {
        var survey = room.Survey;
        return new PlanSummary
        {
            Rows = strapping.Rows.Count,
            StrapPieces = strapping.Rows.Sum(r => r.Pieces.Count),
            LengthsToBuy = cutPlan.Sticks.Count,
            SheetsToBuy = cutPlan.Sheets.Count,
            ButtJointLength = sheets.ButtJointLength,
            FinishedHeight = finished,
            LowestUnderside = obstructions.Select(o => o.Underside).Append(finished).MinBy(h => h?.Units ?? long.MaxValue),
            MassKilograms = takeoff.Totals.MassKilograms,
            HeaviestLiftKilograms = HeaviestLift(survey, cutPlan, masses),
            Cost = takeoff.Totals.Amount,
            ChecksFailed = 0,
        };
    }
}
