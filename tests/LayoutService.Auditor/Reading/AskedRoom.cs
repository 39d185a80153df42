using System.Text.Json;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Reading;

/// <summary>A length or sheet that may be bought: mm, and money as given. Width is zero for a strap.</summary>
public sealed record AskedStock(
    string Id, double Length, double Width, int PackSize, decimal? PackPrice, int? Quantity, double Unit);

/// <summary>An opening in the ceiling; Ring is its index in the border.</summary>
public sealed record AskedOpening(int Ring, string Kind, Stretch Us, Stretch Vs);

/// <summary>
/// A plan request as the auditor reads it, in mm and in the frame of the joists. Defaults are those that the design
/// states (common practice, no source): strap 19 × 64 mm at 400 mm or 16 in, pieces 600 mm or 24 in, 6 mm at walls.
/// </summary>
public sealed class AskedRoom
{
    /// <summary>Ring number of the first partition's edges.</summary>
    public const int FirstPartition = -1000;

    /// <param name="request">The request.</param>
    /// <param name="turned">True to read it as board that is screwed to the joists lies: along and across changed over. Joists and levels are then not to be asked for.</param>
    /// <param name="board">True to read it as the board has it, which ends at partitions that stand under the straps as well.</param>
    public AskedRoom(JsonElement request, bool turned = false, bool board = false)
    {
        Json = request;
        Imperial = request.GetProperty("units").GetString() == "imperial";
        Unit = Imperial ? 25.4 : 1;
        var room = request.GetProperty("room");
        var field = request.GetProperty("joistFields")[0];
        Outline = room.GetProperty("outline").Ring(Unit);
        Frame = new Frame(DegreesOf(field), Outline, turned);
        var rings = new List<IReadOnlyList<Uv>> { InFrame(Outline) };
        var openings = new List<AskedOpening>();
        foreach (var opening in room.Member("openings").Items())
        {
            var ring = InFrame(opening.GetProperty("outline").Ring(Unit));
            openings.Add(new AskedOpening(rings.Count, opening.Member("kind").Text() ?? "other",
                new(ring.Min(p => p.U), ring.Max(p => p.U)), new(ring.Min(p => p.V), ring.Max(p => p.V))));
            rings.Add(ring);
        }

        Rings = rings;
        Openings = openings;
        Floor = Border = new Border(rings);
        Area = Math.Abs(Border.SignedArea(rings[0])) - rings.Skip(1).Sum(r => Math.Abs(Border.SignedArea(r)));
        Ceiling = Planes.Polygon(rings);
        Standing = [.. request.Member("partitions").Items().Where(p => p.Member("top").Text() is null or "joists" || (board && p.Member("top").Text() == "straps")).Select((p, i) => new AskedPartition(p, i, this))];
        Joists = new AskedJoists(request.GetProperty("joistFields"), Unit, Frame, rings[0]);
        Levels = turned ? null : AskedLevels.Of(this, request.GetProperty("joistFields"));
        Strapping = new AskedStrapping(request.Member("strapping"), Imperial);
        Sheets = new AskedSheets(request.Member("sheets"), Unit);
        OpenEdges = [.. room.Member("walls").Items().Where(w => w.Member("kind").Text() == "open").Select(w => w.GetProperty("edge").GetInt32())
            .Select(edge => new Wall(0, rings[0][edge], rings[0][(edge + 1) % rings[0].Count]))];
        OldCeiling = room.Member("existing").Member("stays") is { ValueKind: JsonValueKind.False } ? 0 : room.Member("existing").Member("thickness").Length(Unit) ?? 0;
        Currency = request.Member("prices").Member("currency").Text();
    }

    public JsonElement Json { get; }
    public bool Imperial { get; }

    /// <summary>Edges of the outline without a wall.</summary>
    public IReadOnlyList<Wall> OpenEdges { get; }

    /// <summary>True on an edge without a wall.</summary>
    public bool IsOpen(Uv place) => OpenEdges.Any(edge => edge.Distance(place) < 0.1);

    /// <summary>Thickness of an old ceiling that stays under the joists, mm.</summary>
    public double OldCeiling { get; }

    /// <summary>Millimetres in one unit of the request's numbers.</summary>
    public double Unit { get; }

    public IReadOnlyList<(double X, double Y)> Outline { get; }
    public Frame Frame { get; }
    public IReadOnlyList<IReadOnlyList<Uv>> Rings { get; }
    public IReadOnlyList<AskedOpening> Openings { get; }

    /// <summary>The border of the room: outline and openings.</summary>
    public Border Floor { get; }

    /// <summary>The border of the ceiling: of the room less its bulkheads, where the ceiling ends at them.</summary>
    public Border Border { get; private set; }

    /// <summary>Area of the ceiling, mm².</summary>
    public double Area { get; private set; }

    /// <summary>The ceiling as an area.</summary>
    internal Geometry Ceiling { get; private set; }

    /// <summary>Partitions that stand before the straps.</summary>
    public IReadOnlyList<AskedPartition> Standing { get; }

    public AskedJoists Joists { get; }
    /// <summary>How level the joists are; null when nobody looked.</summary>
    public AskedLevels? Levels { get; }

    public AskedStrapping Strapping { get; }
    public AskedSheets Sheets { get; }
    public string? Currency { get; }

    /// <summary>The step of chosen positions: a sixteenth of an inch, or a millimetre.</summary>
    public double Step => Imperial ? 25.4 / 16 : 1;

    /// <summary>A post narrower than the row spacing needs no rows of its own.</summary>
    public bool NeedsNoRow(int ring) => ring > 0 && Openings[ring - 1] is { Kind: "post" } post
        && post.Vs.Length < Strapping.MaxSpacing && post.Us.Length < Strapping.MaxSpacing;

    /// <summary>A point of a request or an answer, in the frame of the joists.</summary>
    public Uv Place(JsonElement point)
    {
        var (x, y) = point.Point(Unit);
        return Frame.At(x, y);
    }

    /// <summary>A ring of a request or an answer, in the frame of the joists.</summary>
    public IReadOnlyList<Uv> Points(JsonElement ring) => InFrame(ring.Ring(Unit));

    /// <summary>Ends the ceiling at these footprints; the edges of bulkheads count as rings -1, -2 and so on, of partitions from <see cref="FirstPartition"/> down.</summary>
    internal void EndAt(IReadOnlyList<Geometry> footprints)
    {
        Ceiling = Ceiling.Minus(Planes.Union(footprints));
        Area = Ceiling.Area;
        Border = new Border(Ceiling, edge => RingOf(edge.Middle(), footprints));
    }

    /// <summary>True when no bulkhead takes any of the edge of this opening.</summary>
    public bool StandsFree(int ring) => Math.Abs(Border.Walls.Where(w => w.Ring == ring).Sum(Planes.Length) - Floor.Walls.Where(w => w.Ring == ring).Sum(Planes.Length)) < 1;

    private int RingOf(Uv middle, IReadOnlyList<Geometry> footprints)
    {
        var wall = Floor.Walls.MinBy(w => w.Distance(middle))!;
        if (wall.Distance(middle) < 0.05)
        {
            return wall.Ring;
        }

        // partitions come after the bulkheads
        var nearest = Enumerable.Range(0, footprints.Count).MinBy(i => footprints[i].Boundary.Distance(Planes.Point(middle)));
        var bulkheads = footprints.Count - Standing.Count;
        return nearest < bulkheads ? -1 - nearest : FirstPartition - (nearest - bulkheads);
    }

    private List<Uv> InFrame(IEnumerable<(double X, double Y)> ring) => ring.Select(p => Frame.At(p.X, p.Y)).ToList();

    private static double DegreesOf(JsonElement field) => field.Member("run").Text() switch
    {
        "x" => 0,
        "y" => 90,
        _ => field.Member("runDegrees").Double() ?? 0,
    };
}
