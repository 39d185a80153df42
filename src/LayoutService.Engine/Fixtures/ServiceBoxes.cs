using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Fixtures;

/// <summary>
/// Services as boxes in the working frame. One that lies square to the joists is one box; one that lies askew is cut into
/// slices of at most 100 mm along the joists, each the box of what lies in it: a little more than it covers, never less.
/// </summary>
public static class ServiceBoxes
{
    private const long Slice = 100 * Length.PerMillimetre;

    /// <summary>Boxes of every service; the index is its number in the survey.</summary>
    public static List<PlanBox> Of(FramedRoom room)
    {
        var found = new List<PlanBox>();
        var services = room.Survey.Services ?? [];
        for (var s = 0; s < services.Count; s++)
        {
            foreach (var ring in services[s].Rings())
            {
                Add(found, [.. ring.Select(room.Frame.In)], s);
            }
        }

        return found;
    }

    /// <summary>True when a body that reaches so far up comes within the clearance of the service in height.</summary>
    public static bool Reaches(Service service, long finishToJoist, long bodyDepth) =>
        service.Bottom.Units + service.Clearance.Units > finishToJoist - bodyDepth && service.Top.Units - service.Clearance.Units < finishToJoist;

    /// <summary>The boxes of one ring; a line counts as one.</summary>
    public static void Add(List<PlanBox> found, Uv[] ring, int service)
    {
        var (low, high) = (ring.Min(c => c.U), ring.Max(c => c.U));
        var square = ring.Select((c, i) => (c, Next: ring[(i + 1) % ring.Length])).All(e => e.c.U == e.Next.U || e.c.V == e.Next.V) && ring.Length == 4;
        var slices = square ? 1 : Math.Clamp((int)((high - low + Slice - 1) / Slice), 1, 200);
        for (var n = 0; n < slices; n++)
        {
            var along = new Span(low + ((high - low) * n / slices), low + ((high - low) * (n + 1) / slices));
            long from = long.MaxValue, to = long.MinValue;
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                var (first, last) = (Math.Max(Math.Min(a.U, b.U), along.Lo), Math.Min(Math.Max(a.U, b.U), along.Hi));
                if (first <= last)
                {
                    Note(a.U == b.U ? a.V : At(a, b, first));
                    Note(a.U == b.U ? b.V : At(a, b, last));
                }
            }

            if (from <= to)
            {
                found.Add(new PlanBox(along, new Span(from, to), service));
            }

            void Note(long v) => (from, to) = (Math.Min(from, v), Math.Max(to, v));
        }
    }

    private static long At(Uv a, Uv b, long u) => a.V + (long)Math.Round((double)(b.V - a.V) * (u - a.U) / (b.U - a.U));
}
