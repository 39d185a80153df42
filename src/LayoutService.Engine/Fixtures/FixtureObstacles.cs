using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Fixtures;

/// <summary>
/// What the centre of a fixture keeps off. A body deeper than the gap below the joists keeps off them; a slim one may lie
/// under a joist while its driver box still passes beside it. Straps and seams are kept off by the hole's edge clearance
/// or the clips' reach, whichever is more.
/// </summary>
internal sealed class FixtureObstacles(FramedRoom room, FixtureRules rules)
{
    private readonly List<PlanBox> _services = ServiceBoxes.Of(room);

    private static readonly Span Everywhere = new(long.MinValue / 4, long.MaxValue / 4);

    /// <summary>What stands whatever rows and sheets do: joists, services.</summary>
    public List<Obstacle> Standing(FixtureWish wish, Hole hole)
    {
        var found = new List<Obstacle>();
        if (rules.Deep(wish))
        {
            var keep = hole.HalfV + rules.FromJoist(wish);
            Joists(found, keep, hole);
        }
        else if (wish.AccessPanel && room.Survey.Strapping.Direct && rules.Inside is null)
        {
            // the board hangs on the joists themselves: a door opens between two of them
            Joists(found, hole.HalfV + hole.Clear, hole);
        }
        else if (rules.Inside is null && wish.RemoteBox is { } box && BoxFeeding.Passes(box, hole))
        {
            Joists(found, BoxFeeding.LeastFromFace(box, hole), hole);
        }

        var depth = Math.Max(wish.BodyDepth.Units, wish.RemoteBox is { } fed ? (rules.Inside?.Board ?? rules.FinishToJoist) + fed.Sorted[0] : 0);
        foreach (var box in _services)
        {
            var service = room.Survey.Services![box.Index];
            if (wish.AccessPanel && service.NeedsReach)
            {
                continue;
            }

            if (ServiceBoxes.Reaches(service, rules.FinishToJoist, depth))
            {
                var clear = service.Clearance.Units;
                found.Add(new Obstacle(Wider(box.Along, hole.HalfU + clear), Wider(box.Across, hole.HalfV + clear), new Clash(ClashKind.Service, box.Index)));
            }
        }

        return found;
    }

    /// <summary>Straps or seams.</summary>
    public static IEnumerable<Obstacle> Of(IReadOnlyList<PlanBox> footprints, Hole hole, ClashKind kind)
    {
        foreach (var footprint in footprints)
        {
            yield return new Obstacle(
                Wider(footprint.Along, hole.HalfU + hole.Clear), Wider(footprint.Across, hole.HalfV + hole.Clear), new Clash(kind, footprint.Index));
        }
    }

    /// <summary>The other fixtures' holes.</summary>
    public static IEnumerable<Obstacle> Of(IReadOnlyList<Hole> holes, int but, Hole hole)
    {
        for (var i = 0; i < holes.Count; i++)
        {
            if (i != but)
            {
                var clear = Math.Max(hole.Clear, holes[i].Clear);
                yield return new Obstacle(
                    Wider(holes[i].Along, hole.HalfU + clear), Wider(holes[i].Across, hole.HalfV + clear), new Clash(ClashKind.Fixture, i));
            }
        }
    }

    // negative: the centre may lie that far under the joist from either face. What is kept off a joist's face is kept off its end too
    private void Joists(List<Obstacle> found, long fromFace, Hole hole)
    {
        var off = Math.Max(0, fromFace - hole.HalfV);
        var rounding = fromFace < hole.HalfV ? 0 : hole.Round ? hole.HalfU + off : off;
        foreach (var zone in room.Joists.Zones)
        {
            var along = room.Joists.Zones.Length == 1 ? Everywhere : Wider(zone.Along, hole.HalfU + off);
            for (var i = zone.FirstSupport; i < zone.FirstSupport + zone.SupportCount; i++)
            {
                var across = Wider(new Span(room.Joists.Supports[i].Lo, room.Joists.Supports[i].Hi), fromFace);
                if (across.Size > 0)
                {
                    found.Add(new Obstacle(along, across, new Clash(ClashKind.Joist, i), rounding));
                }
            }
        }
    }

    private static Span Wider(Span span, long by) => new(span.Lo - by, span.Hi + by);
}
