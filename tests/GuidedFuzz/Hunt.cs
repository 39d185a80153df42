using System.Numerics;
using System.Text;
using LayoutService.Api.Tests.Fuzz;

namespace LayoutService.GuidedFuzz;

/// <summary>
/// Coverage-guided search for a body that makes the service fail: a body that takes a branch in a way not met before is kept, and kept bodies
/// are bent further. How often a branch was taken counts in classes that double, as in the fuzzers that this follows (AFL's map).
/// </summary>
internal sealed class Hunt(Target target, Random dice, IReadOnlyList<byte[]> starts)
{
    private const int LongestBody = 6_000;

    private static readonly byte[][] Tokens = [.. new[]
    {
        "\"", "\\", "\\u", "\\ud800", "{", "}", "[", "]", ",", ":", "null", "true", "false", "1e9", "1e400", "-", ".", "\0", "\u00FF", "//", "/*", "\uFEFF", "e", "E+", "0x",
        "\"kind\":", "\"unit\":", "\"in\"", "\"mm\"", "12' 3-1/2\"", "3/16", "[[0,0],[1,0]]", "\"positions\":[", "\"outline\":[", "-0", "99999999999999999999", "0.0000001",
    }.Select(Encoding.UTF8.GetBytes)];

    private readonly byte[] _met = new byte[Target.Places];
    private readonly List<byte[]> _kept = [];

    public long Runs { get; private set; }

    public int Kept => _kept.Count - starts.Count;

    public int AtFirst { get; private set; }

    public int Branches => _met.Count(b => b != 0);

    public SortedDictionary<int, long> Statuses { get; } = [];

    public List<(int Status, byte[] Body)> Failed { get; } = [];

    public async Task RunAsync(TimeSpan time)
    {
        foreach (var body in starts)
        {
            // twice: what runs but once (caches, static state) is no news about the body
            await TryAsync(body);
            await TryAsync(body);
            _kept.Add(body);
        }

        AtFirst = Branches;
        var end = DateTime.UtcNow + time;
        while (DateTime.UtcNow < end && Failed.Count < 10)
        {
            // of the kept ones half of the time one of the last
            var from = _kept[dice.Next(2) == 0 ? dice.Next(_kept.Count) : Math.Max(0, _kept.Count - 1 - dice.Next(1 + (_kept.Count / 4)))];
            var body = Bent([.. from]);
            if (body.Length <= LongestBody && await TryAsync(body))
            {
                _kept.Add(body);
            }
        }
    }

    // true when a branch was taken in a way not met before
    private async Task<bool> TryAsync(byte[] body)
    {
        var status = await target.PostAsync(body);
        Runs++;
        Statuses[status] = Statuses.GetValueOrDefault(status) + 1;
        if (status is not (200 or 400 or 422))
        {
            Failed.Add((status, body));
        }

        return IsNew();
    }

    private bool IsNew()
    {
        var news = false;
        var taken = target.Taken;
        for (var i = 0; i < taken.Length; i++)
        {
            if (taken[i] != 0)
            {
                var size = (byte)(1 << BitOperations.Log2(taken[i]));
                news |= (_met[i] & size) == 0;
                _met[i] |= size;
            }
        }

        return news;
    }

    private byte[] Bent(List<byte> body)
    {
        for (var times = 1 << dice.Next(5); times > 0 && body.Count > 0; times--)
        {
            var at = dice.Next(body.Count);
            switch (dice.Next(9))
            {
                case 0:
                    Over(body, at, Tokens[dice.Next(Tokens.Length)]);
                    break;
                case 1 or 2:
                    var other = _kept[dice.Next(_kept.Count)];
                    var from = dice.Next(other.Length);
                    Over(body, at, other.AsSpan(from, Math.Min(dice.Next(1, 200), other.Length - from)));
                    break;
                default:
                    ByteBender.Bend(body, at, dice, Tokens);
                    break;
            }
        }

        return [.. body];
    }

    private static void Over(List<byte> body, int at, ReadOnlySpan<byte> part)
    {
        body.RemoveRange(at, Math.Min(part.Length, body.Count - at));
        body.InsertRange(at, part.ToArray());
    }
}
