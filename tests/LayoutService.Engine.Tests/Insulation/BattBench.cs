using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Insulation;

/// <summary>A plain room in whole millimetres: one bay of 368 mm between two joists, 4 m long, joists 235 mm deep.</summary>
internal static class BattBench
{
    public static readonly Batt Thin = Batt("thin", 75, 381);
    public static readonly Batt Full = Batt("full", 150, 381);

    public static BattRules Rules { get; } = new()
    {
        SqueezeMost = 0.125m,
        Friction = Mm(13),
        LeastStrip = Mm(50),
        Tolerance = Mm(6),
        FoldDepth = 2,
        PassGap = 0.5m,
        WoodRsiPerMetre = 8.5m,
        AirRsi = 0.16m,
        KilogramsPerCubicMetre = 20.4m,
        Squeezed = [],
    };

    public static BattScene Scene(params BattObstacle[] obstacles) => new()
    {
        Region = Region.Of([new(0, 0), new(Mm(4000), 0), new(Mm(4000), Mm(3000)), new(0, Mm(3000))], []),
        Bays = [new BattBay("BAY1", new Span(Mm(1000), Mm(1368)), Mm(235))],
        Obstacles = obstacles,
        Batts = [Thin, Full],
        Rules = Rules,
    };

    /// <summary>A duct square to the joists from one place along them to another.</summary>
    public static BattObstacle Across(long from, long to, long top, long bottom, ObstacleKind kind = ObstacleKind.Service) =>
        Box(new Span(from, to), new Span(0, 3000), top, bottom, kind);

    public static BattObstacle Box(Span along, Span across, long top, long bottom, ObstacleKind kind = ObstacleKind.Service, long clearance = 0) => new(
        "thing", kind,
        [new(Mm(along.Lo), Mm(across.Lo)), new(Mm(along.Hi), Mm(across.Lo)), new(Mm(along.Hi), Mm(across.Hi)), new(Mm(along.Lo), Mm(across.Hi))],
        Mm(clearance), Mm(top - clearance), Mm(bottom + clearance));

    public static Batt Batt(string id, decimal thickness, decimal width, bool splittable = true) => new(
        id, Length.FromMillimetres(thickness), Length.FromMillimetres(width), Length.FromMillimetres(1220), thickness * 0.025m, splittable);

    public static long Mm(long millimetres) => millimetres * Length.PerMillimetre;

    /// <summary>Along, across and thickness of each laid batt, in mm.</summary>
    public static IReadOnlyList<(long From, long To, long Low, long High, long Thick)> Laid(BattScene scene) =>
        [.. BattPlanner.Plan(scene).Laid.Select(l => (
            l.Along.Lo / Length.PerMillimetre, l.Along.Hi / Length.PerMillimetre, l.Across.Lo / Length.PerMillimetre, l.Across.Hi / Length.PerMillimetre,
            l.Verdict.Layer!.Installed / Length.PerMillimetre))];
}
