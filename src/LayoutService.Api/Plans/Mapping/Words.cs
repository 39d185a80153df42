using System.Collections.Concurrent;
using System.Text.Json;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>The word that the contract has for a value of an enumeration.</summary>
internal static class Words
{
    private static readonly ConcurrentDictionary<Enum, string> Known = new();

    public static string Text(Enum value) =>
        Known.GetOrAdd(value, static v => JsonSerializer.SerializeToElement(v, v.GetType(), WireJson.Options).GetString()!);
}
