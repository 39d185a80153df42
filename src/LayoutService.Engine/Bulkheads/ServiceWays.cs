using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Bulkheads;

/// <summary>A stretch of a ladder that a service passes through, in distances along its side, and how far down it must be open.</summary>
internal sealed record ServiceWay(double From, double To, long Bottom, long Thick)
{
    /// <summary>True where a rung would stand in it.</summary>
    public bool Meets(double at) => From - (Thick / 2.0) < at && at < To + (Thick / 2.0);

    /// <summary>Where the rungs beside it stand.</summary>
    public IEnumerable<double> Posts(double from, double to) =>
        new[] { From - (Thick / 2.0), To + (Thick / 2.0) }.Where(at => at >= from + (Thick / 2.0) && at <= to - (Thick / 2.0));
}

/// <summary>
/// Problem: a duct that a shallower bulkhead hides runs on into a deeper one, through the ladder between them. Method: for each
/// service that lies as high as the ladder, where the edges and the middle of its wood run through the service's outline, and its
/// clearance on either side; stretches that touch are one. Cost: services × their corners.
/// </summary>
internal sealed class ServiceWays(FramedRoom room, Side side, double from, double to, long top, long thick)
{
    /// <summary>A header spans no further: 1,200 mm. Common practice, no source. What runs along a ladder is no way through it.</summary>
    private const long Widest = 1200 * Measures.Length.PerMillimetre;

    public List<ServiceWay> Of()
    {
        var found = new List<ServiceWay>();
        foreach (var service in (room.Survey.Services ?? []).Where(s => s.Bottom.Units > top && s.Top.Units - s.Clearance.Units < top + thick))
        {
            var inside = new InsideStretches(service.In(room.Frame));
            var stretches = new[] { side.Outer, (side.Outer + side.Inner) / 2.0, side.Inner }
                .SelectMany(inward => inside.Of(side.At(from, inward), side.At(to, inward)))
                .ToList();
            var clear = service.Clearance.Units;
            if (stretches.Count > 0 && stretches.Max(s => s.To) - stretches.Min(s => s.From) + (2 * clear) <= Widest)
            {
                found.Add(new ServiceWay(from + stretches.Min(s => s.From) - clear, from + stretches.Max(s => s.To) + clear, service.Bottom.Units + clear, thick));
            }
        }

        return Joined(found);
    }

    /// <summary>What of a line lies between them; they are in order along it.</summary>
    public static IEnumerable<(double From, double To)> Between(IEnumerable<ServiceWay> ways, double from, double to)
    {
        var at = from;
        foreach (var way in ways)
        {
            if (way.From > at)
            {
                yield return (at, way.From);
            }

            at = Math.Max(at, way.To);
        }

        if (to > at)
        {
            yield return (at, to);
        }
    }

    // two with no room for a rung on either side of the wood between them are one
    private List<ServiceWay> Joined(List<ServiceWay> ways)
    {
        var found = new List<ServiceWay>();
        foreach (var way in ways.OrderBy(w => w.From))
        {
            if (found.Count > 0 && way.From - found[^1].To < 2 * thick)
            {
                found[^1] = found[^1] with { To = Math.Max(found[^1].To, way.To), Bottom = Math.Max(found[^1].Bottom, way.Bottom) };
            }
            else
            {
                found.Add(way);
            }
        }

        return found;
    }
}
