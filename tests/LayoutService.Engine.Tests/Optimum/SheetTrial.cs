using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>
/// What one room's board costs: as planned, its bound, by hand with backed ends, by hand with nothing behind the ends, and
/// by area × 1.10 in whole sheets of the cheapest kind per area. <see cref="Unit"/> is one sheet of that kind.
/// </summary>
internal sealed record SheetTrial(SeededSurvey Room, double Planned, double Bound, double Backed, double Unbacked, double ByArea, double Unit)
{
    public double BestHand => Math.Min(Backed, ByArea);

    public double BestAny => Math.Min(Unbacked, ByArea);

    public bool NoDearerThanHand => Planned <= BestHand * 1.000001;

    public bool NoDearerThanAny => Planned <= BestAny * 1.000001;

    public double SheetsOverHand => Math.Max(0, (Planned - BestHand) / Unit);

    public double SheetsOverAny => Math.Max(0, (Planned - BestAny) / Unit);

    public double Gap => (Planned - Bound) / Bound;

    public static SheetTrial? Of(SeededSurvey room) => Of(room, LayoutEngine.Plan(room.Survey));

    public static SheetTrial? Of(SeededSurvey room, PlanOutcome outcome)
    {
        if (outcome is not PlanOutcome.Made { Plan: var plan })
        {
            return null;
        }

        var survey = room.Survey;
        var result = plan.CutPlan.Results.Single(r => r.Use == "sheets");
        var priced = survey.Sheets.Stock.All(s => s.PackPrice is not null);
        // without prices the answer counts ft2 or m2
        var side = survey.Units == UnitSystem.Imperial ? 12.0 * Length.PerInch : 1000.0 * Length.PerMillimetre;
        var scale = priced ? 1.0 : side * side;
        var cheapest = survey.Sheets.Stock.MinBy(s => HandBoard.Cost(survey, s) / Area(s))!;
        var area = plan.Sheets.Pieces.Sum(p => p.AreaSquareMetres) * Math.Pow(1000.0 * Length.PerMillimetre, 2);
        var unit = HandBoard.Cost(survey, cheapest) / scale;
        return new SheetTrial(
            room,
            (double)result.Cost,
            (double)result.LowerBound,
            HandBoard.LeastCost(survey, HandRule.Backed) / scale,
            HandBoard.LeastCost(survey, HandRule.Unbacked) / scale,
            Math.Ceiling((area * 1.10 / Area(cheapest)) - 1e-9) * unit,
            unit);
    }

    public static List<SheetTrial> Run(int count, Effort effort = Effort.Quick)
    {
        var trials = new List<SheetTrial>();
        for (var seed = 0; trials.Count < count && seed < 2 * count; seed++)
        {
            if (Of(SeededSurveys.Make(seed, effort)) is { } trial)
            {
                trials.Add(trial);
            }
        }

        return trials;
    }

    private static double Area(SheetStock s) => (double)s.Width.Units * s.Length.Units;

    public override string ToString() => FormattableString.Invariant(
        $"{Room}: planned {Planned:F2}, bound {Bound:F2}, hand {Backed:F2}, hand unbacked {Unbacked:F2}, by area {ByArea:F2}, sheet {Unit:F2}");
}
