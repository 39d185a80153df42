namespace LayoutService.Engine.Levelling;

/// <summary>
/// Problem: straps nailed tight copy the joists; find what brings their undersides to one plane. Where no step between neighbouring
/// crossings, along a row or along a joist, is more than the limit, nothing is packed. Else the plane is level and touches the lowest
/// crossing, so that no joist is cut; every other crossing is packed to the nearest whole grain when it stands off the plane by more
/// than half the limit, which leaves no step above the limit; past the most that may be packed the joist is sistered, and past what a sister reaches it is left, which the step that is left shows. One sort
/// a direction: O(crossings × log crossings). Why not a tilted plane: it would pack less, but doors, bulkheads and water levels
/// are set from a level ceiling.
/// </summary>
public static class LevelPlanner
{
    /// <summary>Null when there is no crossing under a joist.</summary>
    public static LevelPlan? Plan(IReadOnlyList<LevelCrossing> crossings, LevelRules rules)
    {
        if (crossings.Count == 0)
        {
            return null;
        }

        var lowest = crossings.MinBy(c => (c.Level, c.At.U, c.At.V));
        var plane = rules.Plane ?? lowest.Level;
        var neighbours = NeighbourPairs.Of(crossings);
        var found = Greatest(neighbours, crossings, c => c.Level);
        var packed = new List<PackedCrossing>();
        var high = new List<PackedCrossing>();
        foreach (var crossing in found.Step > rules.From || rules.Plane is not null ? crossings : [])
        {
            var gap = crossing.Level - plane;
            if (gap > rules.From / 2)
            {
                var thickness = (gap + (rules.Grain / 2)) / rules.Grain * rules.Grain;
                if (gap <= Math.Max(rules.Most, LevelRules.SisterReach))
                {
                    (thickness > rules.Most ? high : packed).Add(new PackedCrossing(crossing, gap, thickness));
                }
            }
        }

        var left = packed.ToDictionary(p => p.Crossing, p => p.Gap - p.Thickness);
        high.ForEach(h => left[h.Crossing] = 0);
        var rest = Greatest(neighbours, crossings, c => left.TryGetValue(c, out var over) ? over : c.Level - plane);
        return new LevelPlan
        {
            Lowest = lowest,
            Plane = plane,
            StepFound = found.Step,
            StepRows = rest.Step > rules.From ? rest.Rows : found.Rows,
            StepLeft = rest.Step,
            Packed = packed,
            Sistered = SisteredStretches.Of(high, crossings),
            Estimated = crossings.Count(c => !c.Measured),
        };
    }

    private static (long Step, IReadOnlyList<int> Rows) Greatest(
        IReadOnlyList<(int, int)> neighbours, IReadOnlyList<LevelCrossing> crossings, Func<LevelCrossing, long> height)
    {
        (long Step, IReadOnlyList<int> Rows) most = (0, []);
        foreach (var (a, b) in neighbours)
        {
            var step = Math.Abs(height(crossings[a]) - height(crossings[b]));
            if (step > most.Step)
            {
                most = (step, crossings[a].Row == crossings[b].Row ? [crossings[a].Row] : [crossings[a].Row, crossings[b].Row]);
            }
        }

        return most;
    }
}
