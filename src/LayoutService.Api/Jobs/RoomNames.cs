using System.Globalization;
using System.Text.RegularExpressions;
using LayoutService.Api.Plans.Validation;

namespace LayoutService.Api.Jobs;

/// <summary>The names that rooms bear in an order: their references where all can be ids and differ, else numbers from 1.</summary>
internal static class RoomNames
{
    public static IReadOnlyList<string> Of(IReadOnlyList<string?> references) =>
        references.All(r => r is not null && r.Length <= Hosting.ServiceLimits.MaxIdLength && Regex.IsMatch(r, WireRules.IdPattern, RegexOptions.NonBacktracking))
        && references.Distinct(StringComparer.Ordinal).Count() == references.Count
            ? [.. references.Select(r => r!)]
            : [.. references.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"room-{i + 1}"))];
}
