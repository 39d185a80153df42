using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Checks;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor;

/// <summary>
/// Recomputes what an order of many rooms promises, from the request and the answer with each room's own plan in it
/// (<c>include=all</c>): each room's plan is sound by itself; whatever a room's own plan cuts is cut once for it in the pooled
/// plan, as large; the pooled plan can be sawn and cut with a knife; packs and money are exact; the rooms' parts add up; and
/// the order costs no more than the rooms would.
/// </summary>
public static class JobAuditor
{
    private const double Exact = 0.05;

    /// <summary>Every broken rule; empty for a sound order. The rooms of the request must be whole, with nothing in common.</summary>
    public static IReadOnlyList<Fault> Audit(JsonElement request, JsonElement answer)
    {
        var report = new AuditReport([]);
        var asked = request.Member("rooms").Items().ToList();
        var rooms = answer.Member("rooms").Items().ToList();
        if (asked.Count != rooms.Count)
        {
            report.Fault("job.rooms", "rooms", $"{asked.Count} asked, {rooms.Count} answered");
            return report.Faults;
        }

        var saw = Saw(asked);
        var found = asked.Zip(rooms).SelectMany(pair => OfRoom(With(pair.First, saw), pair.Second)).ToList();
        OneSaw(answer, saw, report);
        Pooled(answer, rooms, report);
        TakeoffMoney.Check(answer, report);
        Shares(answer, rooms, report);
        Saving(answer, asked, rooms, report);
        return [.. report.Faults, .. found];
    }

    private static IEnumerable<Fault> OfRoom(JsonElement asked, JsonElement room) =>
        PlanAuditor.Audit(asked, room.GetProperty("plan")).Select(fault => fault with { Where = $"{room.Member("name").Text()}/{fault.Where}" });

    // one saw cuts for all rooms: the largest kerf and end trim of any of them, mm
    private static (double Kerf, double Trim) Saw(List<JsonElement> asked)
    {
        double Largest(string member) => asked.Max(room =>
            room.Member("strapping").Member(member).Length(Unit(room)) ?? (Unit(room) > 1 ? 3.175 : 3));
        return (Largest("kerf"), Largest("endTrim"));
    }

    private static JsonElement With(JsonElement room, (double Kerf, double Trim) saw)
    {
        var node = JsonNode.Parse(room.GetRawText())!.AsObject();
        var strapping = node["strapping"] as JsonObject;
        if (strapping is null)
        {
            node["strapping"] = strapping = [];
        }

        strapping["kerf"] = $"{(decimal)saw.Kerf} mm";
        strapping["endTrim"] = $"{(decimal)saw.Trim} mm";
        return JsonDocument.Parse(node.ToJsonString()).RootElement;
    }

    private static void OneSaw(JsonElement answer, (double Kerf, double Trim) saw, AuditReport report)
    {
        foreach (var (member, due) in new[] { ("kerf", saw.Kerf), ("endTrim", saw.Trim) })
        {
            if (Math.Abs((answer.Member("cutPlan").Member(member).Length(Unit(answer)) ?? -1) - due) > Exact)
            {
                report.Fault("job.saw", member, $"{answer.Member("cutPlan").Member(member).Text()} stated, {due:F3} mm due");
            }
        }
    }

    private static double Unit(JsonElement of) => of.Member("units").Text() == "imperial" ? 25.4 : 1;

    private static void Pooled(JsonElement answer, List<JsonElement> rooms, AuditReport report)
    {
        var (plan, unit) = (answer.Member("cutPlan"), Unit(answer));
        var sticks = plan.Member("stock").Items().Select(s => new GivenStick(s, unit)).ToList();
        var sheets = plan.Member("sheetStock").Items().Select(s => new GivenCutSheet(s, unit)).ToList();
        var (kerf, trim) = (plan.Member("kerf").Length(unit) ?? 0, plan.Member("endTrim").Length(unit) ?? 0);
        foreach (var stick in sticks.Where(s => !LumberCuts.Balances(s, trim, kerf)))
        {
            report.Fault("job.balance", stick.Id, $"cuts and offcut do not make {stick.Length:F2} mm");
        }

        foreach (var fault in sheets.SelectMany(SheetCuts.Faults))
        {
            report.Fault($"job.{fault.Rule}", fault.Where, $"{fault.Text}");
        }

        var own = rooms.Select(room => (Name: room.Member("name").Text(), Cuts: room.GetProperty("plan").Member("cutPlan"), Unit: Unit(room))).ToList();
        Same("job.lumber", sticks.SelectMany(s => s.Cuts), own.SelectMany(room => room.Cuts.Member("stock").Items()
            .SelectMany(s => new GivenStick(s, room.Unit).Cuts).Select(c => ($"{room.Name}/{c.PieceId}", c.Length))), report);
        Same("job.board", sheets.SelectMany(s => s.Cuts).Select(Area), own.SelectMany(room => room.Cuts.Member("sheetStock").Items()
            .SelectMany(s => new GivenCutSheet(s, room.Unit).Cuts).Select(c => Area(c with { PieceId = $"{room.Name}/{c.PieceId}" }))), report);

        // each stick is bought once, whatever it is for
        foreach (var stock in sticks.GroupBy(s => s.StockId))
        {
            var bought = answer.Member("takeoff").Member("lines").Items()
                .Where(l => l.Member("id").Text() == stock.Key && l.Member("code").Text() is "strap" or "nailer" or "bulkhead-frame").Sum(l => l.Member("counted").Decimal() ?? 0);
            if (bought != stock.Count())
            {
                report.Fault("job.sticks", stock.Key ?? "stock", $"{bought} in the order, {stock.Count()} in the cut plan");
            }
        }

        static (string, double) Area(GivenCut cut) => (cut.PieceId, Math.Sqrt(cut.Length * cut.Width));
    }

    // by name: how often it is cut and how much of it
    private static void Same(string rule, IEnumerable<(string Id, double Size)> cut, IEnumerable<(string Id, double Size)> due, AuditReport report)
    {
        static Dictionary<string, (int Times, double Size)> Count(IEnumerable<(string Id, double Size)> cuts) =>
            cuts.GroupBy(c => c.Id).ToDictionary(g => g.Key, g => (g.Count(), g.Sum(c => c.Size)));
        var (found, wanted) = (Count(cut), Count(due));
        foreach (var id in found.Keys.Union(wanted.Keys))
        {
            var (a, b) = (found.GetValueOrDefault(id), wanted.GetValueOrDefault(id));
            if (a.Times != b.Times || Math.Abs(a.Size - b.Size) > Exact)
            {
                report.Fault(rule, id, $"cut {a.Times} times, {a.Size:F2} mm, the room's own plan has {b.Times}, {b.Size:F2} mm");
            }
        }
    }

    private static void Shares(JsonElement answer, List<JsonElement> rooms, AuditReport report)
    {
        var totals = answer.Member("takeoff").Member("totals");
        foreach (var member in new[] { "amount", "withTax" })
        {
            var parts = rooms.Sum(room => room.Member("share").Member(member).Decimal() ?? 0);
            if (totals.Member(member).Decimal() is { } total && parts != total)
            {
                report.Fault("job.shares", member, $"the rooms' parts come to {parts}, the total is {total}");
            }
        }
    }

    private static void Saving(JsonElement answer, List<JsonElement> asked, List<JsonElement> rooms, AuditReport report)
    {
        var saving = answer.Member("saving");
        decimal Sum(Func<JsonElement, decimal?> of) => rooms.Sum(room => of(room) ?? 0);
        Due("amountApart", Sum(room => room.GetProperty("plan").Member("takeoff").Member("totals").Member("amount").Decimal()));
        Due("amountTogether", answer.Member("takeoff").Member("totals").Member("amount").Decimal());
        Due("lengthsApart", Sum(room => room.Member("summary").Member("lengthsToBuy").Decimal()));
        Due("sheetsApart", Sum(room => room.Member("summary").Member("sheetsToBuy").Decimal()));
        Due("sheetsTogether", answer.Member("cutPlan").Member("sheetStock").Items().Count());
        // where the yard has too few for the rooms' own cuts together, only the pooled cut can be bought
        if (saving.Member("amount").Decimal() < 0 && !OutOfStock(asked, rooms))
        {
            report.Fault("job.saving", "amount", $"the order costs {saving.Member("amount").Decimal()} less than its rooms");
        }

        void Due(string member, decimal? due)
        {
            if (saving.Member(member).Decimal() is { } said && due is { } found && said != found)
            {
                report.Fault("job.saving", member, $"{said} stated, {found} found");
            }
        }
    }

    private static bool OutOfStock(List<JsonElement> asked, List<JsonElement> rooms)
    {
        var used = rooms.SelectMany(room => room.GetProperty("plan").Member("cutPlan").Member("stock").Items()).CountBy(s => s.Member("stockId").Text() ?? "").ToDictionary();
        return asked.SelectMany(room => room.Member("strapping").Member("stock").Items())
            .Any(s => s.Member("quantity").Decimal() is { } quantity && used.GetValueOrDefault(s.Member("id").Text() ?? "") > quantity);
    }
}
