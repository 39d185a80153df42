using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Composition;

/// <summary>The bulkheads as planned and the sticks that their members are cut from; a cut is of a bulkhead's member, both by index.</summary>
public sealed record CutBulkheads(IReadOnlyList<PlannedBulkhead> Planned, IReadOnlyList<BulkheadStick> Sticks, CutResult? Result)
{
    public static CutBulkheads None { get; } = new([], [], null);

    /// <summary>All boards, bulkhead by bulkhead, in the order in which they are numbered behind the ceiling's parts.</summary>
    public IEnumerable<PlannedBoard> Boards => Planned.SelectMany(p => p.Boards);
}

public sealed record BulkheadStick(StickStock Stock, string Size, IReadOnlyList<(int Bulkhead, int Member, long Length)> Cuts, long Offcut);

/// <summary>
/// Plans the bulkheads and cuts their frames: one job for each frame stock, apart from the straps. Rails and boards are made as long
/// as the longest stock allows; where the longest is dear for its length, or there are few of it, shorter ones are tried too
/// (one plan for each length that is cheaper for its length than all longer ones) and the cheapest is kept.
/// </summary>
public static class BulkheadCut
{
    /// <summary>The bulkheads and all board, that of the ceiling and theirs, cut together.</summary>
    public static (CutBulkheads? Bulkheads, CutBoard? Board, IReadOnlyList<Finding> Obstacles) WithBoard(
        FramedRoom room, ChosenCeiling chosen, FramedRoom boarded, IReadOnlyList<BoardPart> parts)
    {
        if (room.Solids.Count == 0)
        {
            var (all, none) = BoardCut.Of(boarded, parts, CutBulkheads.None);
            return (CutBulkheads.None, all, none is null ? [] : [none]);
        }

        var width = chosen.Layout.Division.SheetWidth;
        var prices = new StockPrices(room.Survey.Sheets);
        var lengths = Worth(room.Survey.Sheets.Stock.Where(s => s.Width.Units == width).Select(s => (s.Length.Units, prices.Cost(s), s.Quantity is not null)));
        var (caps, obstacle) = Frames(room, chosen, lengths[0]);
        (CutBulkheads? Bulkheads, CutBoard? Board, long Cost) best = (null, null, long.MaxValue);
        var obstacles = new List<Finding>();
        foreach (var length in obstacle is null ? lengths : [])
        {
            var (made, noFrame) = Of(room, chosen, caps, length);
            var (board, noBoard) = BoardCut.Of(boarded, parts, made ?? CutBulkheads.None);
            obstacles.AddRange(new[] { noFrame, noBoard }.OfType<Finding>());
            if (made is not null && board is not null && Cost(board, made, prices) is var cost && cost < best.Cost)
            {
                best = (made, board, cost);
            }
        }

        return (best.Bulkheads, best.Board, best.Bulkheads is not null ? [] : obstacle is null ? [.. obstacles.Take(1)] : [obstacle]);
    }

    /// <summary>The boards of the bulkheads under a ceiling, each as long as the longest stock allows.</summary>
    public static IEnumerable<PlannedBoard> Boards(FramedRoom room, ChosenCeiling chosen)
    {
        var width = chosen.Layout.Division.SheetWidth;
        var rules = Rules(
            room, width, room.Survey.Sheets.Stock.Where(s => s.Width.Units == width).Max(s => s.Length.Units),
            room.Solids.Select(s => s.Wish.Frame).Distinct().ToDictionary(w => w, w => w.Stock.Max(s => s.Length.Units)));
        return BulkheadPlanner.Plan(room, [.. chosen.Lines.Select(l => l.Bearing)], rules).SelectMany(box => box.Boards);
    }

    // sheets, and what the caller puts on joints: a shorter piece is one joint more of its width
    private static long Cost(CutBoard board, CutBulkheads bulkheads, StockPrices prices) =>
        board.Sheets.Sum(s => prices.Cost(s.Stock)) + bulkheads.Boards.Sum(b => prices.ButtCost(b.Width));

    // for each frame's stock how long its rails may be
    private static (Dictionary<FrameWish, long> Caps, Finding? Obstacle) Frames(FramedRoom room, ChosenCeiling chosen, long sheet)
    {
        var woods = room.Solids.Select(s => s.Wish.Frame).Distinct().ToList();
        var priced = Priced(room);
        var lengths = woods.ToDictionary(w => w, w => Worth(w.Stock.Select(s => (s.Length.Units, Cost(s, priced), s.Quantity is not null))));
        var caps = woods.ToDictionary(w => w, w => lengths[w][0]);
        Finding? obstacle = null;
        if (lengths.Values.All(l => l.Count == 1))
        {
            return (caps, null);
        }

        var least = long.MaxValue;
        foreach (var wood in woods)
        {
            var best = caps[wood];
            foreach (var length in lengths[wood])
            {
                caps[wood] = length;
                var (made, none) = Of(room, chosen, caps, sheet);
                obstacle ??= none;
                if (made?.Sticks.Sum(s => Cost(s.Stock, priced)) is { } cost && cost < least)
                {
                    (least, best) = (cost, length);
                }
            }

            caps[wood] = best;
        }

        return (caps, least < long.MaxValue ? null : obstacle);
    }

    // the longest, and each that costs less for its length than all that are longer, or of which there are few; falling
    private static List<long> Worth(IEnumerable<(long Length, long Cost, bool Few)> stock)
    {
        var found = new List<long>();
        var (least, few) = (double.MaxValue, false);
        foreach (var (length, cost, limited) in stock.OrderByDescending(s => s.Length).ThenBy(s => s.Cost))
        {
            if (found.Count == 0 || (found[^1] != length && (few || cost < least * length * (1 - 1e-9))))
            {
                found.Add(length);
            }

            (least, few) = (Math.Min(least, (double)cost / length), few || limited);
        }

        return found;
    }

    private static bool Priced(FramedRoom room) => room.Solids.All(s => s.Wish.Frame.Stock.All(k => k.PackPrice is not null));

    private static (CutBulkheads? Cut, Finding? Obstacle) Of(FramedRoom room, ChosenCeiling chosen, IReadOnlyDictionary<FrameWish, long> caps, long sheetLength)
    {
        var planned = BulkheadPlanner.Plan(room, [.. chosen.Lines.Select(l => l.Bearing)], Rules(room, chosen.Layout.Division.SheetWidth, sheetLength, caps));
        var sticks = new List<BulkheadStick>();
        var (cost, bound) = (0L, 0L);
        var priced = Priced(room);
        foreach (var job in planned.Select((p, i) => (p, i)).GroupBy(x => x.p.Solid.Wish.Frame))
        {
            var wanted = job.SelectMany(x => x.p.Members.Select((m, n) => (x.i, n, m.Cut))).ToList();
            var wood = job.Key;
            var longest = wood.Stock.Max(s => s.Length.Units) - room.Survey.Strapping.EndTrim.Units;
            if (wanted.Any(w => w.Cut > longest))
            {
                return (null, Findings.FrameTooLong([.. job.Select(x => x.p.Solid.Id)], room.Say(longest)));
            }

            var plan = StickCutter.Solve(new StickProblem(
                [.. wanted.Select(w => new StickWanted(Math.Max(1, w.Cut), 1))],
                [.. wood.Stock.Select(s => new StickKind(s.Length.Units, Cost(s, priced), s.Quantity))],
                room.Survey.Strapping.Kerf.Units,
                room.Survey.Strapping.EndTrim.Units), OrderBudget.Frame(room.Survey.Effort), OrderBudget.FrameRepack(room.Survey.Effort));
            if (plan.Missing.Count > 0)
            {
                return (null, Findings.OutOfStock("bulkheads"));
            }

            (cost, bound) = (cost + plan.Cost, bound + plan.LowerBound);
            sticks.AddRange(plan.Sticks.Select(s => new BulkheadStick(wood.Stock[s.Kind], wood.Size, [.. s.Pieces.Select(p => wanted[p])], s.Offcut)));
        }

        return (new CutBulkheads(planned, sticks, Result(room, priced, cost, Math.Min(bound, cost))), null);
    }

    private static BulkheadRules Rules(FramedRoom room, long sheetWidth, long sheetLength, IReadOnlyDictionary<FrameWish, long> caps)
    {
        var survey = room.Survey;
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var imperial = survey.Units == UnitSystem.Imperial;
        return new BulkheadRules(
            book.Limit("bulkhead-rung-spacing", imperial).Value.Length.Units,
            book.Limit("bulkhead-block-spacing", imperial).Value.Length.Units,
            sheetWidth,
            sheetLength,
            survey.Strapping.EndTrim.Units,
            caps);
    }

    private static long Cost(StickStock stock, bool priced) =>
        priced ? (long)decimal.Round(stock.PackPrice!.Value * 10_000m / stock.PackSize) : stock.Length.Units;

    private static CutResult Result(FramedRoom room, bool priced, long cost, long bound)
    {
        var imperial = room.Survey.Units == UnitSystem.Imperial;
        var perUnit = priced ? 10_000m : imperial ? Length.PerInch : Length.PerMillimetre;
        return new CutResult(
            "bulkheads", priced ? "cost" : "length", cost / perUnit, bound / perUnit,
            bound == 0 ? 0 : decimal.Round((decimal)(cost - bound) / bound, 6), cost == bound,
            priced ? room.Survey.Prices?.Currency ?? string.Empty : imperial ? "in" : "mm");
    }
}
