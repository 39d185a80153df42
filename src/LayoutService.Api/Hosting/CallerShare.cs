using System.Collections.Concurrent;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Bounds how many calls of one key are under way at once, where several keys are known: half of what the engine and its queue hold, and
/// half of the calls in bulk, so that whatever one key sends there is room for another's.
/// </summary>
/// <param name="calls">Calls that the engine and its queue hold.</param>
/// <param name="bulkCalls">Calls in bulk at once.</param>
internal sealed class CallerShare(int calls, int bulkCalls)
{
    private readonly ConcurrentDictionary<(string Caller, bool Bulk), int> underWay = new();

    /// <summary>Calls of one key at once.</summary>
    public int Most(bool bulk) => Math.Max(1, (bulk ? bulkCalls : calls) / 2);

    /// <summary>Counts a call; false when the key has its share under way already.</summary>
    public bool TryEnter(string caller, bool bulk)
    {
        if (underWay.AddOrUpdate((caller, bulk), 1, (_, count) => count + 1) <= Most(bulk))
        {
            return true;
        }

        Leave(caller, bulk);
        return false;
    }

    public void Leave(string caller, bool bulk) => underWay.AddOrUpdate((caller, bulk), 0, (_, count) => count - 1);
}
