using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Short straps that are laid beside the rows before the board is searched, so that butts have wood behind them. Cost: runs × lines.</summary>
public sealed class ExtraStraps(FramedRoom room, RowRules rules, StrapLines straps)
{
    // places looked at across an opening when there is no room for the clear gap
    private const int Tried = 24;

    /// <summary>
    /// The rows and a short strap through each opening wholly inside a course that no row passes: it needs a butt through it.
    /// At the last (<paramref name="crowded"/>) such a strap may stand nearer to another than the clear gap.
    /// </summary>
    public List<StrapLine> ThroughOpenings(List<StrapLine> lines, IReadOnlyList<CourseRun> runs, bool crowded)
    {
        foreach (var run in runs)
        {
            foreach (var opening in run.Enclosed)
            {
                var beside = lines.Where(l => l.Stretches.Any(s => s.Across.Overlaps(run.Strip))).ToList();
                if (beside.Any(l => opening.Lo < l.At && l.At < opening.Hi && Passes(l, run)))
                {
                    continue;
                }

                var near = beside.Where(l => Math.Abs(l.At - opening.Middle) < opening.Size + rules.MinGap).Select(l => l.At).ToList();
                var places = new[] { opening.Middle, opening.Lo + 1, opening.Hi - 1 }.Select((at, i) => i == 1 ? room.SnapUp(at) : room.SnapDown(at)).ToList();
                var place = Laid(places).FirstOrDefault(line => near.All(n => Math.Abs(n - line.At) >= rules.MinGap) && !lines.Exists(other => line.LiesOn(other, rules.MinGap)));
                if (place is null && crowded)
                {
                    // wood never lies on wood while there is a place where it need not
                    var more = Enumerable.Range(1, Tried - 1).Select(i => room.SnapNear(opening.Lo + (opening.Size * i / Tried)));
                    place = Laid(places.Concat(more)).MaxBy(line => Math.Min(rules.Face, lines.Where(line.IsBeside).Select(other => Math.Abs(other.At - line.At)).DefaultIfEmpty(rules.Face).Min()));
                }

                IEnumerable<StrapLine> Laid(IEnumerable<long> at) => at
                    .Where(u => opening.Lo < u && u < opening.Hi)
                    .Select(u => new StrapLine(u, false, straps.Short(u, [run.Strip]), null))
                    .Where(line => line.Stretches.Count > 0);

                if (place is not null)
                {
                    lines.Add(place);
                }
            }
        }

        lines.Sort(static (a, b) => a.At.CompareTo(b.At));
        return lines;
    }

    // a short strap of another wall may reach into the course and no further
    private bool Passes(StrapLine line, CourseRun run) => line.Through
        || (line.Stretches.Min(s => s.Across.Lo) <= run.Across.Lo + rules.Face && line.Stretches.Max(s => s.Across.Hi) >= run.Across.Hi - rules.Face);

    /// <summary>The rows and short straps midway between them, for where no row can carry a butt.</summary>
    public List<StrapLine> BetweenRows(List<StrapLine> lines, IReadOnlyList<CourseRun> runs)
    {
        var through = lines.Select(l => l.At).Distinct().Order().ToList();
        var added = new List<StrapLine>(lines);
        for (var i = 0; i + 1 < through.Count; i++)
        {
            var middle = room.SnapNear((through[i] + through[i + 1]) / 2);
            if (middle - through[i] < rules.MinGap || through[i + 1] - middle < rules.MinGap)
            {
                continue;
            }

            foreach (var run in runs.Where(r => r.Along.Lo < middle && middle < r.Along.Hi))
            {
                if (straps.Short(middle, [run.Strip]) is { Count: > 0 } stretches)
                {
                    added.Add(new StrapLine(middle, false, stretches, null));
                }
            }
        }

        added.Sort(static (a, b) => a.At != b.At ? a.At.CompareTo(b.At) : a.Stretches[0].Across.Lo.CompareTo(b.Stretches[0].Across.Lo));
        return added;
    }
}
