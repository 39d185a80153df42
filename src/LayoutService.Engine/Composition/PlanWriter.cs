using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
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
        FramedRoom room, ChosenCeiling chosen, IReadOnlyList<BoardPart> parts, IReadOnlyList<BoardSeam> seams, CutLumber lumber, CutBoard board)
    {
        var survey = room.Survey;
        var strapWriter = new StrappingWriter(room, chosen, lumber);
        var sheetWriter = new SheetWriter(room, chosen, parts);
        var strapping = strapWriter.Write(sheetWriter.ButtsOnLine(), StockOfPieces(lumber));
        var sheets = sheetWriter.Write(strapWriter.RowIds, seams, board.StockOf);
        var cutPlan = CutPlanWriter.Write(room, lumber, strapWriter, board, sheetWriter);
        var joists = JoistWriter.Joists(room);
        var walls = JoistWriter.Walls(room);
        Func<Length, string> say = l => room.Say(l.Units);
        var facts = new TakeoffFacts
        {
            Strapping = strapping,
            Sheets = sheets,
            CutPlan = cutPlan,
            StrappingWish = survey.Strapping,
            SheetWish = survey.Sheets,
            Prices = survey.Prices,
            Ruleset = survey.Ruleset,
            Units = survey.Units,
            TapeText = say,
        };
        var takeoff = TakeoffCounter.Count(facts);
        var summary = Summary(room, strapping, sheets, cutPlan, takeoff, facts.Masses);
        var (checks, cautions) = CheckWriter.Write(room, strapping, sheets, cutPlan, joists, summary);
        return new CeilingPlan
        {
            Summary = summary with { ChecksFailed = checks.Count(c => c.Status == CheckStatus.Fail) },
            Checks = checks,
            Cautions = cautions,
            Walls = walls,
            Joists = joists,
            Strapping = strapping,
            Sheets = sheets,
            CutPlan = cutPlan,
            Takeoff = takeoff,
            Steps = WorkSteps.Write(strapping, sheets, cutPlan, joists, survey.Units, say, walls),
            Alternatives = PlanAlternatives.Of(room, chosen, board, sheets),
        };
    }

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

    private static PlanSummary Summary(
        FramedRoom room, StrappingPlan strapping, SheetPlan sheets, CutPlan cutPlan, TakeoffPlan takeoff, MassTable masses)
    {
        var survey = room.Survey;
        Length? finished = survey.Room.FloorBuildUp is { } buildUp && survey.Room.Heights.Count > 0
            ? new Length(survey.Room.Heights.Min(h => h.FloorToJoist.Units)) - buildUp - survey.Strapping.Thickness - (survey.Sheets.Thickness * survey.Sheets.Layers)
            : null;
        return new PlanSummary
        {
            Rows = strapping.Rows.Count,
            StrapPieces = strapping.Rows.Sum(r => r.Pieces.Count),
            LengthsToBuy = cutPlan.Sticks.Count,
            SheetsToBuy = cutPlan.Sheets.Count,
            ButtJointLength = sheets.ButtJointLength,
            FinishedHeight = finished,
            LowestUnderside = finished,
            MassKilograms = takeoff.Totals.MassKilograms,
            HeaviestLiftKilograms = cutPlan.Sheets
                .DistinctBy(s => (s.Width, s.Length))
                .Select(s => masses.SheetKilograms(survey.Sheets.Type, survey.Sheets.Thickness, s.Width, s.Length))
                .DefaultIfEmpty(0m)
                .Max(),
            Cost = takeoff.Totals.Amount,
            ChecksFailed = 0,
        };
    }
}
