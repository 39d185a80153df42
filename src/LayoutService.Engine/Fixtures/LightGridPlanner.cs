using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Fixtures;

/// <summary>A regular grid in the working frame: its places, its arms, and how many lights were asked for or needed.</summary>
public sealed record LaidGrid(IReadOnlyList<Uv> Places, IReadOnlyList<LaidArm> Arms, int Asked, int? Needed);

/// <summary>The grid of one rectangle: lights and spacing along and across the joists.</summary>
public sealed record LaidArm(int Along, int Across, long AlongSpacing, long AcrossSpacing);

/// <summary>
/// Lays out a light grid: the number of lights by count, by lines or by the lumen method; shared over the arms of the room
/// by area (largest remainder); a regular grid in each, with half a space at its edges. Places in an opening are left out,
/// and the number is raised until what is left is enough. Cost: arms × lights.
/// </summary>
public static class LightGridPlanner
{
    private const int MostRaised = 24;

    public static LaidGrid Of(FramedRoom room, LightGridWish wish, decimal squareMetres)
    {
        var parts = GridParts.Of(room);
        if (wish is { Rows: { } rows, Columns: { } columns })
        {
            var alongX = room.Field.RunDegrees is <= 45 or > 135;
            var (along, across) = alongX ? (columns, rows) : (rows, columns);
            return Lay(room, [.. parts.Select(p => (p, (along, across)))], parts.Count * rows * columns, null);
        }

        int? needed = wish is { Lux: { } lux, Lumens: { } lumens }
            ? LumenMethod.LightsFor(lux, squareMetres, lumens, wish.Utilisation, wish.Maintenance)
            : null;
        var asked = needed ?? wish.Count!.Value;
        LaidGrid? laid = null;
        for (var raised = 0; raised <= MostRaised; raised++)
        {
            var shares = Shares(parts, asked + raised);
            var grids = parts.Select((p, i) => (p, shares[i] == 0 ? (0, 0) : RegularGrid.Of(shares[i], p.Along.Size, p.Across.Size))).ToList();
            laid = Lay(room, grids, asked, needed);
            if (laid.Places.Count >= asked)
            {
                break;
            }
        }

        return laid!;
    }

    private static LaidGrid Lay(
        FramedRoom room, IReadOnlyList<((Span Along, Span Across) Part, (int Along, int Across) Grid)> grids, int asked, int? needed)
    {
        var places = new List<Uv>();
        var arms = new List<LaidArm>();
        foreach (var (part, grid) in grids)
        {
            if (grid.Along == 0)
            {
                continue;
            }

            arms.Add(new LaidArm(grid.Along, grid.Across, part.Along.Size / grid.Along, part.Across.Size / grid.Across));
            for (var i = 0; i < grid.Along; i++)
            {
                for (var j = 0; j < grid.Across; j++)
                {
                    var at = new Uv(
                        room.SnapNear(Middle(part.Along, i, grid.Along)),
                        room.SnapDownAcross(Middle(part.Across, j, grid.Across) + (room.GridStep / 2)));
                    if (room.Board.AcrossAt(at.U, 0).Exists(s => s.Lo < at.V && at.V < s.Hi))
                    {
                        places.Add(at);
                    }
                }
            }
        }

        return new LaidGrid(places, arms, asked, needed);
    }

    // half a space at either edge
    private static long Middle(Span span, int index, int count) => span.Lo + (span.Size * ((2 * index) + 1) / (2 * count));

    // by area, the largest remainders first; an arm too small for a light of its own has none
    private static int[] Shares(IReadOnlyList<(Span Along, Span Across)> parts, int lights)
    {
        var areas = parts.Select(p => (double)p.Along.Size * p.Across.Size).ToArray();
        var ideal = areas.Select(a => lights * a / areas.Sum()).ToArray();
        var shares = ideal.Select(i => (int)i).ToArray();
        foreach (var i in Enumerable.Range(0, parts.Count).OrderByDescending(i => ideal[i] - shares[i]).ThenBy(i => i).Take(lights - shares.Sum()))
        {
            shares[i]++;
        }

        return shares;
    }
}
