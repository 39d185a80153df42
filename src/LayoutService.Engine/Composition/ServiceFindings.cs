using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>What of the services shows below the straps, and what hangs below the ceiling.</summary>
public static class ServiceFindings
{
    /// <summary>Bulkheads, and beams and other services that come below the ceiling outside of them.</summary>
    public static IReadOnlyList<Obstruction> Obstructions(FramedRoom room, BulkheadPlan boxes, IReadOnlyList<ServiceCover> covers, Length? finished)
    {
        var gap = BulkheadSolids.Gap(room.Survey);
        var bare = covers.Where(c => c.SticksOut > Length.Zero).Select(c => c.ServiceId).ToHashSet();
        return
        [
            .. boxes.Bulkheads.Select(b => new Obstruction(b.Id, b.UndersideAboveFloor)),
            .. (room.Survey.Services ?? []).Where(s => s.Bottom.Units > gap && bare.Contains(s.Id)).Select(s => new Obstruction(
                s.Id, finished is { } height ? height + new Length(gap) - s.Bottom : null)),
        ];
    }

    /// <summary>
    /// Services that reach below the straps' upper side further than the straps are thick, and how far they stick out of the
    /// ceiling or of the bulkhead that is over them.
    /// </summary>
    public static IReadOnlyList<ServiceCover> Covers(FramedRoom room) =>
        [.. (room.Survey.Services ?? [])
            .Where(s => s.Bottom > room.Survey.JoistToBoard)
            .Select(s => Cover(room, s))];

    private static ServiceCover Cover(FramedRoom room, Service service)
    {
        // what of it is in a post or a chimney is nobody's to cover
        var shape = service.In(room.Frame).Meet(Footprint.Of([[.. room.Outline]])).Minus(Footprint.Of(room.OpeningRings));
        var over = room.Solids.Where(s => !s.Wish.BoardedAbove && !s.Footprint.Meet(shape).Empty).ToList();
        var left = over.Aggregate(shape, (rest, s) => rest.Minus(s.Footprint));
        var bare = left.Area > 1e-4 * Math.Max(1, shape.Area);
        var out1 = bare ? service.Bottom - room.Survey.JoistToBoard : Length.Zero;
        var out2 = over.Select(s => service.Bottom - new Length(s.ClearTo)).Append(Length.Zero).MaxBy(l => l.Units);
        return new ServiceCover(service.Id, Length.Max(out1, out2), [.. over.Select(s => s.Id)], bare);
    }
}
