using System.Text.Json;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Reading;

/// <summary>One bulkhead of an answer, in mm and in the frame of the joists; heights run down from the joists.</summary>
public sealed class GivenBulkhead
{
    public GivenBulkhead(JsonElement box, AskedRoom room)
    {
        Json = box;
        Id = box.GetProperty("id").GetString()!;
        double Of(string name) => LengthText.Millimetres(box.GetProperty(name), room.Unit);
        (Drop, Top, FrameBottom, Underside) = (Of("drop"), Of("top"), Of("frameBottom"), Of("underside"));
        UndersideHeight = box.Member("undersideHeight").Length(room.Unit);
        BoardedAbove = box.Member("boardedAbove") is { ValueKind: JsonValueKind.True };
        var parts = box.GetProperty("parts").EnumerateArray()
            .Select(part => Planes.Polygon([.. part.EnumerateArray().Select(r => room.Points(r))])).ToArray();
        Footprint = Planes.Factory.CreateMultiPolygon(parts);
        // empty where deeper bulkheads take all of it
        Ring = parts.Length == 0 ? [] : room.Points(box.GetProperty("footprint"));
        Members = [.. box.Member("members").Items().Select(m => new GivenMember(m, room))];
        Boards = [.. box.Member("boards").Items().Select(b => new GivenBoxBoard(b, room))];
        Backing = [.. box.Member("backing").Items().Select(b => (
            b.Member("memberId").Text() ?? "", b.Member("kind").Text() ?? "", (IReadOnlyList<string>)[.. b.Member("of").Items().Select(o => o.GetString()!)]))];
        Face = (box.Member("members").Items().Select(m => m.Member("size").Text()).FirstOrDefault() ?? "2x2") switch
        {
            "2x3" => room.Imperial ? 63.5 : 64,
            "2x4" => room.Imperial ? 88.9 : 89,
            _ => room.Imperial ? 38.1 : 38,
        };
        BeadLength = box.Member("beadLength").Length(room.Unit) ?? 0;
    }

    public JsonElement Json { get; }
    public string Id { get; }
    public double Drop { get; }
    public double Top { get; }
    public double FrameBottom { get; }
    public double Underside { get; }
    public double? UndersideHeight { get; }
    public bool BoardedAbove { get; }
    public MultiPolygon Footprint { get; }

    /// <summary>The footprint as one ring.</summary>
    public IReadOnlyList<Uv> Ring { get; }

    public IReadOnlyList<GivenMember> Members { get; }
    public IReadOnlyList<GivenBoxBoard> Boards { get; }
    public IReadOnlyList<(string MemberId, string Kind, IReadOnlyList<string> Of)> Backing { get; }
    public double BeadLength { get; }

    /// <summary>Wood across a rail, by the size of the frame.</summary>
    public double Face { get; }

    /// <summary>Thickness of the board below the frame.</summary>
    public double Board => Underside - FrameBottom;

    /// <summary>Its edges, in whatever direction they were drawn.</summary>
    public IEnumerable<Wall> Sides => Planes.Edges(Footprint);
}

/// <summary>One length of frame.</summary>
public sealed class GivenMember
{
    public GivenMember(JsonElement member, AskedRoom room)
    {
        double Of(string name) => LengthText.Millimetres(member.GetProperty(name), room.Unit);
        Id = member.GetProperty("id").GetString()!;
        Role = member.GetProperty("role").GetString()!;
        (From, To) = (room.Place(member.GetProperty("from")), room.Place(member.GetProperty("to")));
        (Top, Bottom, Length, Cut) = (Of("top"), Of("bottom"), Of("length"), Of("cutLength"));
        StockId = member.Member("stockId").Text();
    }

    public string Id { get; }
    public string Role { get; }
    public Uv From { get; }
    public Uv To { get; }
    public double Top { get; }
    public double Bottom { get; }
    public double Length { get; }
    public double Cut { get; }
    public string? StockId { get; }

    public Uv Middle => new((From.U + To.U) / 2, (From.V + To.V) / 2);
    public double Drawn => Planes.Apart(From, To);

    /// <summary>Its centre line in plan.</summary>
    public Wall Line => new(0, From, To);
}

/// <summary>One piece of a bulkhead's board: a face as its line, an underside as its ring.</summary>
public sealed class GivenBoxBoard
{
    public GivenBoxBoard(JsonElement board, AskedRoom room)
    {
        Id = board.GetProperty("id").GetString()!;
        IsFace = board.GetProperty("face").GetString() == "face";
        Outline = [.. board.GetProperty("outline").EnumerateArray().Select(room.Place)];
        Width = LengthText.Millimetres(board.GetProperty("width"), room.Unit);
        Length = LengthText.Millimetres(board.GetProperty("length"), room.Unit);
        Area = (board.Member("area").Double() ?? 0) * (room.Imperial ? 304.8 * 304.8 : 1e6);
        StockId = board.Member("stockId").Text();
        Screws = board.Member("screws").Double() ?? 0;
    }

    public string Id { get; }
    public bool IsFace { get; }
    public IReadOnlyList<Uv> Outline { get; }
    public double Width { get; }
    public double Length { get; }

    /// <summary>As stated, in mm².</summary>
    public double Area { get; }
    public string? StockId { get; }
    public double Screws { get; }
}
