using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>Ids are unique in what they name, and every id that is pointed at exists in the answer or the request.</summary>
internal static class Identity
{
    private static readonly HashSet<string> One = ["pieceId", "rowId", "supportId", "pieceA", "pieceB", "course"];
    private static readonly HashSet<string> Many = ["backing", "of", "between", "startWalls", "widestSpacingRows"];

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var json = plan.Json;
        var named = new (string Kind, IEnumerable<string> Ids)[]
        {
            ("row", plan.Rows.Select(r => r.Id)), ("piece", plan.Pieces.Select(p => p.Id)),
            ("nailer", plan.Nailers.Select(n => n.Id)), ("board", plan.Boards.Select(b => b.Id)),
            ("wall", Ids(json.Member("walls"))), ("joist", Ids(json.Member("joists").Member("members"))),
            ("bay", Ids(json.Member("joists").Member("bays"))), ("stick", plan.Sticks.Select(s => s.Id)),
            ("sheet", plan.CutSheets.Select(s => s.Id)), ("step", Ids(json.Member("steps"))), ("fill", Ids(json.Member("insulation").Member("fills"))),
        };
        var seen = new HashSet<string>();
        foreach (var (kind, ids) in named)
        {
            foreach (var id in ids.Where(id => !seen.Add(id)))
            {
                report.Fault("ids.unique", id, $"this id of a {kind} is used twice");
            }
        }

        var known = new HashSet<string>();
        Harvest(json, known);
        Harvest(plan.Room.Json, known);
        Pointers(json, "answer", known, report);
    }

    private static IEnumerable<string> Ids(JsonElement? list) => list.Items().Select(i => i.Member("id").Text()).OfType<string>();

    private static void Harvest(JsonElement element, HashSet<string> known)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray())
            {
                Harvest(item, known);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in element.EnumerateObject())
            {
                if ((member.NameEquals("id") || member.NameEquals("support")) && member.Value.ValueKind == JsonValueKind.String)
                {
                    known.Add(member.Value.GetString()!);
                }
                else
                {
                    Harvest(member.Value, known);
                }
            }
        }
    }

    /// <summary>Every member that names another thing, alone or in a list.</summary>
    private static void Pointers(JsonElement element, string owner, HashSet<string> known, AuditReport report)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray())
            {
                Pointers(item, owner, known, report);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            owner = element.Member("id").Text() ?? owner;
            foreach (var member in element.EnumerateObject())
            {
                var names = One.Contains(member.Name) ? [member.Value]
                    : Many.Contains(member.Name) && member.Value.ValueKind == JsonValueKind.Array ? member.Value.EnumerateArray() : default(IEnumerable<JsonElement>?);
                foreach (var name in (names ?? []).Where(n => n.ValueKind == JsonValueKind.String && !known.Contains(n.GetString()!)))
                {
                    report.Fault("ids.known", owner, $"{member.Name} points at {name.GetString()}, which is nowhere");
                }

                if (names is null)
                {
                    Pointers(member.Value, owner, known, report);
                }
            }
        }
    }
}
