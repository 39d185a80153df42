using System.Security.Cryptography;
using System.Text.Json;
using LayoutService.Engine;

namespace LayoutService.Benchmarks;

/// <summary>
/// One SHA-256 over the whole plans of many seeded rooms: the same before and after a change that is meant to alter
/// nothing but the time taken.
/// </summary>
public static class PlanDigest
{
    public static string Of(int rooms, Action<int, string>? each = null)
    {
        using var all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        for (var seed = 1; seed <= rooms; seed++)
        {
            var bytes = JsonSerializer.SerializeToUtf8Bytes<object>(LayoutEngine.Plan(Scenes.Seeded(seed)) switch
            {
                PlanOutcome.Made made => made.Plan,
                PlanOutcome.NotPossible none => none.Findings,
                _ => "no outcome",
            });
            all.AppendData(bytes);
            each?.Invoke(seed, Convert.ToHexString(SHA256.HashData(bytes))[..12] + $" {bytes.Length}");
        }

        return Convert.ToHexString(all.GetHashAndReset());
    }
}
