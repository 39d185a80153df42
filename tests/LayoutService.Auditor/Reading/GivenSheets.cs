using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>One end as the plan lists it: where along, from where to where across (everywhere if not said), and the ids behind it.</summary>
public sealed record GivenEnd(double At, Stretch Vs, IReadOnlyList<string> Backing);

/// <summary>One board piece as drawn, mm in the frame of the joists.</summary>
public sealed class GivenBoard
{
    public GivenBoard(JsonElement piece, AskedRoom room)
    {
        Id = piece.GetProperty("id").GetString()!;
        Course = piece.Member("course").Text();
        Layer = (int)(piece.Member("layer").Decimal() ?? 1);
        Ring = piece.GetProperty("outline").Ring(room.Unit).Select(p => room.Frame.At(p.X, p.Y)).ToList();
        Us = new(Ring.Min(p => p.U), Ring.Max(p => p.U));
        Vs = new(Ring.Min(p => p.V), Ring.Max(p => p.V));
        Area = Math.Abs(Border.SignedArea(Ring));
        IsBox = Math.Abs(Area - (Us.Length * Vs.Length)) <= 0.01 * (Us.Length + Vs.Length);
        Width = LengthText.Millimetres(piece.GetProperty("width"), room.Unit);
        Length = LengthText.Millimetres(piece.GetProperty("length"), room.Unit);
        StatedArea = piece.Member("area").Double();
        Screws = piece.Member("screws").Double() ?? 0;
        StockId = piece.Member("stockId").Text();
        Ends = piece.Member("ends").Items().Select(e => new GivenEnd(
            LengthText.Millimetres(e.GetProperty("at"), room.Unit),
            new Stretch(e.Member("from").Length(room.Unit) ?? double.MinValue, e.Member("to").Length(room.Unit) ?? double.MaxValue),
            e.Member("backing").Items().Select(b => b.GetString()!).ToList())).ToList();
    }

    public string Id { get; }
    public string? Course { get; }
    public int Layer { get; }
    public IReadOnlyList<Uv> Ring { get; }
    public Stretch Us { get; }
    public Stretch Vs { get; }
    public double Area { get; }
    public bool IsBox { get; }
    public double Width { get; }
    public double Length { get; }

    /// <summary>As stated, in ft² or m².</summary>
    public double? StatedArea { get; }
    public double Screws { get; }
    public string? StockId { get; }
    public IReadOnlyList<GivenEnd> Ends { get; }
}
