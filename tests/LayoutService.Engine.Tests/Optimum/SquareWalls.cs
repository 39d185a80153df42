namespace LayoutService.Engine.Tests.Optimum;

/// <summary>
/// A wall square to the joists, or several at one place that face the same way: where its tight row's centre stands, which
/// cross-sections end at it, and whether the room lies above it.
/// </summary>
internal sealed record SquareWall(long At, bool RoomAbove, List<int> Sections)
{
    /// <summary>The tight row's centre.</summary>
    public long Row(long half) => RoomAbove ? At + half : At - half;
}

/// <summary>Finds the walls that ask for a tight row.</summary>
internal static class SquareWalls
{
    public static List<SquareWall> Of(List<CrossSection> sections)
    {
        var walls = new Dictionary<(long, bool), SquareWall>();
        for (var i = 0; i < sections.Count; i++)
        {
            if (sections[i].LowSquare)
            {
                Note((long)sections[i].Low0, true, i);
            }

            if (sections[i].HighSquare)
            {
                Note((long)sections[i].High0, false, i);
            }
        }

        return [.. walls.Values.OrderBy(w => w.At)];

        void Note(long at, bool above, int section)
        {
            if (!walls.TryGetValue((at, above), out var wall))
            {
                walls[(at, above)] = wall = new SquareWall(at, above, []);
            }

            wall.Sections.Add(section);
        }
    }
}
