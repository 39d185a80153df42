namespace LayoutService.Auditor.Reading;

/// <summary>How a board edge that is on no wall runs.</summary>
public enum SeamRun { Butt, Along, Oblique }

/// <summary>
/// A stretch of one board's edge that lies on no wall and no opening's edge: a butt (square to the joists, At is its
/// along), a seam along them (At is its across), or an oblique one, which no rule allows.
/// </summary>
public sealed record BoardSeam(GivenBoard Board, SeamRun Run, double At, Stretch Stretch)
{
    private const double OnWall = 0.06;

    public static IEnumerable<BoardSeam> Of(GivenPlan plan)
    {
        var walls = plan.Room.Border.Walls;
        foreach (var board in plan.Boards)
        {
            for (var i = 0; i < board.Ring.Count; i++)
            {
                var edge = new Wall(0, board.Ring[i], board.Ring[(i + 1) % board.Ring.Count]);
                foreach (var seam in Of(board, edge, walls))
                {
                    yield return seam;
                }
            }
        }
    }

    private static IEnumerable<BoardSeam> Of(GivenBoard board, Wall edge, IReadOnlyList<Wall> walls)
    {
        // An edge that follows a wall almost square to the joists may come out square, or as a step of a hair.
        if ((edge.IsSquare && edge.IsAlong) || OnWalls(edge, walls))
        {
            return [];
        }

        if (edge.IsSquare)
        {
            var on = walls.Where(w => w.IsSquare && Math.Abs(w.A.U - edge.A.U) <= OnWall).Select(w => w.Vs);
            return Left(edge.Vs, on).Select(s => new BoardSeam(board, SeamRun.Butt, edge.A.U, s));
        }

        if (edge.IsAlong)
        {
            var on = walls.Where(w => w.IsAlong && Math.Abs(w.A.V - edge.A.V) <= OnWall).Select(w => w.Us);
            return Left(edge.Us, on).Select(s => new BoardSeam(board, SeamRun.Along, edge.A.V, s));
        }

        return [new BoardSeam(board, SeamRun.Oblique, edge.A.U, edge.Us)];
    }

    // on one wall, or on one wall and on in line along the next; tried every few millimetres, for openings may lie in line with a gap between
    private static bool OnWalls(Wall edge, IReadOnlyList<Wall> walls)
    {
        var near = walls.Where(w => w.Distance(edge.A) <= OnWall || w.Distance(edge.B) <= OnWall || edge.Distance(w.A) <= OnWall || edge.Distance(w.B) <= OnWall).ToList();
        var parts = Math.Max(8, (int)((edge.Us.Length + edge.Vs.Length) / 5));
        return Enumerable.Range(0, parts + 1).All(i =>
        {
            var at = new Uv(edge.A.U + ((edge.B.U - edge.A.U) * i / parts), edge.A.V + ((edge.B.V - edge.A.V) * i / parts));
            return near.Exists(w => w.Distance(at) <= OnWall);
        });
    }

    private static List<Stretch> Left(Stretch whole, IEnumerable<Stretch> taken)
    {
        var left = new List<Stretch>();
        var at = whole.From;
        foreach (var t in taken.Where(t => t.To > whole.From && t.From < whole.To).OrderBy(t => t.From))
        {
            if (t.From - at > OnWall)
            {
                left.Add(new Stretch(at, t.From));
            }

            at = Math.Max(at, t.To);
        }

        if (whole.To - at > OnWall)
        {
            left.Add(new Stretch(at, whole.To));
        }

        return left;
    }
}
