using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>A batt that may be bought: mm, and RSI where the request says it.</summary>
internal sealed record AskedBatt(string Id, double Thickness, double Width, double Length, double? Rsi, bool Splittable);

/// <summary>A service in the bays, mm, heights down from the underside of the joists; Rings are its footprint.</summary>
internal sealed record AskedService(
    string Id, string Kind, bool Hot, bool Reach, double Top, double Bottom, double Clearance, IReadOnlyList<IReadOnlyList<Uv>> Rings);

/// <summary>What a request says of batts. Defaults are those that the contract states.</summary>
internal sealed class AskedBatts
{
    private static readonly string[] Reachable = ["box", "valve", "gas-valve", "damper", "cleanout"];

    public AskedBatts(AskedRoom room)
    {
        var wish = room.Json.Member("insulation");
        var said = wish is { } members && members.EnumerateObject().Any(m => m.Value.ValueKind != JsonValueKind.Null);
        Wanted = said && wish.Member("purpose").Text() != "none";
        var field = room.Json.GetProperty("joistFields")[0];
        var depth = field.Member("depth").Length(room.Unit);
        Services = [.. room.Json.Member("services").Items().Select((s, i) => Service(s, i, depth, room))];
        Listed = wish.Member("batts") is not null;
        Batts = [.. wish.Member("batts").Items().Select((b, i) => new AskedBatt(
            b.Member("id").Text() ?? $"batt-{i + 1}",
            b.Member("thickness").Length(room.Unit) ?? 0,
            b.Member("width").Length(room.Unit) ?? 0,
            b.Member("length").Length(room.Unit) ?? 0,
            b.Member("r").Double() is { } r ? r * (room.Imperial ? 0.176110 : 1) : null,
            b.Member("splittable") is { ValueKind: JsonValueKind.True }))];
        Region = wish.Member("region")?.Ring(room.Unit).Select(p => room.Frame.At(p.X, p.Y)).ToList();
    }

    public bool Wanted { get; }

    /// <summary>True when the request lists the batts; the catalogue's are taken otherwise.</summary>
    public bool Listed { get; }

    public IReadOnlyList<AskedBatt> Batts { get; }
    public IReadOnlyList<AskedService> Services { get; }
    public IReadOnlyList<Uv>? Region { get; }

    private static AskedService Service(JsonElement service, int index, double? depth, AskedRoom room)
    {
        var (kind, hot) = (service.Member("kind").Text() ?? "other", service.Member("hot") is { ValueKind: JsonValueKind.True });
        var bottom = service.Member("bottom").Length(room.Unit) ?? 0;
        var half = (service.Member("width").Length(room.Unit) ?? 0) / 2;
        IReadOnlyList<IReadOnlyList<Uv>> rings = service.Member("outline") is { } outline
            ? [[.. outline.Ring(room.Unit).Select(p => room.Frame.At(p.X, p.Y))]]
            : Legs([.. service.Member("path").Items().Select(p => p.Point(room.Unit)).Select(p => room.Frame.At(p.X, p.Y))], half);
        return new AskedService(
            service.Member("id").Text() ?? $"service-{index + 1}", kind, hot,
            service.Member("needsReach") is { } said ? said.ValueKind == JsonValueKind.True : Reachable.Contains(kind),
            service.Member("top").Length(room.Unit) ?? Math.Min(bottom, -(depth ?? (room.Imperial ? 9.25 * 25.4 : 235))),
            bottom,
            service.Member("clearance").Length(room.Unit) ?? (hot ? (room.Imperial ? 25.4 : 25) : 0),
            rings);
    }

    /// <summary>One rectangle for each leg, its own length only: what surely is metal.</summary>
    private static List<IReadOnlyList<Uv>> Legs(List<Uv> path, double half)
    {
        var rings = new List<IReadOnlyList<Uv>>();
        for (var i = 0; i + 1 < path.Count; i++)
        {
            var (a, b) = (path[i], path[i + 1]);
            var size = Math.Sqrt(Math.Pow(b.U - a.U, 2) + Math.Pow(b.V - a.V, 2));
            var (u, v) = (half * (b.V - a.V) / size, -half * (b.U - a.U) / size);
            rings.Add([new(a.U + u, a.V + v), new(b.U + u, b.V + v), new(b.U - u, b.V - v), new(a.U - u, a.V - v)]);
        }

        return rings;
    }
}
