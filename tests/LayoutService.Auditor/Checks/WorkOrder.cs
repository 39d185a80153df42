using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The order of work against the pieces: everything of the plan goes up once, nothing before what carries it, nothing after
/// the ceiling is closed over it, and no step touches what is not there.
/// </summary>
internal static class WorkOrder
{
    private static readonly string[] NailerSteps = ["fasten-ledgers", "fasten-wall-nailers", "fasten-blocks", "fasten-headers"];
    private static readonly string[] BoardSteps = ["hang-course", "measure-and-hang", "board-bulkhead"];

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Json.Member("steps") is null || plan.Json.Member("strapping") is null || plan.Json.Member("sheets") is null)
        {
            return;
        }

        var steps = plan.Json.Member("steps").Items().ToList();
        Dictionary<(string Kind, string Id), List<(int At, string Code)>> touched = [];
        for (var i = 0; i < steps.Count; i++)
        {
            foreach (var touch in steps[i].Member("touches").Items())
            {
                var key = (touch.Member("kind").Text()!, touch.Member("id").Text()!);
                (touched.TryGetValue(key, out var list) ? list : touched[key] = []).Add((i, steps[i].Member("code").Text()!));
            }
        }

        // the place of the one step that puts a thing up
        int Up(string kind, string id, params string[] codes)
        {
            var at = touched.GetValueOrDefault((kind, id))?.Where(t => codes.Contains(t.Code)).Select(t => t.At).Distinct().ToList() ?? [];
            if (at.Count == 1)
            {
                return at[0];
            }

            report.Fault("steps.once", id, $"{kind} goes up in {at.Count} steps");
            return -1;
        }

        var cut = steps.FindIndex(s => s.Member("code").Text() == "cut-lumber");
        var closing = steps.FindIndex(s => s.Member("code").Text() == "inspect-before-closing");
        var finish = steps.FindIndex(s => s.Member("code").Text() == "tape-and-finish");
        void Before(int first, int then, string id, string what)
        {
            if (first >= then)
            {
                report.Fault("steps.order", id, $"step {then} comes before {what}, step {first}");
            }
        }

        var strapping = plan.Json.Member("strapping");
        Dictionary<string, int> rows = [];
        foreach (var row in strapping.Member("rows").Items())
        {
            var id = row.Member("id").Text()!;
            var up = rows[id] = Up("row", id, "fasten-row");
            Before(Up("row", id, "mark-row"), up, id, "its mark");
            Before(cut, up, id, "the cutting of lumber");
            Before(up, closing, "closing", $"row {id}");
            foreach (var piece in row.Member("pieces").Items().Select(p => p.Member("id").Text()!).Where(p => Up("piece", p, "fasten-row") != up))
            {
                report.Fault("steps.order", piece, $"does not go up with its row {id}");
            }
        }

        foreach (var nailer in strapping.Member("nailers").Items())
        {
            var (id, header) = (nailer.Member("id").Text()!, nailer.Member("role").Text() == "header");
            var up = Up("nailer", id, NailerSteps);
            Before(cut, up, id, "the cutting of lumber");
            foreach (var row in rows.Where(_ => !header))
            {
                Before(up, row.Value, row.Key, $"its support {id}");
            }

            Before(up, closing, "closing", $"nailer {id}");
        }

        foreach (var scab in strapping.Member("scabs").Items())
        {
            var (id, row) = (scab.Member("id").Text()!, scab.Member("row").Text() ?? scab.Member("rowId").Text());
            var up = Up("scab", id, "fasten-scabs");
            Before(row is null ? cut : rows.GetValueOrDefault(row, cut), up, id, "the joint that it holds");
            Before(up, closing, "closing", $"scab {id}");
        }

        foreach (var board in plan.Json.Member("sheets").Member("pieces").Items().Select(p => p.Member("id").Text()!))
        {
            var up = Up("board-piece", board, BoardSteps);
            Before(closing, up, board, "the look before closing");
            foreach (var row in rows)
            {
                Before(row.Value, up, board, $"row {row.Key} behind it");
            }

            Before(up, finish, "tape-and-finish", $"piece {board}");
        }

        foreach (var box in plan.Json.Member("bulkheads").Items())
        {
            var (id, above) = (box.Member("id").Text()!, box.Member("boardedAbove") is { ValueKind: JsonValueKind.True });
            var framed = Up("bulkhead", id, "frame-bulkhead");
            foreach (var member in box.Member("members").Items().Select(m => m.Member("id").Text()!).Where(m => Up("member", m, "frame-bulkhead") != framed))
            {
                report.Fault("steps.order", member, $"is not framed with its bulkhead {id}");
            }

            Before(cut, framed, id, "the cutting of lumber");
            if (!above)
            {
                Before(framed, closing, "closing", $"the frame of {id}");
            }

            foreach (var board in box.Member("boards").Items().Select(b => b.Member("id").Text()!))
            {
                var up = Up("board-piece", board, BoardSteps);
                Before(framed, up, board, $"the frame of {id}");
                Before(up, finish, "tape-and-finish", $"piece {board}");
            }
        }

        Known(plan, touched.Keys, report);
    }

    // every id that a step touches is somewhere in the answer outside of the steps
    private static void Known(GivenPlan plan, IEnumerable<(string Kind, string Id)> touched, AuditReport report)
    {
        HashSet<string> known = [];
        foreach (var member in plan.Json.EnumerateObject().Where(m => m.Name is not ("steps" or "drawing")))
        {
            Gather(member.Value, known);
        }

        foreach (var (kind, id) in touched.Where(t => !known.Contains(t.Id)))
        {
            report.Fault("steps.stray", id, $"a step touches {kind} {id}, which the plan does not have");
        }
    }

    private static void Gather(JsonElement json, HashSet<string> known)
    {
        if (json.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in json.EnumerateArray())
            {
                Gather(item, known);
            }
        }
        else if (json.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in json.EnumerateObject())
            {
                if (member.Name == "id" && member.Value.ValueKind == JsonValueKind.String)
                {
                    known.Add(member.Value.GetString()!);
                }

                Gather(member.Value, known);
            }
        }
    }
}
