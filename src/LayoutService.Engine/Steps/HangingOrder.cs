using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Steps;

/// <summary>Courses in the order of hanging, from the start wall; in each, board pieces in order along the joists.</summary>
internal static class HangingOrder
{
    public static IReadOnlyList<(Course Course, IReadOnlyList<BoardPiece> Pieces)> Of(
        SheetPlan sheets, JoistPlan joists, IReadOnlyList<WallLine> walls)
    {
        var pieces = sheets.Pieces.GroupBy(piece => (piece.Course, piece.Layer)).ToDictionary(group => group.Key, group => group.ToList());
        var ordered = new List<(Course, IReadOnlyList<BoardPiece>)>();
        var wall = walls.FirstOrDefault(known => sheets.StartWalls.Contains(known.Id));
        foreach (var layer in sheets.Courses.GroupBy(course => course.Layer).OrderBy(group => group.Key))
        {
            var courses = layer.Where(course => pieces.ContainsKey((course.Id, course.Layer))).ToList();
            if (wall is not null && courses.Count > 1)
            {
                courses = [.. courses.OrderBy(course => course.From)];
                if (Nearest(pieces[(courses[^1].Id, layer.Key)], wall) < Nearest(pieces[(courses[0].Id, layer.Key)], wall))
                {
                    courses.Reverse();
                }
            }

            ordered.AddRange(courses.Select(course => (course, (IReadOnlyList<BoardPiece>)Along(pieces[(course.Id, layer.Key)], joists))));
        }

        return ordered;
    }

    private static List<BoardPiece> Along(List<BoardPiece> pieces, JoistPlan joists)
    {
        if (joists.Members.Count == 0)
        {
            return pieces;
        }

        var (from, to) = (joists.Members[0].From, joists.Members[0].To);
        double x = to.X.Units - from.X.Units, y = to.Y.Units - from.Y.Units;
        if (y < 0 || (y == 0 && x < 0))
        {
            (x, y) = (-x, -y);
        }

        return [.. pieces.OrderBy(piece => piece.Outline.Min(corner => (corner.X.Units * x) + (corner.Y.Units * y)))];
    }

    /// <summary>Square of the distance from the nearest corner of the pieces to the wall's line, times the wall's length squared.</summary>
    private static double Nearest(List<BoardPiece> pieces, WallLine wall)
    {
        double x = wall.To.X.Units - wall.From.X.Units, y = wall.To.Y.Units - wall.From.Y.Units;
        double Off(Point corner)
        {
            var cross = (x * (corner.Y.Units - wall.From.Y.Units)) - (y * (corner.X.Units - wall.From.X.Units));
            return cross * cross;
        }

        return pieces.Min(piece => piece.Outline.Min(Off));
    }
}
