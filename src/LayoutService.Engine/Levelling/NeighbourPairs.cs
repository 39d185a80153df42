namespace LayoutService.Engine.Levelling;

/// <summary>Which crossings the board spans between: next to each other in a run of a row, or next to each other along a joist.</summary>
internal static class NeighbourPairs
{
    public static IReadOnlyList<(int One, int Other)> Of(IReadOnlyList<LevelCrossing> crossings)
    {
        var pairs = new List<(int, int)>(2 * crossings.Count);
        Add([.. Enumerable.Range(0, crossings.Count).OrderBy(i => crossings[i].Run).ThenBy(i => crossings[i].At.V)], i => crossings[i].Run);
        Add([.. Enumerable.Range(0, crossings.Count).OrderBy(i => crossings[i].Joist).ThenBy(i => crossings[i].At.U)], i => crossings[i].Joist);
        return pairs;

        void Add(int[] order, Func<int, int> group)
        {
            for (var i = 1; i < order.Length; i++)
            {
                if (group(order[i]) == group(order[i - 1]))
                {
                    pairs.Add((order[i - 1], order[i]));
                }
            }
        }
    }
}
