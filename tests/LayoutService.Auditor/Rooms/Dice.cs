namespace LayoutService.Auditor.Rooms;

/// <summary>SplitMix64: the same throws from the same seed on every machine and framework.</summary>
internal sealed class Dice(ulong seed)
{
    private ulong state = seed;

    public ulong Bits()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A whole number from least to most, both included.</summary>
    public long Whole(long least, long most) => most <= least ? least : least + (long)(Bits() % (ulong)(most - least + 1));

    /// <summary>True in so many of a hundred throws.</summary>
    public bool Chance(int percent) => Whole(0, 99) < percent;

    public T Pick<T>(params T[] options) => options[Whole(0, options.Length - 1)];

    public void Shuffle<T>(IList<T> list)
    {
        for (var i = list.Count - 1; i > 0; i--)
        {
            var j = (int)Whole(0, i);
            (list[i], list[j]) = (list[j], list[i]);
        }
    }
}
