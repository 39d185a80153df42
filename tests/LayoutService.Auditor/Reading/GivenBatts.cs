using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>One strip of batts as the answer has it, mm and in the frame of the joists; R as RSI, mass in kg.</summary>
internal sealed record GivenFill(
    string Id, string Bay, IReadOnlyList<Uv> Ring, double Depth, double Top, double Bottom, double Thickness, string Batt, bool Split,
    double Width, double Length, double Rsi, double Mass, double Area, IReadOnlyList<string> Codes)
{
    public Stretch Vs { get; } = new(Ring.Min(p => p.V), Ring.Max(p => p.V));
    public Stretch Us { get; } = new(Ring.Min(p => p.U), Ring.Max(p => p.U));

    /// <summary>Area of the ring, mm².</summary>
    public double Drawn { get; } = Math.Abs(Border.SignedArea(Ring));
}

/// <summary>A part of a bay that the answer leaves without a batt.</summary>
internal sealed record GivenOpen(string Bay, IReadOnlyList<Uv> Ring, double Area, int Reasons, bool Wood);

/// <summary>The block <c>insulation</c> of an answer.</summary>
internal sealed class GivenBatts
{
    public GivenBatts(JsonElement block, AskedRoom room)
    {
        var (area, mass, r) = room.Imperial ? (304.8 * 304.8, 0.45359237, 0.176110) : (1e6, 1.0, 1.0);
        IReadOnlyList<Uv> Ring(JsonElement of) => [.. of.GetProperty("outline").Ring(room.Unit).Select(p => room.Frame.At(p.X, p.Y))];
        double Number(JsonElement of, string name) => of.Member(name).Double() ?? throw new FormatException($"{name} is missing");
        Fills = [.. block.GetProperty("fills").EnumerateArray().Select(f => new GivenFill(
            f.GetProperty("id").GetString()!, f.GetProperty("bay").GetString()!, Ring(f),
            Number(f, "depthAvailable") * room.Unit, Number(f, "top") * room.Unit, Number(f, "bottom") * room.Unit,
            Number(f, "thickness") * room.Unit, f.GetProperty("batt").GetString()!, f.GetProperty("split").GetBoolean(),
            Number(f, "width") * room.Unit, Number(f, "length") * room.Unit, Number(f, "r") * r, Number(f, "mass") * mass,
            Number(f, "area") * area, [.. f.Member("reasons").Items().Select(i => i.Member("code").Text()).OfType<string>()]))];
        Open = [.. block.GetProperty("uncovered").EnumerateArray().Select(u => new GivenOpen(
            u.GetProperty("bay").GetString()!, Ring(u), Number(u, "area") * area, u.Member("reasons").Items().Count(),
            u.Member("reasons").Items().All(r => r.Member("code").Text() == "blocking")))];
        AreaRsi = Number(block, "areaR") * r;
        Framing = Number(block, "framingFraction");
        Area = Number(block, "area") * area;
    }

    public IReadOnlyList<GivenFill> Fills { get; }
    public IReadOnlyList<GivenOpen> Open { get; }
    public double AreaRsi { get; }
    public double Framing { get; }

    /// <summary>Area that was to be filled, mm².</summary>
    public double Area { get; }
}
