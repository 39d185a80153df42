using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>
/// The room between two neighbouring levels across the joists: one stretch along them, with its ends at both levels.
/// An end is square when it does not move between the levels. Units are 1/8000 mm from the outline's lowest coordinate.
/// </summary>
internal readonly record struct CrossSection(long V0, long V1, double Low0, double Low1, double High0, double High1)
{
    public bool LowSquare => Low0 == Low1;

    public bool HighSquare => High0 == High1;

    public bool Touches(CrossSection other) => V0 <= other.V1 && other.V0 <= V1;

    /// <summary>True when a row with its centre here has its place in the section: a whole face at a square end, the centre at an oblique one.</summary>
    public bool Holds(long row, long half) =>
        row >= (LowSquare ? Low0 + half : Math.Min(Low0, Low1)) && row <= (HighSquare ? High0 - half : Math.Max(High0, High1));
}

/// <summary>
/// Cuts a survey's room into cross-sections by a walk over its corners' levels; it shares nothing with the engine's own
/// geometry. Posts no wider across the joists than the row spacing are left out: the board spans past them.
/// </summary>
internal static class CrossSections
{
    public static List<CrossSection> Of(Survey survey)
    {
        var rings = Rings(survey);
        var levels = rings.SelectMany(r => r.Select(c => c.V)).Distinct().Order().ToList();
        var found = new List<CrossSection>();
        for (var i = 0; i + 1 < levels.Count; i++)
        {
            var (v0, v1) = (levels[i], levels[i + 1]);
            var ends = new List<(double At0, double At1)>();
            foreach (var ring in rings)
            {
                for (var k = 0; k < ring.Count; k++)
                {
                    var (a, b) = (ring[k], ring[(k + 1) % ring.Count]);
                    if (a.V != b.V && Math.Min(a.V, b.V) <= v0 && Math.Max(a.V, b.V) >= v1)
                    {
                        ends.Add((At(v0), At(v1)));
                    }

                    double At(long v) => a.U + ((double)(b.U - a.U) * (v - a.V) / (b.V - a.V));
                }
            }

            ends.Sort((x, y) => (x.At0 + x.At1).CompareTo(y.At0 + y.At1));
            for (var k = 0; k + 1 < ends.Count; k += 2)
            {
                found.Add(new CrossSection(v0, v1, ends[k].At0, ends[k].At1, ends[k + 1].At0, ends[k + 1].At1));
            }
        }

        return found;
    }

    /// <summary>Outline and openings with u along the joists and v across them, from the outline's lowest coordinates.</summary>
    public static List<List<(long U, long V)>> Rings(Survey survey)
    {
        var along = survey.JoistFields[0].RunDegrees == 0;
        var outline = survey.Room.Outline;
        long lowX = outline.Min(p => p.X.Units), lowY = outline.Min(p => p.Y.Units);
        List<(long U, long V)> Turn(IEnumerable<Geometry.Point> ring) =>
            [.. ring.Select(p => (X: p.X.Units - lowX, Y: p.Y.Units - lowY)).Select(p => along ? (p.X, p.Y) : (p.Y, p.X))];
        var rings = new List<List<(long U, long V)>> { Turn(outline) };
        foreach (var opening in survey.Room.Openings)
        {
            var ring = Turn(opening.Outline);
            if (opening.Kind != OpeningKind.Post || ring.Max(c => c.V) - ring.Min(c => c.V) > survey.Strapping.MaxSpacing.Units)
            {
                rings.Add(ring);
            }
        }

        return rings;
    }
}
