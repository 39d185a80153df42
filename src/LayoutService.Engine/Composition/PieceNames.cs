using System.Globalization;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Names of the pieces of an order: a piece wanted once keeps its id; of one wanted more often, the first cut is
/// <c>id-1</c>, the next <c>id-2</c>, and so on.
/// </summary>
public sealed class PieceNames(IReadOnlyList<(string Id, int Count)> wanted)
{
    private readonly int[] _named = new int[wanted.Count];

    /// <summary>The name of the next piece of this kind.</summary>
    public string Next(int kind) => Of(wanted[kind].Id, wanted[kind].Count, ++_named[kind]);

    /// <param name="id">Id of the wanted kind.</param>
    /// <param name="count">How many are wanted.</param>
    /// <param name="number">Which of them, from 1.</param>
    public static string Of(string id, int count, int number) =>
        count == 1 ? id : string.Create(CultureInfo.InvariantCulture, $"{id}-{number}");
}
