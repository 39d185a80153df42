using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>
/// An independent reading of a sheet cut plan: lists everything that is wrong with it, and knows nothing of how it was made.
/// </summary>
internal static class SheetGuillotine
{
    private readonly record struct Box(long X, long Y, long Length, long Width, int Piece)
    {
        public long EndX => X + Length;

        public long EndY => Y + Width;
    }

    public static List<string> Faults(SheetProblem problem, SheetSolution plan)
    {
        var faults = new List<string>();
        var seen = new int[problem.Wanted.Count];
        var used = new int[problem.Stock.Count];
        long cost = 0;
        for (var s = 0; s < plan.Sheets.Count; s++)
        {
            var sheet = plan.Sheets[s];
            cost += problem.Stock[sheet.Kind].Cost;
            used[sheet.Kind]++;
            foreach (var cut in sheet.Cuts)
            {
                seen[cut.Piece]++;
            }

            SheetFaults(problem, sheet, $"sheet {s}", faults);
        }

        foreach (var piece in plan.Unplaced)
        {
            seen[piece]++;
        }

        for (var i = 0; i < seen.Length; i++)
        {
            if (seen[i] != 1)
            {
                faults.Add($"piece {i} is cut or given up {seen[i]} times");
            }
        }

        for (var k = 0; k < used.Length; k++)
        {
            if (used[k] > (problem.Stock[k].Quantity ?? int.MaxValue))
            {
                faults.Add($"{used[k]} of kind {k}, {problem.Stock[k].Quantity} to be had");
            }
        }

        if (cost != plan.Cost)
        {
            faults.Add($"cost {plan.Cost} stated, {cost} counted");
        }

        if (plan.LowerBound > plan.Cost)
        {
            faults.Add($"bound {plan.LowerBound} above cost {plan.Cost}");
        }

        return faults;
    }

    private static void SheetFaults(SheetProblem problem, SheetUse sheet, string name, List<string> faults)
    {
        var kind = problem.Stock[sheet.Kind];
        var boxes = new List<Box>();
        foreach (var cut in sheet.Cuts)
        {
            var wanted = problem.Wanted[cut.Piece];
            var (width, length) = cut.Turned ? (wanted.Length, wanted.Width) : (wanted.Width, wanted.Length);
            if (cut.Width != width || cut.Length != length)
            {
                faults.Add($"{name}: piece {cut.Piece} has another size");
            }

            if (cut.Turned && (!wanted.MayTurn || wanted.Edges != FactoryEdges.None))
            {
                faults.Add($"{name}: piece {cut.Piece} is turned");
            }

            var factory = problem.EdgeTrim > 0 ? 0 : (cut.Y == 0 ? 1 : 0) + (cut.Y + cut.Width == kind.Width ? 1 : 0);
            if (factory < (int)wanted.Edges)
            {
                faults.Add($"{name}: piece {cut.Piece} keeps {factory} factory edges, needs {wanted.Edges}");
            }

            boxes.Add(new Box(cut.X, cut.Y, cut.Length, cut.Width, cut.Piece));
        }

        boxes.AddRange(sheet.Offcuts.Select(o => new Box(o.X, o.Y, o.Length, o.Width, -1)));
        foreach (var box in boxes)
        {
            if (box.Length <= 0 || box.Width <= 0
                || box.X < problem.EndTrim || box.EndX > kind.Length - problem.EndTrim
                || box.Y < problem.EdgeTrim || box.EndY > kind.Width - problem.EdgeTrim)
            {
                faults.Add($"{name}: {box} is empty or outside the trimmed sheet");
            }
        }

        if (!Separates(boxes, problem.Kerf))
        {
            faults.Add($"{name}: pieces and offcuts cannot be parted by edge-to-edge cuts");
        }

        if (problem.Kerf == 0)
        {
            var whole = (decimal)(kind.Width - 2 * problem.EdgeTrim) * (kind.Length - 2 * problem.EndTrim);
            var sum = boxes.Sum(b => (decimal)b.Width * b.Length);
            if (sum != whole)
            {
                faults.Add($"{name}: pieces and offcuts cover {sum}, the sheet is {whole}");
            }
        }
    }

    /// <summary>Some straight cut, a kerf wide, parts the boxes in two lots, and so on until each stands alone.</summary>
    private static bool Separates(List<Box> boxes, long kerf)
    {
        if (boxes.Count <= 1)
        {
            return true;
        }

        return Part(boxes, b => b.X, b => b.EndX, kerf) ?? Part(boxes, b => b.Y, b => b.EndY, kerf) ?? false;
    }

    private static bool? Part(List<Box> boxes, Func<Box, long> from, Func<Box, long> to, long kerf)
    {
        var sorted = boxes.OrderBy(from).ThenBy(to).ToList();
        var end = to(sorted[0]);
        for (var i = 1; i < sorted.Count; i++)
        {
            if (from(sorted[i]) >= end + kerf)
            {
                // Any cut that parts the boxes may be taken first: what could be parted before still can be.
                return Separates(sorted[..i], kerf) && Separates(sorted[i..], kerf);
            }

            end = Math.Max(end, to(sorted[i]));
        }

        return null;
    }
}
