using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>
/// The digest of all that decides a plan: the survey with its defaults, lengths as whole units, and both versions. Each
/// value is written after its name, so that no two surveys are written alike.
/// </summary>
internal static class SurveyDigest
{
    public static string Of(Survey survey)
    {
        var text = new StringBuilder();
        Add("engine", LayoutEngine.EngineVersion);
        Add("rules", PublishedTables.Current.RulesVersion);
        Add("units", survey.Units);
        Add("ruleset", survey.Ruleset);
        Add("effort", survey.Effort);
        foreach (var (rule, value) in survey.RuleOverrides.OrderBy(o => o.Key, StringComparer.Ordinal))
        {
            Add("rule", rule);
            Add("value", Figures.Plain(value, 12));
        }

        AddRoom(survey.Room, Add);
        AddJoists(survey.JoistFields, Add);
        AddStrapping(survey.Strapping, Add);
        AddSheets(survey.Sheets, Add);
        AddServices(survey.Services, Add);
        FixtureDigest.Add(survey, Add);
        AddBulkheads(survey.Bulkheads, Add);
        PartitionMapping.Digest(survey.Partitions, Add);
        AddInsulation(survey.Insulation, Add);
        AddPrices(survey.Prices, Add);
        AccessDigest.Add(survey.WayIn, survey.Crew, Add);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));

        void Add(string name, object? value)
        {
            if (value is null)
            {
                text.Append(name).Append("=none\n");
                return;
            }

            var written = value switch
            {
                Length length => length.Units.ToString(CultureInfo.InvariantCulture),
                Point point => string.Create(CultureInfo.InvariantCulture, $"{point.X.Units},{point.Y.Units}"),
                _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
            };
            text.Append(name).Append('=').Append(written.Length).Append(':').Append(written).Append('\n');
        }
    }

    private static void AddRoom(RoomSurvey room, Action<string, object?> add)
    {
        AddRing(room.Outline, add);
        add("onFinish", room.OutlineOnFinish);
        foreach (var opening in room.Openings)
        {
            add("opening", opening.Id);
            add("kind", opening.Kind);
            add("clearance", opening.Clearance);
            if (opening.Headroom is { } headroom)
            {
                add("headroom", headroom);
            }

            AddRing(opening.Outline, add);
        }

        foreach (var height in room.Heights)
        {
            add("height", height.FloorToJoist);
            add("at", height.At);
        }

        foreach (var (edge, kind) in room.Walls.OrderBy(w => w.Key))
        {
            add("wall", edge);
            add("kind", kind);
        }

        if (room.Existing is { } old)
        {
            add("oldCeiling", old.Material);
            add("thickness", old.Thickness);
            add("stays", old.Stays);
        }

        foreach (var (name, neighbour) in new[] { ("above", room.Above), ("below", room.Below) })
        {
            if (neighbour is not null)
            {
                add(name, neighbour.Use);
                add("heated", neighbour.Heated);
            }
        }

        add("floorBuildUp", room.FloorBuildUp);
        add("use", room.Use);
        add("existing", room.ExistingBuilding);
        add("suite", room.SecondarySuite);
    }

    private static void AddRing(IReadOnlyList<Point> ring, Action<string, object?> add)
    {
        add("corners", ring.Count);
        foreach (var corner in ring)
        {
            add("corner", corner);
        }
    }

    private static void AddJoists(IReadOnlyList<JoistField> fields, Action<string, object?> add)
    {
        foreach (var field in fields)
        {
            add("field", field.Id);
            AddRing(field.Region ?? [], add);
            add("degrees", Figures.Plain(field.RunDegrees, 12));
            add("kind", field.Kind);
            add("depth", field.Depth);
            add("face", field.Face);
            add("spacing", field.Spacing);
            add("first", field.First);
            add("species", field.Species);
            add("grade", field.Grade);
            add("clearSpan", field.ClearSpan);
            add("bridging", field.Bridging);
            foreach (var position in field.Positions ?? [])
            {
                add("position", position);
            }

            foreach (var reading in field.Undersides)
            {
                add("underside", reading.At);
                add("level", reading.Level);
            }
        }
    }

    private static void AddServices(IReadOnlyList<Service>? services, Action<string, object?> add)
    {
        add("services", services?.Count);
        foreach (var service in services ?? [])
        {
            add("service", service.Id);
            add("kind", service.Kind);
            AddRing(service.Path ?? [], add);
            add("width", service.Width);
            AddRing(service.Outline ?? [], add);
            add("top", service.Top);
            add("bottom", service.Bottom);
            add("clearance", service.Clearance);
            add("hot", service.Hot);
            add("needsReach", service.NeedsReach);
        }
    }

    private static void AddBulkheads(IReadOnlyList<BulkheadWish> bulkheads, Action<string, object?> add)
    {
        foreach (var bulkhead in bulkheads)
        {
            add("bulkhead", bulkhead.Id);
            add("edges", string.Join(',', bulkhead.Edges));
            foreach (var hidden in bulkhead.Hides)
            {
                add("hides", hidden);
            }

            AddRing(bulkhead.Outline ?? [], add);
            add("width", bulkhead.Width);
            add("drop", bulkhead.Drop);
            add("boardedAbove", bulkhead.BoardedAbove);
            add("frame", bulkhead.Frame.Size);
            add("thickness", bulkhead.Frame.Thickness);
            add("face", bulkhead.Frame.Face);
            foreach (var stock in bulkhead.Frame.Stock)
            {
                add("stock", stock.Id);
                add("length", stock.Length);
                AddBuying(stock.Sku, stock.PackSize, stock.PackPrice, stock.Quantity, add);
            }
        }
    }

    private static void AddStrapping(StrappingWish wish, Action<string, object?> add)
    {
        if (wish.Direct)
        {
            add("method", "direct");
        }

        add("size", wish.SizeName);
        add("thickness", wish.Thickness);
        add("face", wish.Face);
        add("maxSpacing", wish.MaxSpacing);
        add("joints", wish.JointsAllowed);
        add("minPiece", wish.MinPiece);
        add("kerf", wish.Kerf);
        add("endTrim", wish.EndTrim);
        add("endClearance", wish.EndClearance);
        add("longestHandled", wish.LongestHandled);
        foreach (var stock in wish.Stock)
        {
            add("strap", stock.Id);
            add("length", stock.Length);
            AddBuying(stock.Sku, stock.PackSize, stock.PackPrice, stock.Quantity, add);
        }
    }

    private static void AddSheets(SheetWish wish, Action<string, object?> add)
    {
        add("type", wish.Type);
        add("thickness", wish.Thickness);
        add("layers", wish.Layers);
        add("textured", wish.Textured);
        add("rating", wish.FireRating);
        add("cutAllowance", wish.CutAllowance);
        add("minStagger", wish.MinStagger);
        add("buttCost", Figures.Plain(wish.ButtCostPerMetre, 12));
        add("taperedCost", Figures.Plain(wish.TaperedCostPerMetre, 12));
        foreach (var stock in wish.Stock)
        {
            add("sheet", stock.Id);
            add("width", stock.Width);
            add("length", stock.Length);
            AddBuying(stock.Sku, stock.PackSize, stock.PackPrice, stock.Quantity, add);
        }
    }

    private static void AddBuying(string? sku, int packSize, decimal? packPrice, int? quantity, Action<string, object?> add)
    {
        add("sku", sku);
        add("packSize", packSize);
        add("packPrice", packPrice is { } price ? Figures.Plain(price, 12) : null);
        add("quantity", quantity);
    }

    private static void AddInsulation(InsulationWish? wish, Action<string, object?> add)
    {
        add("insulation", wish?.Purpose);
        if (wish is null)
        {
            return;
        }

        foreach (var depth in wish.JoistDepths)
        {
            add("joistDepth", depth);
        }

        AddRing(wish.Region ?? [], add);
        foreach (var batt in wish.Batts)
        {
            add("batt", batt.Id);
            add("thickness", batt.Thickness);
            add("width", batt.Width);
            add("length", batt.Length);
            add("rsi", Figures.Plain(batt.Rsi, 12));
            add("splittable", batt.Splittable);
            AddBuying(null, batt.PackSize, batt.PackPrice, null, add);
        }
    }

    private static void AddPrices(PriceList? prices, Action<string, object?> add)
    {
        add("currency", prices?.Currency);
        foreach (var item in prices?.Items ?? [])
        {
            add("item", item.Code);
            add("id", item.Id);
            AddBuying(item.Sku, 1, item.PackPrice, null, add);
            add("size", Figures.Plain(item.PackSize, 12));
        }

        foreach (var (name, fraction) in (prices?.Waste ?? new Dictionary<string, decimal>()).OrderBy(w => w.Key, StringComparer.Ordinal))
        {
            add("waste", name);
            add("fraction", Figures.Plain(fraction, 12));
        }

        PriceDigest.Add(prices, add);
    }
}
