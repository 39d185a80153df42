using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Joins the batts to the straps: lays them, and marks the crossings that wait for them.</summary>
internal static class InsulationJoin
{
    public static (InsulationPlan? Insulation, StrappingPlan Strapping) Of(
        FramedRoom room, ChosenCeiling chosen, CutLumber lumber, StrappingWriter straps, StrappingPlan strapping, JoistPlan joists,
        IReadOnlyList<PlacedFixture> placed)
    {
        if (room.Survey.Insulation is not { } wish)
        {
            return (null, strapping);
        }

        var book = new RuleBook(PublishedTables.Current, room.Survey.Ruleset, room.Survey.RuleOverrides);
        var scene = BattSceneReader.Of(room, wish, joists, book, lumber.Nailers, straps.NailerIds, placed);
        var layout = BattPlanner.Plan(scene);
        var writer = new InsulationWriter(room, scene, layout);
        var rows = chosen.Lines.Select(l => l.Bearing).ToList();
        var after = new BattsOverStraps(rows, chosen.Rules.Face, scene.Rules).Of(layout.Laid);
        var names = JoistWriter.Names(room);
        var waiting = Waiting(room, names, rows, layout, after, writer.FillIds, straps.RowIds, strapping);
        var slid = after
            .Where(a => waiting.ContainsKey((straps.RowIds[a.Row], Support(room, names, layout.Laid[a.Batt], rows[a.Row].At, false)))
                || waiting.ContainsKey((straps.RowIds[a.Row], Support(room, names, layout.Laid[a.Batt], rows[a.Row].At, true))))
            .ToLookup(a => a.Batt, a => straps.RowIds[a.Row]);
        var plan = writer.Write(wish.Purpose, slid) with { Barriers = Checks.WarmSide.Of(room.Survey.Room) };
        return (plan, waiting.Count == 0 ? strapping : strapping with { Rows = [.. strapping.Rows.Select(r => With(room, r, waiting))] });
    }

    // by row and support: the batts that the crossing waits for, and why
    private static Dictionary<(string Row, string Support), Waited> Waiting(
        FramedRoom room, string[] names, List<BearingLine> rows, BattLayout layout, IReadOnlyList<StrapAfter> after, string[] fillIds, string[] rowIds, StrappingPlan strapping)
    {
        var waiting = new Dictionary<(string, string), Waited>();
        if (after.Count == 0)
        {
            return waiting;
        }

        var places = strapping.Crossings.ToLookup(c => (c.RowId, c.SupportId), c => room.Frame.In(c.At).V);
        foreach (var one in after)
        {
            foreach (var high in new[] { false, true })
            {
                var key = (rowIds[one.Row], Support(room, names, layout.Laid[one.Batt], rows[one.Row].At, high));
                if (!waiting.TryGetValue(key, out var waited))
                {
                    if (!places[key].Any())
                    {
                        continue;
                    }

                    waiting[key] = waited = new Waited([.. places[key]], [], one.Reason);
                }

                if (!waited.Fills.Contains(fillIds[one.Batt]))
                {
                    waited.Fills.Add(fillIds[one.Batt]);
                }
            }
        }

        return waiting;
    }

    // the joist at one side of the batt's bay, where the row crosses it; none at a wall
    private static string Support(FramedRoom room, string[] names, LaidBatt batt, long row, bool high)
    {
        Support? found = null;
        foreach (var support in room.Joists.At(row))
        {
            if (high ? found is null && support.Lo >= batt.Across.Hi - 1 : support.Hi <= batt.Across.Lo + 1)
            {
                found = support;
            }
        }

        return found is { } met ? names[met.FirstMember] : string.Empty;
    }

    private static StrapRow With(FramedRoom room, StrapRow row, Dictionary<(string Row, string Support), Waited> waiting)
    {
        var own = waiting.Where(w => w.Key.Row == row.Id).ToList();
        return own.Count == 0 ? row : row with { Pieces = [.. row.Pieces.Select(p => p with { FastenAfter = Of(room, p, own) })] };
    }

    private static List<FastenAfter> Of(FramedRoom room, RowPiece piece, List<KeyValuePair<(string Row, string Support), Waited>> own)
    {
        var (a, b) = (room.Frame.In(piece.From).V, room.Frame.In(piece.To).V);
        var span = new Span(Math.Min(a, b) - 2, Math.Max(a, b) + 2);
        return [.. own
            .Where(w => w.Value.Places.Exists(span.Holds))
            .OrderBy(w => room.Frame.AcrossIn(w.Value.Places[0]))
            .Select(w => new FastenAfter(w.Key.Support, w.Value.Fills, Why(w.Value.Reason)))];
    }

    private static Sentence Why(SlideReason reason) => reason == SlideReason.Depth
        ? Sentence.Of("batt_slides_over_depth", "What is in the bay leaves too little depth to push the batt up between the straps: it slides over this one first.")
        : Sentence.Of("batt_slides_over_width", "The gaps between the straps are too narrow for the batt: it slides over this one first.");

    private sealed record Waited(List<long> Places, List<string> Fills, SlideReason Reason);
}
