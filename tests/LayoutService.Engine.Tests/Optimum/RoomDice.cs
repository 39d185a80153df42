namespace LayoutService.Engine.Tests.Optimum;

/// <summary>SplitMix64 (Steele, Lea and Flood 2014): the same throws from the same seed on every machine and framework.</summary>
internal sealed class RoomDice(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A whole number from least to most, both included; least where most is smaller.</summary>
    public long Whole(long least, long most) => most <= least ? least : least + (long)(Bits() % (ulong)(most - least + 1));

    /// <summary>True in so many of a hundred throws.</summary>
    public bool Chance(int percent) => Whole(0, 99) < percent;

    public T Pick<T>(params T[] options) => options[Whole(0, options.Length - 1)];

    private ulong Bits()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
