using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Levelling;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The straps brought to a plane: the plan of it, the packing by run and support, and the sisters as nailers.</summary>
public sealed record LevelledStraps(LevelPlan Plan, IReadOnlyDictionary<(int Run, int Support), PackedCrossing> Packing, IReadOnlyList<NailerLine> Sisters);

/// <summary>Joins the levels of the joists to the straps: one level a crossing, taken from the lowest joist of its support.</summary>
internal static class LevelJoin
{
    /// <summary>How far a sister runs on past the last row that it carries: 300 mm. Common practice, no source.</summary>
    private const long RunOn = 300 * Length.PerMillimetre;

    /// <summary>Thickness of a sister, 2x4.</summary>
    private const long SisterThickness = 38 * Length.PerMillimetre;

    /// <summary>Null when no underside was read.</summary>
    public static LevelledStraps? Of(FramedRoom room, IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs, IReadOnlyList<IReadOnlyList<RunPiece>> ways)
    {
        if (room.Levels is not { } levels)
        {
            return null;
        }

        var crossings = new List<LevelCrossing>();
        var supports = new Dictionary<LevelCrossing, int>();
        for (var r = 0; r < runs.Count; r++)
        {
            var u = lines[runs[r].Line].At;
            var joints = ways[r].Skip(1).Select(p => runs[r].Nodes[p.From]).Where(n => n.Joint == JointKind.Joist).Select(n => n.Key).ToHashSet();
            foreach (var support in runs[r].Supports.Where(s => s.Index >= 0))
            {
                if (Lowest(room, levels, support.Index, u) is { } lowest)
                {
                    var crossing = new LevelCrossing(
                        runs[r].Line, r, lowest.Joist, new Uv(u, support.Middle), lowest.Level, levels.Measured(lowest.Joist), joints.Contains(support.Index));
                    crossings.Add(crossing);
                    supports[crossing] = support.Index;
                }
            }
        }

        return LevelPlanner.Plan(crossings, Rules(room.Survey)) is { } plan
            ? new LevelledStraps(plan, plan.Packed.ToDictionary(p => (p.Crossing.Run, supports[p.Crossing])), [.. Sisters(room, plan, lines)])
            : null;
    }

    /// <summary>
    /// From the floor as it is to the plane: least of the heights taken, each brought from its own place to the plane. A height
    /// without a place is taken as read under the lowest joist.
    /// </summary>
    public static Length? LowestHeight(FramedRoom room, long? plane)
    {
        var heights = room.Survey.Room.Heights;
        return heights.Count == 0 ? null : new Length(heights.Min(h =>
            h.FloorToJoist.Units - (plane is { } low && h.At is { } at && room.Levels?.At(room.Frame.In(at)) is { } level ? level - low : 0)));
    }

    private static LevelRules Rules(Survey survey)
    {
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var imperial = survey.Units == UnitSystem.Imperial;
        return new LevelRules(
            book.Limit("packing-from").Value.Length.Units,
            book.Limit("packing-most", imperial).Value.Length.Units,
            imperial ? Length.PerSixteenth : Length.PerMillimetre) { Plane = survey.Part?.Plane };
    }

    // a strap under a doubled joist bears on the lower of the two
    private static (int Joist, long Level)? Lowest(FramedRoom room, JoistLevels levels, int support, long u)
    {
        var joists = room.Joists;
        var zone = joists.Zones.First(z => z.FirstSupport <= support && support < z.FirstSupport + z.SupportCount);
        var skipped = 0;
        for (var s = zone.FirstSupport; s < support; s++)
        {
            skipped += joists.Supports[s].MemberCount;
        }

        (int Joist, long Level)? lowest = null;
        for (var m = skipped; m < skipped + joists.Supports[support].MemberCount; m++)
        {
            if (levels.At(zone.Members[m], u) is { } level && (lowest is not { } known || level < known.Level))
            {
                lowest = (zone.Members[m], level);
            }
        }

        return lowest;
    }

    private static IEnumerable<NailerLine> Sisters(FramedRoom room, LevelPlan plan, IReadOnlyList<StrapLine> lines)
    {
        if (plan.Sistered.Count == 0)
        {
            yield break;
        }

        var names = JoistWriter.Names(room);
        foreach (var sister in plan.Sistered)
        {
            var joist = room.Joists.Members[sister.Joist];
            var inside = Inside(room, joist, sister.Along);
            var off = (joist.Face + SisterThickness) / 2;
            var near = joist.At < room.Frame.SizeV / 2 ? off : -off;
            long[] sides = sister.BothSides ? [-off, off] : [Carried(near) >= Carried(-near) ? near : -near];
            foreach (var side in sides)
            {
                // none goes through an opening: on both sides of one there are two
                foreach (var part in OpeningBlocks.Outside(room, inside, joist.At + side))
                {
                    var rows = sister.Rows.Where(row => part.Holds(lines[row].At)).ToList();
                    if (rows.Count > 0)
                    {
                        yield return new NailerLine(
                            NailerRole.Sister, new Uv(part.Lo, joist.At + side), new Uv(part.Hi, joist.At + side), 0, rows, [names[sister.Joist]]);
                    }
                }
            }

            // rows that a sister on that side reaches
            int Carried(long side) => OpeningBlocks.Outside(room, inside, joist.At + side).Sum(part => sister.Rows.Count(row => part.Holds(lines[row].At)));
        }
    }

    // the stretch with its run-on at both ends, as far as joist and room go
    private static Span Inside(FramedRoom room, FramedJoist joist, Span stretch)
    {
        var (lo, hi) = (Math.Max(stretch.Lo - RunOn, joist.Along.Lo), Math.Min(stretch.Hi + RunOn, joist.Along.Hi));
        foreach (var edge in room.Straps.Edges.Where(e => e.Across.Lo <= joist.At && joist.At < e.Across.Hi))
        {
            var u = edge.From.U + (long)((Int128)(edge.To.U - edge.From.U) * (joist.At - edge.From.V) / (edge.To.V - edge.From.V));
            lo = u <= stretch.Lo ? Math.Max(lo, u) : lo;
            hi = u >= stretch.Hi ? Math.Min(hi, u) : hi;
        }

        return new Span(lo, hi);
    }
}
