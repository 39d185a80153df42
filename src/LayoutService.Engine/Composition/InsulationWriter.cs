using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Writes the batts in the caller's coordinates: bay by bay, and along each bay.</summary>
internal sealed class InsulationWriter
{
    private const double SquareMetre = 1e6 * Length.PerMillimetre * Length.PerMillimetre;
    private readonly FramedRoom _room;
    private readonly BattScene _scene;
    private readonly BattLayout _layout;
    private readonly int[] _order;

    public InsulationWriter(FramedRoom room, BattScene scene, BattLayout layout)
    {
        (_room, _scene, _layout) = (room, scene, layout);
        var frame = room.Frame;
        _order = [.. Enumerable.Range(0, layout.Laid.Count)
            .OrderBy(i => frame.MirrorV ? -layout.Laid[i].Across.Hi : layout.Laid[i].Across.Lo)
            .ThenBy(i => frame.MirrorU ? -layout.Laid[i].Along.Hi : layout.Laid[i].Along.Lo)];
        FillIds = new string[layout.Laid.Count];
        for (var n = 0; n < _order.Length; n++)
        {
            FillIds[_order[n]] = string.Create(CultureInfo.InvariantCulture, $"FILL{(room.Survey.Part?.Taken.Fills ?? 0) + n + 1}");
        }
    }

    /// <summary>Id of each laid batt.</summary>
    public string[] FillIds { get; }

    /// <param name="rowsOver">Ids of the rows that each laid batt slides over.</param>
    public InsulationPlan Write(InsulationPurpose purpose, ILookup<int, string> rowsOver)
    {
        var fills = _order.Select(i => Fill(i, [.. rowsOver[i]])).ToList();
        var open = _layout.Open.Select(Open).ToList();
        var all = _scene.Region.Area / SquareMetre;

        // wood between the joists counts as framing
        var (filled, left) = (fills.Sum(f => f.AreaSquareMetres), open.Where(o => o.Reasons.Any(r => r.Kind != "blocking")).Sum(o => o.AreaSquareMetres));
        var joists = Math.Max(0, all - filled - left);
        // where fields differ in depth the shallowest joist answers for all: no more is promised than is there
        var depth = new Length(_scene.Bays.Min(b => b.Depth));
        var wood = _scene.Rules.WoodRsiPerMetre * Math.Max(0.001m, depth.Millimetres / 1000m);
        return new InsulationPlan
        {
            Purpose = purpose,
            Fills = fills,
            Uncovered = [.. open.OrderBy(o => Number(o.Bay)).ThenByDescending(o => o.AreaSquareMetres)],
            AreaRsi = ParallelPaths.Rsi(fills.Select(f => (f.AreaSquareMetres, f.Rsi)), joists, left, Math.Max(0.000001m, wood), _scene.Rules.AirRsi),
            FramingFraction = all <= 0 ? 0 : decimal.Round((decimal)(joists / all), 6),
            AreaSquareMetres = all,
            HeaviestKilogramsPerSquareMetre = fills.Count == 0 ? 0 : fills.Max(f => f.KilogramsPerSquareMetre),
        };
    }

    private static int Number(string bay) => int.Parse(bay.AsSpan("BAY".Length), CultureInfo.InvariantCulture);

    private BattFill Fill(int index, IReadOnlyList<string> rows)
    {
        var laid = _layout.Laid[index];
        var layer = laid.Verdict.Layer!;
        var area = Math.Abs((double)Rings.TwiceArea(laid.Ring)) / 2 / SquareMetre;
        var perArea = decimal.Round(BattWorth.KilogramsPerSquareMetre(layer, _scene.Rules), 6);
        return new BattFill
        {
            Id = FillIds[index],
            Bay = laid.Bay,
            Outline = [.. laid.Ring.Select(_room.Frame.Out)],
            AreaSquareMetres = area,
            DepthAvailable = new Length(laid.Verdict.Depth),
            Top = new Length(laid.Verdict.Top),
            Bottom = new Length(laid.Verdict.Bottom),
            Thickness = new Length(layer.Installed),
            BattId = laid.Batt.Id,
            Split = layer.Split,
            Width = new Length(laid.CutWidth),
            Length = new Length(laid.Along.Size),
            Rsi = decimal.Round(BattWorth.Rsi(layer, _scene.Rules), 6),
            Kilograms = decimal.Round(perArea * (decimal)area, 6),
            KilogramsPerSquareMetre = perArea,
            Reasons = BattReasons.Of(laid, rows, _room.Say),
        };
    }

    private UncoveredPart Open(OpenPart part) => new(
        part.Bay,
        [.. part.Ring.Select(_room.Frame.Out)],
        Math.Abs((double)Rings.TwiceArea(part.Ring)) / 2 / SquareMetre,
        BattReasons.Of(part, _room.Say(_scene.Rules.LeastStrip)));
}
