using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>Numbers in an answer are plain decimals: no exponent, no minus zero, six decimals at most; and no null is written.</summary>
internal static class NumberForm
{
    public static void Check(GivenPlan plan, AuditReport report) => Walk(plan.Json, "#", report);

    private static void Walk(JsonElement element, string where, AuditReport report)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var member in element.EnumerateObject())
                {
                    Walk(member.Value, member.Name, report);
                }

                break;
            case JsonValueKind.Array:
                foreach (var item in element.EnumerateArray())
                {
                    Walk(item, where, report);
                }

                break;
            case JsonValueKind.Number:
                Number(element.GetRawText(), where, report);
                break;
            case JsonValueKind.Null:
                report.Fault("numbers.null", where, $"null is written");
                break;
        }
    }

    private static void Number(string raw, string where, AuditReport report)
    {
        var point = raw.IndexOf('.');
        var decimals = point < 0 ? 0 : raw.Length - point - 1;
        if (raw.AsSpan().ContainsAny('e', 'E') || decimals > 6 || (raw[0] == '-' && raw.AsSpan(1).IndexOfAnyExcept('0', '.') < 0)
            || (decimals > 2 && raw[^1] == '0'))
        {
            report.Fault("numbers.form", where, $"{raw}");
        }
    }
}
