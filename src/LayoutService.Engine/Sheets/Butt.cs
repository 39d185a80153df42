namespace LayoutService.Engine.Sheets;

/// <summary>
/// A butt's place along the joists; how many through rows stand at or before it; and whether it stands on one of them
/// (else on a short strap of its own).
/// </summary>
public readonly record struct Butt(long At, int Row, bool Through)
{
    /// <summary>What two butts on one row weigh.</summary>
    public const long OneRow = 1_000_000;

    /// <summary>What two butts nearer than the stagger weigh; anything less is a matter of preference.</summary>
    public const long NearRow = 10_000;

    /// <summary>What two butts of neighbouring courses weigh; <paramref name="least"/> is the stagger asked for, null for <paramref name="rows"/> row spaces.</summary>
    public static long Penalty(Butt a, Butt b, long? least, int rows)
    {
        var apart = Math.Abs(a.At - b.At);
        return apart == 0 ? OneRow : (least is { } asked ? apart < asked : RowsApart(a, b) < rows) ? NearRow : 0;
    }

    /// <summary>The same for all butts of one course beside all of another; both rise. The farther two are apart the less they weigh, so only near ones are looked at.</summary>
    public static long Penalty(ReadOnlySpan<Butt> before, ReadOnlySpan<Butt> here, long? least, int rows)
    {
        long sum = 0;
        var next = 0;
        foreach (ref readonly var butt in before)
        {
            while (next < here.Length && here[next].At < butt.At)
            {
                next++;
            }

            for (var i = next; i < here.Length && Penalty(butt, here[i], least, rows) is > 0 and var weight; i++)
            {
                sum += weight;
            }

            for (var i = next - 1; i >= 0 && Penalty(butt, here[i], least, rows) is > 0 and var weight; i--)
            {
                sum += weight;
            }
        }

        return sum;
    }

    /// <summary>A butt on each of these lines, which rise.</summary>
    public static Butt[] Places(IReadOnlyList<Ceilings.BearingLine> lines)
    {
        var places = new Butt[lines.Count];
        for (int i = 0, row = 0; i < places.Length; i++)
        {
            row += lines[i].Through ? 1 : 0;
            places[i] = new Butt(lines[i].At, row, lines[i].Through);
        }

        return places;
    }

    // counted in row spaces of the rows that run through; a short strap lies part of a space from either
    private static int RowsApart(Butt a, Butt b)
    {
        var (low, high) = a.At < b.At ? (a, b) : (b, a);
        return high.Row - low.Row + (high.Through ? 0 : 1) - (low.Through ? 0 : 1);
    }
}
