using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// What a part of a room knows of the whole, where joist fields run more than one way: the part is planned as a room of its own,
/// and written so that it can be joined to the others.
/// </summary>
public sealed record RunPart
{
    /// <summary>By edge of the part's outline: the id of the room's wall there, or of the line where the run changes.</summary>
    public required IReadOnlyList<string> EdgeIds { get; init; }

    /// <summary>Edges of the part's outline on a line where the run changes.</summary>
    public required IReadOnlySet<int> OnLine { get; init; }

    /// <summary>Number, in the room's survey, of each of the part's joist fields.</summary>
    public required IReadOnlyList<int> Fields { get; init; }

    /// <summary>Corners of the room, ends of its lines and of all its joists: what makes a part unlike its own mirror image.</summary>
    public required IReadOnlyList<Point> Around { get; init; }

    /// <summary>Direction of its joists, degrees.</summary>
    public required decimal RunDegrees { get; init; }

    /// <summary>Its extent along its joists, units.</summary>
    public required long Size { get; init; }

    /// <summary>From the room's lowest coordinate along the part's joists to the part's own, units of 1/8000 mm; zero or more.</summary>
    public required long Along { get; init; }

    /// <summary>The same across its joists.</summary>
    public required long Across { get; init; }

    /// <summary>Greatest extent of the whole room, along its first field's joists or across them.</summary>
    public required long Extent { get; init; }

    /// <summary>Ids that the parts before it have taken.</summary>
    public IdStarts Taken { get; init; }

    /// <summary>Level of the plane that all parts are packed to; null where the part finds its own, or nothing was read.</summary>
    public long? Plane { get; init; }

    /// <summary>An edge of the part's outline, and those that go on in one line with it: of a wall that the line where the run changes goes on from.</summary>
    public IReadOnlyList<int> InLine(int edge, IReadOnlyList<Uv> outline)
    {
        List<int> found = [edge];
        foreach (var step in new[] { 1, outline.Count - 1 })
        {
            for (var e = (edge + step) % outline.Count; !found.Contains(e) && Straight(outline, edge, e); e = (e + step) % outline.Count)
            {
                found.Add(e);
            }
        }

        return found;
    }

    private static bool Straight(IReadOnlyList<Uv> outline, int edge, int other)
    {
        var (a, b) = (outline[edge], outline[(edge + 1) % outline.Count]);
        return Rings.Turn(a, b, outline[other]) == 0 && Rings.Turn(a, b, outline[(other + 1) % outline.Count]) == 0;
    }
}

/// <summary>How many ids of each kind are taken: numbering goes on after them.</summary>
public readonly record struct IdStarts(int Joists, int Bays, int Rows, int Nailers, int Scabs, int Courses, int Sheets, int Fills, int Panels);

/// <summary>
/// A straight line across the room where the joists change direction. <see cref="Fields"/> are the ids of the fields at its two
/// sides; board ends at it on both, over straps or nailers, and a control joint covers it.
/// </summary>
public sealed record RunBreak(string Id, Point From, Point To, Length Length, IReadOnlyList<string> Fields);
