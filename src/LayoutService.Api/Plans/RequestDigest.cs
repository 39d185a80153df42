using System.Security.Cryptography;
using System.Text.Json;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans;

/// <summary>SHA-256 of a body's canonical JSON (RFC 8785) less its <c>reference</c>, in hexadecimal.</summary>
internal static class RequestDigest
{
    public static string Of(JsonElement root) =>
        Convert.ToHexStringLower(SHA256.HashData(CanonicalJson.Of(root, less: "reference")));
}
