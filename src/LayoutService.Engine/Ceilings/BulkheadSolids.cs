using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// Sizes bulkheads. Along edges: the edges swept by the width, mitred at corners, up to the neighbouring walls. Round
/// services: what they cover grown by clearance, frame and board. A strip of ceiling beside either that is too narrow to board goes with it.
/// The drop, when it is not given, clears the lowest hidden bottom, and leaves room for two rails and a rung.
/// </summary>
public static class BulkheadSolids
{
    /// <summary>A strip of ceiling narrower than this between a bulkhead and a wall or another is boxed in: 150 mm, the least rip. Common practice, no source.</summary>
    public const long LeastStrip = 150 * Length.PerMillimetre;

    public static IReadOnlyList<BulkheadSolid> Of(Survey survey, PlanFrame frame)
    {
        if (survey.Bulkheads.Count == 0)
        {
            return [];
        }

        var outline = survey.Room.Outline.Select(frame.In).ToArray();
        var floor = Footprint.Of([outline]);
        foreach (var opening in survey.Room.Openings)
        {
            floor = floor.Minus(Footprint.Of([[.. opening.Outline.Select(frame.In)]]));
        }

        foreach (var partition in FramedPartition.Of(survey, frame).Where(p => p.StopsBoard))
        {
            floor = floor.Minus(partition.Footprint);
        }

        var solids = survey.Bulkheads.Select((wish, i) => Solid(survey, frame, outline, floor, wish, i)).ToList();

        Share(solids, floor);
        return solids;
    }

    /// <summary>Clearance to what is hidden: 25 mm or 1 in (common practice, no source), or the service's own when that is more.</summary>
    public static long Clearance(UnitSystem units, Service service) => Math.Max(
        units == UnitSystem.Imperial ? Length.PerInch : 25 * Length.PerMillimetre, service.Clearance.Units);

    /// <summary>The least drop that leaves room for two rails and a rung as long as a rail is thick.</summary>
    public static long LeastDrop(Survey survey, BulkheadWish wish) =>
        (3 * wish.Frame.Thickness.Units) + survey.Sheets.Thickness.Units - (wish.BoardedAbove ? 0 : Gap(survey) - survey.Room.Through.Units);

    /// <summary>From the joists down to the finished ceiling.</summary>
    public static long Gap(Survey survey) => survey.JoistToBoard.Units + CeilingBoard(survey);

    private static long CeilingBoard(Survey survey) => survey.Sheets.Thickness.Units * survey.Sheets.Layers;

    /// <summary>
    /// The deeper has the overlap; of two as deep the one named first. What is left beside it too narrow to frame goes with it.
    /// </summary>
    private static void Share(List<BulkheadSolid> solids, Footprint floor)
    {
        var taken = Footprint.Of([]);
        var ceiling = floor;
        var deeper = new List<int>();
        Uv[] places = [.. floor.Corners];
        foreach (var solid in solids.OrderByDescending(s => s.Underside).ThenBy(s => s.Index).ToList())
        {
            var left = solid.Footprint.Minus(taken);
            if (!solid.Wish.BoardedAbove || solid.Wish.Hides.Count > 0)
            {
                left = left.WithoutSlivers(ceiling, LeastStrip).Minus(taken);
            }

            foreach (var strip in taken.Empty ? [] : left.Narrower(LeastWidth(solid)))
            {
                if (deeper.Where(d => solids[d].Footprint.Shared(strip) > LeastWidth(solid)).Cast<int?>().FirstOrDefault() is { } whole)
                {
                    solids[whole] = solids[whole] with { Footprint = solids[whole].Footprint.Plus(strip).Tidied([.. places, .. solids[whole].Footprint.Corners]) };
                    left = left.Minus(solids[whole].Footprint);
                    taken = taken.Plus(solids[whole].Footprint);
                    ceiling = solids[whole].Wish.BoardedAbove ? ceiling : ceiling.Minus(strip);
                }
            }

            // sides that rounding leaves a hair off square are put square, or the next one's corners on them leave a hair between
            solids[solid.Index] = solid with { Footprint = left.Tidied([.. places, .. taken.Corners, .. left.Corners]) };
            taken = taken.Plus(solids[solid.Index].Footprint);
            ceiling = solid.Wish.BoardedAbove ? ceiling : ceiling.Minus(solids[solid.Index].Footprint);
            deeper.Add(solid.Index);
        }
    }

    /// <summary>Board and wood along a face, and wood along the other side.</summary>
    private static long LeastWidth(BulkheadSolid solid) => solid.FaceDepth + solid.Wish.Frame.Face.Units;

    private static BulkheadSolid Solid(Survey survey, PlanFrame frame, Uv[] outline, Footprint floor, BulkheadWish wish, int index)
    {
        var (board, gap) = (survey.Sheets.Thickness.Units, Gap(survey));
        var hidden = (survey.Services ?? []).Where(s => wish.Hides.Contains(s.Id)).ToList();
        var drop = wish.Drop?.Units ?? Drop(survey, wish, hidden);
        var footprint = wish.Outline is { } own ? Footprint.Of([[.. own.Select(frame.In)]])
            : wish.Edges.Count > 0 ? AlongEdges(outline, wish.Edges, wish.Width!.Value.Units)
            : Round(survey, frame, wish, hidden);
        footprint = footprint.Meet(floor);
        if (wish.Edges.Count > 0)
        {
            footprint = footprint.Beside([.. wish.Edges.Select(e => (outline[e], outline[(e + 1) % outline.Length]))]);
        }

        return new BulkheadSolid
        {
            Index = index,
            Wish = wish,
            Footprint = footprint,
            Drop = drop,
            Top = wish.BoardedAbove ? gap : survey.Room.Through.Units,
            FrameBottom = gap + drop - board,
            Underside = gap + drop,
            Board = board,
            CeilingBoard = CeilingBoard(survey),
        };
    }

    private static long Drop(Survey survey, BulkheadWish wish, List<Service> hidden)
    {
        var least = LeastDrop(survey, wish);
        var needed = hidden
            .Select(s => s.Bottom.Units + Clearance(survey.Units, s) + wish.Frame.Thickness.Units + survey.Sheets.Thickness.Units - Gap(survey))
            .Append(least)
            .Max();
        var step = survey.Units == UnitSystem.Imperial ? Length.PerInch / 4 : 5 * Length.PerMillimetre;
        return (needed + step - 1) / step * step;
    }

    private static Footprint Round(Survey survey, PlanFrame frame, BulkheadWish wish, List<Service> hidden)
    {
        var all = Footprint.Of([]);
        foreach (var service in hidden)
        {
            all = all.Plus(service.In(frame).Grown(Clearance(survey.Units, service) + survey.Sheets.Thickness.Units + wish.Frame.Face.Units));
        }

        return all;
    }

    private static Footprint AlongEdges(Uv[] outline, IReadOnlyList<int> edges, long width)
    {
        var chosen = edges.ToHashSet();
        if (chosen.Count == outline.Length)
        {
            return Footprint.Along([[.. outline, outline[0]]], width);
        }

        var chains = new List<IReadOnlyList<Uv>>();
        foreach (var first in chosen.Where(e => !chosen.Contains((e + outline.Length - 1) % outline.Length)).Order())
        {
            var chain = new List<Uv> { outline[first] };
            var last = first;
            while (true)
            {
                chain.Add(outline[(last + 1) % outline.Length]);
                if (!chosen.Contains((last + 1) % outline.Length))
                {
                    break;
                }

                last = (last + 1) % outline.Length;
            }

            var n = outline.Length;
            chain[^1] = Lengthened(chain[^2], chain[^1], outline[(last + 2) % n], outline, width);
            chain[0] = Lengthened(chain[1], chain[0], outline[(first + n - 1) % n], outline, width);
            chains.Add(chain);
        }

        return Footprint.Along(chains, width);
    }

    // where the next wall leans away the strip runs on to meet it; at a corner that stands into the room it ends square
    private static Uv Lengthened(Uv from, Uv end, Uv next, Uv[] outline, long width)
    {
        double du = end.U - from.U, dv = end.V - from.V, nu = next.U - end.U, nv = next.V - end.V;
        var (own, other) = (Math.Sqrt((du * du) + (dv * dv)), Math.Sqrt((nu * nu) + (nv * nv)));
        var along = ((du * nu) + (dv * nv)) / (own * other);
        var across = ((du * nv) - (dv * nu)) / (own * other);
        var inside = Footprint.Of([outline]).Holds(new Uv(
            (long)(end.U + (((nu / other) - (du / own)) * 100)), (long)(end.V + (((nv / other) - (dv / own)) * 100))));
        if (!inside || along <= 1e-9)
        {
            return end;
        }

        var on = Math.Min(along / Math.Abs(across), 10) * width;
        return new Uv((long)Math.Round(end.U + (du / own * on)), (long)Math.Round(end.V + (dv / own * on)));
    }
}
