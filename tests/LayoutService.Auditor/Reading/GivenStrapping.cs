using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>One length in a row, as drawn: mm in the frame of the joists, Low and High across.</summary>
public sealed class GivenPiece
{
    public GivenPiece(JsonElement piece, string rowId, double rowAt, AskedRoom room)
    {
        Id = piece.GetProperty("id").GetString()!;
        RowId = rowId;
        RowAt = rowAt;
        var (fx, fy) = piece.GetProperty("from").Point(room.Unit);
        var (tx, ty) = piece.GetProperty("to").Point(room.Unit);
        var (from, to) = (room.Frame.At(fx, fy), room.Frame.At(tx, ty));
        Turned = from.V > to.V;
        (Low, High) = Turned ? (to, from) : (from, to);
        Length = LengthText.Millimetres(piece.GetProperty("length"), room.Unit);
        CutLength = piece.Member("cutLength").Length(room.Unit);
        StockId = piece.Member("stockId").Text();
        var (start, end) = (piece.Member("startJoint").Text() ?? "", piece.Member("endJoint").Text() ?? "");
        (LowJoint, HighJoint) = Turned ? (end, start) : (start, end);
        LowEnd = StrapEnd.Of(room, U, Low.V);
        HighEnd = StrapEnd.Of(room, U, High.V);
    }

    public string Id { get; }
    public string RowId { get; }
    public double RowAt { get; }
    public bool Turned { get; }
    public Uv Low { get; }
    public Uv High { get; }
    public double U => (Low.U + High.U) / 2;
    public double Length { get; }
    public double? CutLength { get; }
    public string? StockId { get; }
    public string LowJoint { get; }
    public string HighJoint { get; }

    /// <summary>The walls that the ends stop at, where they do.</summary>
    public StrapEnd LowEnd { get; internal set; }
    public StrapEnd HighEnd { get; internal set; }

    /// <summary>The stretch across that the piece serves: to the wall where it ends at one.</summary>
    public Stretch Reach => new(LowEnd.Wall is null ? Low.V : LowEnd.WallAt, HighEnd.Wall is null ? High.V : HighEnd.WallAt);

    /// <summary>True when an end bevelled to an oblique wall lies on this line with a part of its face, be it not with its centre line.</summary>
    public bool Touches(double v, Passage line, double half) =>
        U - half < line.To && line.From < U + half && Low.V - LowEnd.LongPoint(Low.V, half) < v && v < High.V + HighEnd.LongPoint(High.V, half);
}

/// <summary>
/// Where a strap's end stands to the border: the wall that it stops at, and where the strap's centre line meets it.
/// At an oblique wall a square-cut end may stop short by half a face times the wall's slant.
/// </summary>
public readonly record struct StrapEnd(Wall? Wall, double WallAt)
{
    private const double Near = 0.05;

    /// <summary>How far the long point of an end stands past its centre line: where it stops at an oblique wall it is bevelled to it.</summary>
    public double LongPoint(double v, double half) => Wall is { IsSquare: false } wall && Math.Abs(v - WallAt) <= Near ? half * wall.Slant : 0;

    public static StrapEnd Of(AskedRoom room, double u, double v)
    {
        foreach (var wall in room.Border.Walls)
        {
            if (wall.IsSquare || u < wall.Us.From - Near || u > wall.Us.To + Near)
            {
                continue;
            }

            var at = wall.VAt(u);
            var clearance = wall.IsAlong ? 0 : (room.Strapping.Face / 2 * wall.Slant) + (room.Strapping.EndClearance ?? 6.35);
            if (Math.Abs(v - at) <= clearance + Near)
            {
                return new StrapEnd(wall, at);
            }
        }

        return Touching(room, u, v);
    }

    /// <summary>True when some of the strap's face, be it not its centre line, stands at a wall of this kind: at a corner of two kinds either may be said.</summary>
    public static bool Meets(AskedRoom room, double u, double v, Func<int, bool> ofRing)
    {
        var half = room.Strapping.Face / 2;
        return room.Border.Walls.Any(w => ofRing(w.Ring) && w.Us.From < u + half + Near && w.Us.To > u - half - Near && (w.IsSquare
            ? Math.Abs(w.Vs.From - v) <= Near || Math.Abs(w.Vs.To - v) <= Near
            : Math.Abs(w.VAt(Math.Clamp(u, w.Us.From, w.Us.To)) - v) <= (w.IsAlong ? 0 : (half * w.Slant) + (room.Strapping.EndClearance ?? 6.35)) + Near));
    }

    /// <summary>An end may stop short because its face, though not its centre line, meets a wall or an opening.</summary>
    private static StrapEnd Touching(AskedRoom room, double u, double v)
    {
        var half = room.Strapping.Face / 2;
        foreach (var wall in room.Border.Walls.Where(w => w.Us.From < u + half - Near && w.Us.To > u - half + Near))
        {
            var met = wall.IsSquare ? [wall.Vs.From, wall.Vs.To]
                : new[] { wall.VAt(Math.Max(wall.Us.From, u - half)), wall.VAt(Math.Min(wall.Us.To, u + half)) };
            if (met.Any(at => Math.Abs(v - at) <= Near))
            {
                var ends = room.Border.AcrossAt(u).SelectMany(p => new[] { p.From, p.To });
                return new StrapEnd(wall, ends.Where(e => Math.Abs(e - v) <= 2 * half).Append(v).MinBy(e => e == v ? half : Math.Abs(e - v)));
            }
        }

        return default;
    }
}

/// <summary>One row of strapping; At is its centre line, along, mm.</summary>
public sealed class GivenRow
{
    public GivenRow(JsonElement row, AskedRoom room)
    {
        Json = row;
        Id = row.GetProperty("id").GetString()!;
        At = LengthText.Millimetres(row.GetProperty("at"), room.Unit);
        Pieces = row.Member("pieces").Items().Select(p => new GivenPiece(p, Id, At, room)).OrderBy(p => p.Low.V).ToList();
        for (var i = 1; i < Pieces.Count; i++)
        {
            if (Math.Abs(Pieces[i].Low.V - Pieces[i - 1].High.V) <= 0.05)
            {
                (Pieces[i].LowEnd, Pieces[i - 1].HighEnd) = (default, default);
            }
        }
    }

    public JsonElement Json { get; }
    public string Id { get; }
    public double At { get; }
    public IReadOnlyList<GivenPiece> Pieces { get; }
}

/// <summary>A nailer or ledger: a line, mm.</summary>
public sealed record GivenNailer(string Id, Uv From, Uv To, double Length)
{
    private Wall Line => new(0, From, To);

    /// <summary>A nailer holds a strap end when it passes within this of it, mm (its own half width and a gap).</summary>
    public bool Holds(Uv end) => Line.Distance(end) <= 100;
}
