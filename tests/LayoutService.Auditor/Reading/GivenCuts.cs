using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>One length bought and what is cut from it, mm.</summary>
public sealed class GivenStick
{
    public GivenStick(JsonElement stick, double unit)
    {
        Id = stick.GetProperty("id").GetString()!;
        Length = LengthText.Millimetres(stick.GetProperty("length"), unit);
        StockId = stick.Member("stockId").Text();
        Offcut = stick.Member("offcut").Length(unit) ?? 0;
        Cuts = stick.Member("cuts").Items().Select(c => (c.GetProperty("pieceId").GetString()!,
            LengthText.Millimetres(c.GetProperty("length"), unit))).ToList();
    }

    public string Id { get; }
    public double Length { get; }
    public string? StockId { get; }
    public double Offcut { get; }
    public IReadOnlyList<(string PieceId, double Length)> Cuts { get; }
}

/// <summary>A rectangle on a sheet, mm.</summary>
public readonly record struct Box(double X, double Y, double W, double H)
{
    public double Right => X + W;
    public double Top => Y + H;
    public bool Overlaps(Box o, double by) =>
        Math.Min(Right, o.Right) - Math.Max(X, o.X) > by && Math.Min(Top, o.Top) - Math.Max(Y, o.Y) > by;

    public Box Flipped => new(Y, X, H, W);
}

/// <summary>One part cut from a sheet, as listed.</summary>
public sealed record GivenCut(string PieceId, double X, double Y, double Width, double Length, bool Turned);

/// <summary>One sheet bought, what is cut from it, and what is left.</summary>
public sealed class GivenCutSheet
{
    public GivenCutSheet(JsonElement sheet, double unit)
    {
        double Of(JsonElement e, string name) => e.Member(name).Length(unit) ?? 0;
        Id = sheet.GetProperty("id").GetString()!;
        Width = Of(sheet, "width");
        Length = Of(sheet, "length");
        StockId = sheet.Member("stockId").Text();
        Cuts = sheet.Member("cuts").Items().Select(c => new GivenCut(c.GetProperty("pieceId").GetString()!,
            Of(c, "x"), Of(c, "y"), Of(c, "width"), Of(c, "length"), c.Member("turned") is { ValueKind: JsonValueKind.True }))
            .ToList();
        Offcuts = sheet.Member("offcuts").Items().Where(o => o.Member("x") is not null)
            .Select(o => new GivenCut("", Of(o, "x"), Of(o, "y"), Of(o, "width"), Of(o, "length"), false)).ToList();
    }

    public string Id { get; }
    public double Width { get; }
    public double Length { get; }
    public string? StockId { get; }
    public IReadOnlyList<GivenCut> Cuts { get; }
    public IReadOnlyList<GivenCut> Offcuts { get; }
}
