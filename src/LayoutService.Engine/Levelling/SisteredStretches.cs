using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Levelling;

/// <summary>Gathers the crossings that are too high to pack into stretches of joist: one stretch where no other crossing lies between.</summary>
internal static class SisteredStretches
{
    public static IReadOnlyList<SisteredJoist> Of(List<PackedCrossing> high, IReadOnlyList<LevelCrossing> crossings)
    {
        var found = new List<SisteredJoist>();
        var tooHigh = high.ToDictionary(h => h.Crossing, h => h.Gap);
        foreach (var joist in high.Select(h => h.Crossing.Joist).Distinct().Order())
        {
            var stretch = new List<LevelCrossing>();
            foreach (var crossing in crossings.Where(c => c.Joist == joist).OrderBy(c => c.At.U))
            {
                if (tooHigh.ContainsKey(crossing))
                {
                    stretch.Add(crossing);
                    continue;
                }

                Close(stretch);
            }

            Close(stretch);

            void Close(List<LevelCrossing> over)
            {
                if (over.Count > 0)
                {
                    found.Add(new SisteredJoist(
                        joist, new Span(over[0].At.U, over[^1].At.U), [.. over.Select(c => c.Row)], over.Exists(c => c.Joint), over.Max(c => tooHigh[c])));
                    over.Clear();
                }
            }
        }

        return found;
    }
}
