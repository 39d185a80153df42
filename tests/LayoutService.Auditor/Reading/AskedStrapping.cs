using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>What the request asks of the straps, in mm, with the design's defaults.</summary>
public sealed class AskedStrapping
{
    public AskedStrapping(JsonElement? strapping, bool imperial)
    {
        var unit = imperial ? 25.4 : 1;
        var size = strapping.Member("size");
        Direct = strapping.Member("method").Text() == "direct";
        FaceIsGiven = size.Member("face") is not null;
        Face = size.Member("face").Length(unit) ?? NamedFace(size.Member("name").Text() ?? "1x3", imperial);
        MaxSpacing = strapping.Member("maxSpacing").Length(unit) ?? (imperial ? 406.4 : 400);
        MinPiece = strapping.Member("minPiece").Length(unit) ?? (imperial ? 609.6 : 600);
        MinPieceIsGiven = strapping.Member("minPiece") is not null;
        JointsAllowed = strapping.Member("jointsAllowed") is { } joints
            ? joints.EnumerateArray().Select(j => j.GetString()!).ToHashSet() : ["on-joist"];
        Stock = strapping.Member("stock").Items().Select(s => new AskedStock(s.GetProperty("id").GetString()!,
            LengthText.Millimetres(s.GetProperty("length"), unit), 0, (int)(s.Member("packSize").Decimal() ?? 1),
            s.Member("packPrice").Decimal(), (int?)s.Member("quantity").Decimal(), unit)).ToList();
        Kerf = strapping.Member("kerf").Length(unit);
        EndTrim = strapping.Member("endTrim").Length(unit);
        EndClearance = strapping.Member("endClearance").Length(unit);
        LongestHandled = strapping.Member("longestHandled").Length(unit);
    }

    /// <summary>True when the board is to be screwed to the joists.</summary>
    public bool Direct { get; }

    /// <summary>Width of the strap's face, mm. A named size may be read 0.5 mm apart by different people.</summary>
    public double Face { get; internal set; }
    public bool FaceIsGiven { get; }
    public double MaxSpacing { get; }
    public double MinPiece { get; }
    public bool MinPieceIsGiven { get; }
    public IReadOnlySet<string> JointsAllowed { get; }
    public IReadOnlyList<AskedStock> Stock { get; }
    public double? Kerf { get; }
    public double? EndTrim { get; }
    public double? EndClearance { get; }
    public double? LongestHandled { get; }

    /// <summary>How far a butt end may lie off the row's centre: 19 mm of wood under each end stays.</summary>
    public double ButtReach => (Face / 2) - 19;

    private static double NamedFace(string name, bool imperial) => name.Replace('×', 'x').Split('x')[^1].Trim() switch
    {
        "2" => imperial ? 38.1 : 38,
        "3" => imperial ? 63.5 : 64,
        "4" => imperial ? 88.9 : 89,
        _ => imperial ? 63.5 : 64,
    };
}

/// <summary>What the request asks of the sheets, in mm.</summary>
public sealed class AskedSheets
{
    public AskedSheets(JsonElement? sheets, double unit)
    {
        Layers = (int)(sheets.Member("layers").Decimal() ?? 1);
        Stock = sheets.Member("stock").Items().Select(s => new AskedStock(s.GetProperty("id").GetString()!,
            LengthText.Millimetres(s.GetProperty("length"), unit), LengthText.Millimetres(s.GetProperty("width"), unit),
            (int)(s.Member("packSize").Decimal() ?? 1), s.Member("packPrice").Decimal(),
            (int?)s.Member("quantity").Decimal(), unit)).ToList();
        CutAllowance = sheets.Member("cutAllowance").Length(unit) ?? (unit > 1 ? 3.175 : 3);
        MinStagger = sheets.Member("minStagger").Length(unit);
        ButtCost = sheets.Member("jointCost").Member("butt").Decimal();
        TaperedCost = sheets.Member("jointCost").Member("tapered").Decimal();
    }

    public int Layers { get; }
    public IReadOnlyList<AskedStock> Stock { get; }

    /// <summary>How much shorter than drawn a board is cut at each wall, mm (3 mm or 1/8 in where not given).</summary>
    public double CutAllowance { get; }
    public double? MinStagger { get; }
    public decimal? ButtCost { get; }
    public decimal? TaperedCost { get; }
}
