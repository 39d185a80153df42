namespace LayoutService.Engine.Sheets;

/// <summary>Compares lists of butts by what is in them, so that a list not yet kept can be looked up too.</summary>
internal sealed class SameButts : IEqualityComparer<int[]>, IAlternateEqualityComparer<ReadOnlySpan<int>, int[]>
{
    public static SameButts Compared { get; } = new();

    public bool Equals(int[]? x, int[]? y) => x.AsSpan().SequenceEqual(y);

    public bool Equals(ReadOnlySpan<int> alternate, int[] other) => alternate.SequenceEqual(other);

    public int GetHashCode(int[] butts) => GetHashCode(butts.AsSpan());

    public int GetHashCode(ReadOnlySpan<int> butts)
    {
        var hash = butts.Length;
        foreach (var butt in butts)
        {
            hash = unchecked((hash * 31) + butt);
        }

        return hash;
    }

    public int[] Create(ReadOnlySpan<int> alternate) => alternate.ToArray();
}
