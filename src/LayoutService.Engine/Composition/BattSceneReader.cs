using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Gathers what the batts need to know: bays, what is in them, and the figures they are laid by.</summary>
internal static class BattSceneReader
{
    // 2x4: what ledgers and blocks are cut from
    private const long BlockThickness = 38 * Length.PerMillimetre;
    private const long BlockDepth = 89 * Length.PerMillimetre;

    public static BattScene Of(FramedRoom room, InsulationWish wish, JoistPlan joists, RuleBook book, IReadOnlyList<NailerLine> nailers, IReadOnlyList<string> nailerIds,
        IReadOnlyList<PlacedFixture> placed)
    {
        var depths = DepthsOf(room, wish, book);

        // the bays run on above a bulkhead
        var floor = room.Solids.Count == 0 ? room.Board : Region.Of(room.Outline, [.. room.OpeningRings.Select(r => (r, 0L))]);
        return new BattScene
        {
            Region = wish.Region is { } ring ? floor.Meet([.. ring.Select(room.Frame.In)]) : floor,
            Bays = [.. joists.Bays.Select(b => Bay(room, b, depths)).OrderBy(b => b.Across.Lo).ThenBy(b => b.Along?.Lo ?? 0)],
            Obstacles = [.. Services(room), .. BattFixtures.Of(room, placed, book), .. Blocking(nailers, nailerIds)],
            Batts = wish.Batts,
            Rules = RulesOf(book, room.Survey.Units == UnitSystem.Imperial),
        };
    }

    // what batts may fill of each field's joists; of an I-joist, the space between its flanges
    private static long[] DepthsOf(FramedRoom room, InsulationWish wish, RuleBook book)
    {
        var flanges = 2 * book.Limit("i-joist-flange", room.Survey.Units == UnitSystem.Imperial).Value.Length.Units;
        return [.. wish.JoistDepths.Select((depth, field) =>
            room.Survey.JoistFields[field].Kind == JoistKind.IJoist ? Math.Max(0, depth.Units - flanges) : depth.Units)];
    }

    private static BattBay Bay(FramedRoom room, JoistBay bay, long[] depths)
    {
        var depth = bay.Fields.Count == 0 ? depths.Min() : bay.Fields.Min(f => depths[f]);
        var (a, b) = (room.Frame.AcrossIn(bay.From.Units), room.Frame.AcrossIn(bay.To.Units));
        var across = new Span(Math.Min(a, b), Math.Max(a, b));
        if (bay.Along is not { } along)
        {
            return new BattBay(bay.Id, across, depth);
        }

        var (c, d) = (room.Frame.AlongIn(along.From.Units), room.Frame.AlongIn(along.To.Units));
        return new BattBay(bay.Id, across, depth, new Span(Math.Min(c, d), Math.Max(c, d)));
    }

    private static IEnumerable<BattObstacle> Services(FramedRoom room)
    {
        foreach (var service in room.Survey.Services ?? [])
        {
            var clear = service.Clearance.Units;
            var kind = service.Kind == ServiceKind.PannedReturn ? ObstacleKind.PannedReturn
                : service.NeedsReach ? ObstacleKind.Reach
                : service.Hot ? ObstacleKind.Hot
                : ObstacleKind.Service;
            var (top, bottom) = kind == ObstacleKind.Reach ? (long.MinValue / 4, long.MaxValue / 4) : (service.Top.Units - clear, service.Bottom.Units + clear);
            foreach (var ring in service.Rings())
            {
                yield return new BattObstacle(service.Id, kind, [.. ring.Select(room.Frame.In)], clear, top, bottom);
            }
        }
    }

    private static IEnumerable<BattObstacle> Blocking(IReadOnlyList<NailerLine> nailers, IReadOnlyList<string> ids)
    {
        for (var i = 0; i < nailers.Count; i++)
        {
            if (nailers[i].Role != NailerRole.WallNailer)
            {
                // a ledger stands against its wall; a block has its line in its middle
                var half = nailers[i].Role == NailerRole.Ledger ? BlockThickness : BlockThickness / 2;
                yield return new BattObstacle(ids[i], ObstacleKind.Blocking, Band(nailers[i].From, nailers[i].To, half), 0, -BlockDepth, 0);
            }
        }
    }

    // ledgers run along the joists and blocks across them
    private static Uv[] Band(Uv a, Uv b, long half)
    {
        var (u, v) = a.U == b.U ? (half, 0L) : (0L, half);
        return [new(a.U - u, a.V - v), new(b.U - u, b.V - v), new(b.U + u, b.V + v), new(a.U + u, a.V + v)];
    }

    private static BattRules RulesOf(RuleBook book, bool imperial)
    {
        Figure Read(string rule) => book.Limit(rule, imperial).Value;
        return new BattRules
        {
            SqueezeMost = Share("batt-squeeze-most"),
            Friction = Read("batt-friction").Length.Units,
            LeastStrip = Read("batt-strip-least").Length.Units,
            Tolerance = Read("survey-tolerance").Length.Units,
            FoldDepth = Share("batt-fold-depth"),
            PassGap = Share("batt-pass-gap"),
            WoodRsiPerMetre = Read("softwood-resistance").In("RSI") * 10,
            AirRsi = Math.Max(0.000001m, Read("bay-air-resistance").In("RSI")),
            KilogramsPerCubicMetre = KilogramsPerCubicMetre(book),
            Squeezed = [.. book.Tables.CompressedBatts.Rows.Select(r =>
                new SqueezedBatt(r.Nominal.In("RSI"), r.Thickness.Length.Units, r.Depth.Length.Units, r.Resistance.In("RSI")))],
        };

        decimal Share(string rule)
        {
            var figure = Read(rule);
            return figure.Value * figure.Unit.Factor;
        }
    }

    // N/m² for each mm is kN/m³; over standard gravity, 9.80665 m/s²
    private static decimal KilogramsPerCubicMetre(RuleBook book) =>
        book.Tables.InsulationWeights.Rows.First(r => r.Part == "glass or mineral batt").Load.In("N/m2/mm") * 1000m / 9.80665m;
}
