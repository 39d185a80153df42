namespace LayoutService.Engine.Cutting;

/// <summary>Turns sheet designs into sheets with numbered pieces at real sizes, kerfs and trims taken off.</summary>
internal static class SheetDrawing
{
    public static List<SheetUse> Draw(SheetProblem problem, SheetTypes types, List<SheetDesign> designs)
    {
        var next = new int[types.Count];
        var sheets = new List<SheetUse>();
        foreach (var design in designs)
        {
            for (var n = 0; n < design.Times; n++)
            {
                sheets.Add(Draw(problem, types, design, next));
            }
        }

        return sheets;
    }

    private static SheetUse Draw(SheetProblem problem, SheetTypes types, SheetDesign design, int[] next)
    {
        var cuts = new List<SheetPieceCut>(design.Placed.Length);
        foreach (var placed in design.Placed)
        {
            var index = types.First[placed.Type] + next[placed.Type];
            var piece = types.Order[index];
            next[placed.Type]++;
            var wanted = problem.Wanted[piece];
            cuts.Add(new SheetPieceCut(
                piece,
                placed.X + problem.EndTrim,
                placed.Y + problem.EdgeTrim,
                placed.Turned ? wanted.Length : wanted.Width,
                placed.Turned ? wanted.Width : wanted.Length,
                placed.Turned));
        }

        var offcuts = new List<SheetRemnant>(design.Free.Length);
        foreach (var panel in design.Free)
        {
            var width = panel.Width - problem.Kerf;
            var length = panel.Length - problem.Kerf;
            if (width > 0 && length > 0)
            {
                offcuts.Add(new SheetRemnant(panel.X + problem.EndTrim, panel.Y + problem.EdgeTrim, width, length));
            }
        }

        return new SheetUse(design.Kind, cuts, offcuts);
    }
}
