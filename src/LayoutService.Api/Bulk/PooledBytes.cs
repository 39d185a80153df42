using System.Buffers;

namespace LayoutService.Api.Bulk;

/// <summary>Bytes of one line out, in arrays that are lent and given back, so that many large answers make no garbage.</summary>
internal sealed class PooledBytes : IBufferWriter<byte>, IDisposable
{
    private const int First = 16 * 1024;
    private byte[] lent = ArrayPool<byte>.Shared.Rent(First);
    private int length;

    public ReadOnlyMemory<byte> Written => lent.AsMemory(0, length);

    public void Clear() => length = 0;

    public void Advance(int count) => length += count;

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return lent.AsMemory(length);
    }

    public Span<byte> GetSpan(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return lent.AsSpan(length);
    }

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(lent);
        lent = [];
        length = 0;
    }

    private void Reserve(int sizeHint)
    {
        if (lent.Length - length >= Math.Max(sizeHint, 1))
        {
            return;
        }

        var wider = ArrayPool<byte>.Shared.Rent(Math.Max(length + sizeHint, 2 * lent.Length));
        Written.CopyTo(wider);
        ArrayPool<byte>.Shared.Return(lent);
        lent = wider;
    }
}
