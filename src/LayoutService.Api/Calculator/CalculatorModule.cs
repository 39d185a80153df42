using System.IO.Compression;
using System.Security.Cryptography;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Calculator;

/// <summary>
/// The embeddable calculator: one ES module, built into the service. Its address holds a part of its own hash, so what an address
/// gives never changes, and a page may keep it for ever and pin it by subresource integrity.
/// </summary>
internal sealed class CalculatorModule
{
    public const string FileName = "ceiling-calculator.js";

    private const int VersionLength = 12;

    public CalculatorModule()
    {
        Bytes = Resource.Bytes(FileName);
        Gzipped = Packing.Pack(Packing.Gzip, Bytes, CompressionLevel.Optimal);
        Version = Convert.ToHexStringLower(SHA256.HashData(Bytes))[..VersionLength];
        Integrity = "sha384-" + Convert.ToBase64String(SHA384.HashData(Bytes));
    }

    public byte[] Bytes { get; }

    public byte[] Gzipped { get; }

    /// <summary>First digits of its SHA-256.</summary>
    public string Version { get; }

    /// <summary>For the attribute <c>integrity</c> of a page that loads it.</summary>
    public string Integrity { get; }

    /// <summary>Where it is served, from the root of the service.</summary>
    public string Address => $"/calculator/{Version}/{FileName}";
}
