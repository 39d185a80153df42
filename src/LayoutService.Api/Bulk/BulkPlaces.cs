namespace LayoutService.Api.Bulk;

/// <summary>Bounds how many calls in bulk run at once: each may hold what it has read ahead.</summary>
internal sealed class BulkPlaces(int places)
{
    private int taken;

    /// <summary>Takes a place; false when there is none.</summary>
    public bool TryEnter()
    {
        if (Interlocked.Increment(ref taken) <= places)
        {
            return true;
        }

        Interlocked.Decrement(ref taken);
        return false;
    }

    public void Leave() => Interlocked.Decrement(ref taken);
}
