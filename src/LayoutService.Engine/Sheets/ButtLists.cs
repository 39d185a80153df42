using System.Runtime.InteropServices;

namespace LayoutService.Engine.Sheets;

/// <summary>Different lists of butts, each kept once, end to end in one buffer that serves again after clearing.</summary>
internal sealed class ButtLists : IEqualityComparer<int>, IAlternateEqualityComparer<ReadOnlySpan<int>, int>
{
    private readonly List<int> _butts = new(256);
    private readonly List<(int Start, int Length)> _lists = new(64);
    private readonly HashSet<int> _known;

    public ButtLists() => _known = new HashSet<int>(64, this);

    public ReadOnlySpan<int> this[int list] => CollectionsMarshal.AsSpan(_butts).Slice(_lists[list].Start, _lists[list].Length);

    public void Clear()
    {
        _butts.Clear();
        _lists.Clear();
        _known.Clear();
    }

    /// <summary>Number of the list, or −1 when it is there already.</summary>
    public int Add(ReadOnlySpan<int> butts)
    {
        if (_known.GetAlternateLookup<ReadOnlySpan<int>>().Contains(butts))
        {
            return -1;
        }

        var list = _lists.Count;
        _lists.Add((_butts.Count, butts.Length));
        _butts.AddRange(butts);
        _known.Add(list);
        return list;
    }

    public bool Equals(int x, int y) => this[x].SequenceEqual(this[y]);

    public bool Equals(ReadOnlySpan<int> alternate, int other) => alternate.SequenceEqual(this[other]);

    public int GetHashCode(int list) => GetHashCode(this[list]);

    public int GetHashCode(ReadOnlySpan<int> alternate)
    {
        var hash = alternate.Length;
        foreach (var butt in alternate)
        {
            hash = unchecked((hash * 31) + butt);
        }

        return hash;
    }

    int IAlternateEqualityComparer<ReadOnlySpan<int>, int>.Create(ReadOnlySpan<int> alternate) => Add(alternate);
}
