using System.Security.Cryptography;
using System.Text;

namespace LayoutService.Api.Hosting;

/// <summary>A caller that the operator knows, as a setting.</summary>
public sealed class CallerKey
{
    /// <summary>Name in metrics; never the key.</summary>
    public string Name { get; init; } = "";

    /// <summary>SHA-256 of the key's UTF-8 bytes, in hexadecimal: the key itself is nowhere in the settings.</summary>
    public string Sha256 { get; init; } = "";

    /// <summary>Calls a minute; 0 stands for the general limit.</summary>
    public int RequestsPerMinute { get; init; }
}

/// <summary>
/// The keys that are taken; none means that everybody may call. A key is looked for among all, by hashes that are compared in
/// a time that does not depend on them.
/// </summary>
internal sealed class CallerKeys
{
    public const string Header = "X-Api-Key";

    private readonly (byte[] Hash, CallerKey Key)[] keys;

    public CallerKeys(IEnumerable<CallerKey> keys)
    {
        this.keys = [.. keys.Select(key => (Convert.FromHexString(key.Sha256), key))];
        if (Array.Exists(this.keys, key => key.Hash.Length != SHA256.HashSizeInBytes || key.Key.Name.Length == 0))
        {
            throw new InvalidOperationException("Each of Service:Keys needs a Name, and as Sha256 the 64 hexadecimal digits of its key's SHA-256.");
        }
    }

    public bool Wanted => keys.Length > 0;

    public CallerKey? Find(string? presented)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Encoding.UTF8.GetBytes(presented ?? ""), hash);
        CallerKey? found = null;
        foreach (var (known, key) in keys)
        {
            found = CryptographicOperations.FixedTimeEquals(known, hash) ? key : found;
        }

        return found;
    }
}
