using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

internal enum SideKind
{
    /// <summary>Open to the room: a ladder and a board.</summary>
    Face,

    /// <summary>Against a shallower bulkhead, or one as deep named after it: a ladder, and a board below the other's underside only.</summary>
    Step,

    /// <summary>A line carried on past an inside corner: one rail at the bottom.</summary>
    Seam,

    /// <summary>Against a bulkhead whose ladder carries this one: a ledger on that.</summary>
    Rest,

    /// <summary>Along a wall: a ledger at the bottom.</summary>
    Wall,

    /// <summary>Round a post, chimney or stair: the board is cut to it.</summary>
    Opening,
}

/// <summary>
/// One straight side of a bulkhead, walked with the bulkhead on the left. Wood lies between <see cref="Outer"/> and
/// <see cref="Inner"/>, measured in from the side.
/// </summary>
internal sealed record Side(Uv From, Uv To, SideKind Kind, int Other, long Outer, long Inner)
{
    public double Length => Rings.DistanceBetween(From, To);

    public (double U, double V) Along => ((To.U - From.U) / Length, (To.V - From.V) / Length);

    /// <summary>Unit vector into the bulkhead.</summary>
    public (double U, double V) Inward => (-Along.V, Along.U);

    public bool Carries => Kind is not SideKind.Opening;

    /// <summary>Boarded, be it only below another bulkhead.</summary>
    public bool Boarded => Kind is SideKind.Face or SideKind.Step;

    /// <summary>The place at a distance along the side and in from it.</summary>
    public Uv At(double along, double inward) => new(
        (long)Math.Round(From.U + (Along.U * along) + (Inward.U * inward)),
        (long)Math.Round(From.V + (Along.V * along) + (Inward.V * inward)));
}

/// <summary>
/// Cuts the outline of a bulkhead into sides and says what each lies against. Cost: corners of the bulkhead × corners of
/// the room, openings and other bulkheads.
/// </summary>
internal sealed class BoxSides(FramedRoom room)
{
    private const double Near = 0.0125 * Measures.Length.PerMillimetre;

    public IReadOnlyList<IReadOnlyList<Side>> Of(BulkheadSolid solid)
    {
        var walls = Edges([room.Outline]).ToList();
        var openings = Edges(room.OpeningRings).ToList();
        var others = room.Solids
            .Where(s => s.Index != solid.Index)
            .SelectMany(s => Edges(s.Footprint.Patches.SelectMany(p => p.Loops)).Select(e => (e.From, e.To, s.Index)))
            .ToList();
        var corners = walls.Concat(openings).Select(e => e.From).Concat(others.Select(o => o.From)).Distinct().ToList();
        return [.. solid.Footprint.Patches.SelectMany(p => p.Loops).Select(Loop)];

        IReadOnlyList<Side> Loop(IReadOnlyList<Uv> ring)
        {
            var sides = new List<Side>();
            for (var i = 0; i < ring.Count; i++)
            {
                var (from, to) = (ring[i], ring[(i + 1) % ring.Count]);
                var at = from;
                foreach (var stop in corners
                    .Where(c => Rings.Distance(c, from, to) < Near && Rings.DistanceBetween(c, from) > Near && Rings.DistanceBetween(c, to) > Near)
                    .OrderBy(c => Rings.DistanceBetween(c, from))
                    .Append(to))
                {
                    Add(sides, at, stop);
                    at = stop;
                }
            }

            if (sides.Count > 1 && Continues(sides[^1], sides[0]))
            {
                sides[0] = sides[0] with { From = sides[^1].From };
                sides.RemoveAt(sides.Count - 1);
            }

            return sides;
        }

        void Add(List<Side> sides, Uv from, Uv to)
        {
            if (from == to)
            {
                return;
            }

            var (kind, other) = KindOf(new Uv((from.U + to.U) / 2, (from.V + to.V) / 2));
            var (outer, inner) = kind switch
            {
                SideKind.Step when room.Solids[other].Underside == solid.Underside => (0, solid.Wish.Frame.Face.Units),
                SideKind.Face or SideKind.Step => (solid.Board, solid.FaceDepth),
                SideKind.Wall or SideKind.Rest => (0, solid.Wish.Frame.Face.Units),
                _ => (0L, 0L),
            };
            var side = new Side(from, to, kind, other, outer, inner);
            if (sides.Count > 0 && Continues(sides[^1], side))
            {
                sides[^1] = sides[^1] with { To = to };
            }
            else
            {
                sides.Add(side);
            }
        }

        (SideKind, int) KindOf(Uv middle)
        {
            for (var w = 0; w < walls.Count; w++)
            {
                if (Rings.Distance(middle, walls[w].From, walls[w].To) < Near)
                {
                    return room.IsOpenEdge(w) ? (SideKind.Face, -1) : (SideKind.Wall, w);
                }
            }

            if (openings.Any(o => Rings.Distance(middle, o.From, o.To) < Near))
            {
                return (SideKind.Opening, -1);
            }

            foreach (var (from, to, index) in others)
            {
                if (Rings.Distance(middle, from, to) < Near)
                {
                    var that = room.Solids[index];
                    return (that.Underside < solid.Underside || (that.Underside == solid.Underside && that.Index > solid.Index) ? SideKind.Step : SideKind.Rest, index);
                }
            }

            return (SideKind.Face, -1);
        }
    }

    private static bool Continues(Side one, Side next) =>
        one.Kind == next.Kind && one.Other == next.Other && one.To == next.From
        && (one.Along.U * next.Along.U) + (one.Along.V * next.Along.V) > 1 - 1e-9;

    private static IEnumerable<(Uv From, Uv To)> Edges(IEnumerable<IReadOnlyList<Uv>> rings) =>
        rings.SelectMany(ring => ring.Select((corner, i) => (corner, ring[(i + 1) % ring.Count])));
}
