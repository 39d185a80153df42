using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;

using Stick = LayoutService.Engine.Ceilings.Stick;

namespace LayoutService.Engine.Composition;

/// <summary>The lengths of an order as cut.</summary>
public sealed record CutSticks(IReadOnlyList<Stick> Sticks, CutResult Result);

/// <summary>Cuts the lengths of an order.</summary>
public sealed class StickOrderCut(CutOrder order, StickOrder sticks)
{
    public (CutSticks? Cut, IReadOnlyList<Finding> Obstacles) Of()
    {
        var longest = Length.Max(default, sticks.Stock.Max(s => s.Length) - sticks.EndTrim);
        var tooLong = sticks.Wanted.Where(w => w.Length > longest).Select(w => w.Id).ToList();
        if (tooLong.Count > 0)
        {
            return (null, [CutFindings.LongerThanStock(tooLong, CutFindings.Say(longest, order.Units))]);
        }

        var perUnit = order.Units == UnitSystem.Imperial ? Length.PerInch : Length.PerMillimetre;
        var prices = OrderPrices.Of(
            [.. sticks.Stock.Select(s => (s.PackPrice, s.PackSize))], [.. sticks.Stock.Select(s => s.Length.Units)], perUnit);
        var problem = new StickProblem(
            [.. sticks.Wanted.Select(w => new StickWanted(w.Length.Units, w.Count))],
            [.. sticks.Stock.Select((s, k) => new StickKind(s.Length.Units, prices.Costs[k], s.Quantity))],
            sticks.Kerf.Units,
            sticks.EndTrim.Units);
        var lengths = problem.Wanted.Select(w => w.Length).Distinct().Count();
        var plan = StickCutter.Solve(problem, OrderBudget.StickSteps(order.Effort, lengths, problem.Kinds.Any(k => k.Quantity is not null)));
        if (plan.Missing.Count > 0)
        {
            return (null, [CutFindings.OutOfStock("sticks", [.. plan.Missing.Distinct().Order().Select(w => sticks.Wanted[w].Id)], plan.Missing.Count)]);
        }

        var bound = Math.Min(plan.Cost, Math.Max(plan.LowerBound, FillBound.Of(problem)));
        var names = new PieceNames([.. sticks.Wanted.Select(w => (w.Id, w.Count))]);
        return (
            new CutSticks(
                [.. plan.Sticks.Select((s, i) => Write(s, i, names))],
                prices.Result("sticks", order, plan.Cost, bound, "length", order.Units == UnitSystem.Imperial ? "in" : "mm")),
            []);
    }

    private Stick Write(Cutting.Stick stick, int index, PieceNames names)
    {
        var stock = sticks.Stock[stick.Kind];
        return new Stick(
            $"K{index + 1}",
            sticks.Size,
            stock.Length,
            stock.Id,
            [.. stick.Pieces.Select(w => new StickCut(names.Next(w), sticks.Wanted[w].Length))],
            new Length(stick.Offcut));
    }
}
