using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Sheets;

/// <summary>A seam between two parts (indices), in the working frame.</summary>
public readonly record struct BoardSeam(BoardJointKind Kind, int PartA, int PartB, Uv From, Uv To)
{
    /// <summary>The same seam with along and across changed over.</summary>
    public BoardSeam Turned() => this with { From = new Uv(From.V, From.U), To = new Uv(To.V, To.U) };

    public long Length => Math.Abs(To.U - From.U) + Math.Abs(To.V - From.V);
}

/// <summary>Finds every seam: butts inside a run, and the long edges where a course meets the next. Cost: parts of neighbouring courses.</summary>
public sealed class BoardSeams(BoardPieces pieces, SheetLayout layout)
{
    public List<BoardSeam> Of(IReadOnlyList<BoardPart> parts)
    {
        var seams = new List<BoardSeam>(2 * parts.Count);
        var (from, to) = (0, 0);
        for (var a = 0; a < parts.Count; a++)
        {
            // parts lie course by course: this one's course and the next
            while (parts[from].Course < parts[a].Course)
            {
                from++;
            }

            while (to < parts.Count && parts[to].Course <= parts[a].Course + 1)
            {
                to++;
            }

            for (var b = from; b < to; b++)
            {
                if (parts[a].Run == parts[b].Run && parts[a].HighLine >= 0 && parts[a].HighLine == parts[b].LowLine)
                {
                    var u = parts[a].Along.Hi;
                    foreach (var meet in Meets(EdgesAlong(parts[a].Ring, u, true), EdgesAlong(parts[b].Ring, u, true)))
                    {
                        seams.Add(new BoardSeam(BoardJointKind.Butt, a, b, new Uv(u, meet.Lo), new Uv(u, meet.Hi)));
                    }
                }
                else if (parts[b].Course == parts[a].Course + 1 && parts[a].Across.Hi == parts[b].Across.Lo && parts[a].Along.Overlaps(parts[b].Along))
                {
                    var v = parts[a].Across.Hi;
                    var kind = Tapered(parts[a], false) && Tapered(parts[b], true) ? BoardJointKind.Tapered : BoardJointKind.CutEdge;
                    foreach (var meet in Meets(EdgesAlong(parts[a].Ring, v, false), EdgesAlong(parts[b].Ring, v, false)))
                    {
                        seams.Add(new BoardSeam(kind, a, b, new Uv(meet.Lo, v), new Uv(meet.Hi, v)));
                    }
                }
            }
        }

        return seams;
    }

    // a part with one factory edge turns it to its seam; with seams on both sides and one factory edge, to the low one
    private bool Tapered(BoardPart part, bool low) =>
        part.FactoryEdges == 2 || (part.FactoryEdges == 1 && (low || !pieces.SeamLow(layout.Runs[part.Run], part.Across)));

    /// <summary>Stretches of a ring's edges that lie on a line of constant u (or v).</summary>
    public static List<Span> EdgesAlong(Uv[] ring, long at, bool constantU)
    {
        var found = new List<Span>(2);
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            if (constantU && a.U == at && b.U == at)
            {
                found.Add(new Span(Math.Min(a.V, b.V), Math.Max(a.V, b.V)));
            }
            else if (!constantU && a.V == at && b.V == at)
            {
                found.Add(new Span(Math.Min(a.U, b.U), Math.Max(a.U, b.U)));
            }
        }

        return found;
    }

    private static List<Span> Meets(List<Span> a, List<Span> b)
    {
        var found = new List<Span>(1);
        foreach (var x in a)
        {
            foreach (var y in b)
            {
                if (x.Overlaps(y))
                {
                    found.Add(x.Meet(y));
                }
            }
        }

        return found;
    }
}
