using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>One way to break a run into pieces: the bearing lines its butts stand on, rising, and the price guessed for it.</summary>
public sealed record ButtPattern(int[] Lines, long Guess);

/// <summary>
/// Enumerates the ways to break a run: every first butt that a stock length reaches, then as far as each stock length
/// goes, from either wall. That holds every pattern with one butt, and for longer runs those that waste least. An opening
/// wholly inside the run gets a butt through it. Cost: lines × lengths × pieces.
/// </summary>
public sealed class ButtPatterns(IReadOnlyList<BearingLine> lines, long[] lengths, Func<long, long> guess, long buttCost)
{
    /// <summary>No piece of board is shorter than this where there is a choice: 400 mm. Common practice, no source.</summary>
    public const long LeastPiece = 400 * Length.PerMillimetre;

    public List<ButtPattern> Of(CourseRun run, Func<int, bool> backs, int most)
    {
        var (low, high) = (run.Along.Lo, run.Along.Hi);
        var eligible = new List<int>();
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].At - low >= LeastPiece && high - lines[i].At >= LeastPiece && backs(i))
            {
                eligible.Add(i);
            }
        }

        var found = new Dictionary<string, ButtPattern>();
        if (run.Along.Size <= lengths[0])
        {
            Add([]);
        }

        foreach (var first in eligible)
        {
            foreach (var length in lengths)
            {
                if (lines[first].At - low <= lengths[0])
                {
                    Add(Walk(eligible, first, high, length, true));
                }

                if (high - lines[first].At <= lengths[0])
                {
                    Add(Walk(eligible, first, low, length, false));
                }
            }
        }

        return [.. found.Values.OrderBy(p => p.Guess).ThenBy(p => p.Lines.Length).ThenBy(p => p.Lines.Length > 0 ? p.Lines[0] : 0).Take(most)];

        void Add(int[]? butts)
        {
            butts = butts is null ? null : ThroughOpenings(run, eligible, butts);
            if (butts is null)
            {
                return;
            }

            long price = buttCost * butts.Length;
            var at = low;
            foreach (var butt in butts)
            {
                price += guess(lines[butt].At - at);
                at = lines[butt].At;
            }

            if (high - at > lengths[0])
            {
                return;
            }

            price += guess(high - at);
            found.TryAdd(string.Join(',', butts), new ButtPattern(butts, price));
        }
    }

    // from a first butt on, each next butt as far as the length reaches, leaving no scrap at the wall
    private int[]? Walk(List<int> eligible, int first, long end, long length, bool up)
    {
        var butts = new List<int> { first };
        var at = lines[first].At;
        while (Math.Abs(end - at) > length)
        {
            var next = -1;
            foreach (var candidate in eligible)
            {
                var step = up ? lines[candidate].At - at : at - lines[candidate].At;
                if (step >= LeastPiece && step <= length && (next < 0 || (up ? lines[candidate].At > lines[next].At : lines[candidate].At < lines[next].At)))
                {
                    next = candidate;
                }
            }

            if (next < 0)
            {
                return null;
            }

            butts.Add(next);
            at = lines[next].At;
        }

        butts.Sort();
        return [.. butts];
    }

    private int[]? ThroughOpenings(CourseRun run, List<int> eligible, int[] butts)
    {
        foreach (var opening in run.Enclosed)
        {
            if (butts.Any(b => Inside(b, opening)))
            {
                continue;
            }

            var through = eligible.Where(e => Inside(e, opening)).ToList();
            if (through.Count == 0)
            {
                return null;
            }

            var chosen = through.OrderBy(e => Math.Abs(lines[e].At - opening.Middle)).First();
            butts = [.. butts.Where(b => Math.Abs(lines[b].At - lines[chosen].At) >= LeastPiece).Append(chosen).Order()];
        }

        return butts;
    }

    private bool Inside(int line, Span opening) => opening.Lo < lines[line].At && lines[line].At < opening.Hi;
}
