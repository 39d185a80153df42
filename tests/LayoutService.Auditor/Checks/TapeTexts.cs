using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// A text beside a number says the number, within a sixteenth or a millimetre (some round down, some to the nearest),
/// and a length to cut never says more.
/// </summary>
internal static class TapeTexts
{
    public static void Check(GivenPlan plan, AuditReport report) => Walk(plan.Json, "answer", plan.Room, report);

    private static void Walk(JsonElement element, string owner, AskedRoom room, AuditReport report)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray())
            {
                Walk(item, owner, room, report);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            owner = element.Member("id").Text() ?? element.Member("pieceId").Text() ?? owner;
            foreach (var member in element.EnumerateObject())
            {
                if (member.Name.EndsWith("Text", StringComparison.Ordinal) && member.Value.ValueKind == JsonValueKind.String
                    && element.TryGetProperty(member.Name[..^4], out var number) && number.ValueKind == JsonValueKind.Number)
                {
                    One(member.Name, member.Value.GetString()!, number.GetDouble() * room.Unit, owner, room, report);
                }
                else if (member.Value.ValueKind is JsonValueKind.Object or JsonValueKind.Array)
                {
                    Walk(member.Value, owner, room, report);
                }
            }
        }
    }

    private static void One(string name, string text, double number, string owner, AskedRoom room, AuditReport report)
    {
        if (!LengthText.TryReadTape(text, out var read))
        {
            report.Fault("texts", owner, $"{name} is no length: {text}");
        }
        else if (name == "cutLengthText" ? read > number + 0.01 || read < number - room.Step - 0.01
            : Math.Abs(read - number) > room.Step + 0.01)
        {
            report.Fault("texts", owner, $"{name} {text} is {read:F3}, the number {number:F3} mm");
        }
    }
}
