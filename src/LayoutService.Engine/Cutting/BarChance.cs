namespace LayoutService.Engine.Cutting;

/// <summary>A fixed sequence that looks like chance (xorshift, Marsaglia 2003): the same choices every time.</summary>
internal sealed class BarChance
{
    private const ulong First = 0x9E3779B97F4A7C15UL;
    private ulong _state = First;

    /// <summary>The state, as the start of another sequence.</summary>
    public ulong State => _state;

    /// <summary>Begins another sequence; 0 begins the usual one.</summary>
    public void Begin(ulong from) => _state = from == 0 ? First : from;

    /// <summary>The next whole number, from 0 to below − 1.</summary>
    public int Next(int below)
    {
        Step();
        return (int)((_state >> 33) % (ulong)below);
    }

    /// <summary>The next number between the two.</summary>
    public double Between(double least, double most)
    {
        Step();
        return least + (most - least) * (_state >> 40) / (1 << 24);
    }

    private void Step()
    {
        _state = unchecked(_state ^ (_state << 13));
        _state ^= _state >> 7;
        _state = unchecked(_state ^ (_state << 17));
    }
}
