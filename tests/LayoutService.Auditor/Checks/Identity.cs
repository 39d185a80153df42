using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>Ids are unique in what they name, and every id that is pointed at exists in the answer or the request.</summary>
internal static class Identity
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        var json = plan.Json;
        var named = new (string Kind, IEnumerable<string> Ids)[]
        {
            ("row", plan.Rows.Select(r => r.Id)), ("piece", plan.Pieces.Select(p => p.Id)),
            ("nailer", plan.Nailers.Select(n => n.Id)), ("board", plan.Boards.Select(b => b.Id)),
            ("wall", Ids(json.Member("walls"))), ("joist", Ids(json.Member("joists").Member("members"))),
            ("bay", Ids(json.Member("joists").Member("bays"))), ("stick", plan.Sticks.Select(s => s.Id)),
            ("sheet", plan.CutSheets.Select(s => s.Id)), ("step", Ids(json.Member("steps"))),
        };
        var seen = new HashSet<string>();
        foreach (var (kind, ids) in named)
        {
            foreach (var id in ids.Where(id => !seen.Add(id)))
            {
                report.Fault("ids.unique", id, $"this id of a {kind} is used twice");
            }
        }

        var known = new HashSet<string>(plan.Room.Strapping.Stock.Concat(plan.Room.Sheets.Stock).Select(s => s.Id));
        Harvest(json, known);
        foreach (var (where, id) in Pointers(plan).Where(p => !known.Contains(p.Id)))
        {
            report.Fault("ids.known", where, $"points at {id}, which is nowhere");
        }
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
                if (member.NameEquals("id") && member.Value.ValueKind == JsonValueKind.String)
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

    private static IEnumerable<(string Where, string Id)> Pointers(GivenPlan plan)
    {
        var asked = plan.Room.Strapping.Stock.Count > 0;
        var sheets = plan.Room.Sheets.Stock.Count > 0;
        return plan.Sticks.SelectMany(s => s.Cuts.Select(c => (s.Id, c.PieceId)))
            .Concat(plan.CutSheets.SelectMany(s => s.Cuts.Select(c => (s.Id, c.PieceId))))
            .Concat(plan.Boards.SelectMany(b => b.Ends.SelectMany(e => e.Backing.Select(id => (b.Id, id)))))
            .Concat(plan.Pieces.Where(p => asked && p.StockId is not null).Select(p => (p.Id, p.StockId!)))
            .Concat(plan.Boards.Where(b => sheets && b.StockId is not null).Select(b => (b.Id, b.StockId!)))
            .Concat(plan.Json.Member("steps").Items().SelectMany(s => s.Member("touches").Items()
                .Select(t => (s.Member("id").Text() ?? "step", t.Member("id").Text() ?? ""))));
    }
}
