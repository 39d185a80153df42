using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>
/// A fixture as the request asks for it, mm in the frame of the joists, with the documented defaults. At is null for the
/// lights of a grid, which the plan places. A rectangle askew to the joists is read as its box.
/// </summary>
public sealed class AskedFixture
{
    public AskedFixture(JsonElement fixture, string id, AskedRoom room, bool ofGrid)
    {
        var unit = room.Unit;
        Id = id;
        Kind = fixture.GetProperty("kind").GetString()!;
        if (fixture.Member("at") is { } at)
        {
            var (x, y) = at.Point(unit);
            At = room.Frame.At(x, y);
        }

        var cutout = fixture.GetProperty("cutout");
        Round = cutout.Member("diameter") is not null;
        Width = (cutout.Member("diameter") ?? cutout.Member("width")).Length(unit)!.Value;
        Height = (cutout.Member("diameter") ?? cutout.Member("height")).Length(unit)!.Value;
        var (cos, sin) = (Math.Abs(room.Frame.Along.X), Math.Abs(room.Frame.Along.Y));
        HalfU = (Round ? Width : (Width * cos) + (Height * sin)) / 2;
        HalfV = (Round ? Width : (Width * sin) + (Height * cos)) / 2;
        var (inches, millimetres) = Kind switch
        {
            "slim-light" => (1, 25),
            "can-light" => (7.5, 190),
            "alarm" or "box" => (2.125, 54),
            "register" or "return" => (6, 150),
            "fan" => (8, 200),
            "access-door" => (0, 0),
            "sprinkler" => (2, 50),
            _ => (4, 100),
        };
        Body = fixture.Member("bodyDepth").Length(unit) ?? (room.Imperial ? inches * 25.4 : millimetres);
        var clip = fixture.Member("clipReach").Length(unit) ?? (Kind is "slim-light" or "speaker" ? room.Imperial ? 19.05 : 19 : 0);
        Edge = fixture.Member("edgeClearance").Length(unit) ?? (room.Imperial ? 12.7 : 13);
        Clear = Math.Max(clip, Edge);
        MaxShift = fixture.Member("maxShift").Length(unit) ?? (ofGrid ? room.Imperial ? 152.4 : 150 : 0);
        Contact = fixture.Member("insulationContact") is { ValueKind: JsonValueKind.True };
        Box = fixture.Member("remoteBox") is { } box
            ? [.. new[] { "width", "length", "height" }.Select(n => LengthText.Millimetres(box.GetProperty(n), unit)).Order()]
            : [];
    }

    public string Id { get; }
    public string Kind { get; }
    public Uv? At { get; }
    public bool Round { get; }
    public double Width { get; }
    public double Height { get; }
    public double HalfU { get; }
    public double HalfV { get; }

    /// <summary>Reach up from the finished face.</summary>
    public double Body { get; }

    /// <summary>What the hole keeps from walls.</summary>
    public double Edge { get; }

    /// <summary>What the hole keeps from straps and seams.</summary>
    public double Clear { get; }

    public double MaxShift { get; }
    public bool Contact { get; }

    /// <summary>The driver box's three sizes, least first; empty without one.</summary>
    public IReadOnlyList<double> Box { get; }

    /// <summary>True for an access panel that the plan added for a service.</summary>
    public bool Panel { get; private init; }

    public bool Light => Kind is "slim-light" or "can-light";

    /// <summary>Every fixture of the request by id, and the grid's lights as the answer names them.</summary>
    public static Dictionary<string, AskedFixture> Of(GivenPlan plan)
    {
        var asked = plan.Room.Json.Member("fixtures").Items()
            .Select((f, i) => new AskedFixture(f, f.Member("id").Text() ?? $"fixture-{i + 1}", plan.Room, false)).ById(f => f.Id);
        foreach (var id in plan.Json.Member("lightGrid").Member("fixtures").Items().Select(i => i.GetString()!))
        {
            asked.TryAdd(id, new AskedFixture(plan.Room.Json.Member("lightGrid").Member("fixture")!.Value, id, plan.Room, true));
        }

        foreach (var panel in plan.Json.Member("accessPanels").Items())
        {
            // placed by the plan for a service; how far from it is looked at with the service
            var id = panel.GetProperty("id").GetString()!;
            var side = panel.GetProperty("size").GetRawText();
            if (!plan.Json.Member("fixtures").Items().Any(f => f.Member("id").Text() == id))
            {
                continue;
            }

            asked.TryAdd(id, new AskedFixture(
                JsonDocument.Parse($$"""{"kind":"access-door","cutout":{"width":{{side}},"height":{{side}}},"maxShift":{{(plan.Room.Imperial ? 10 : 250)}},"insulationContact":true}""").RootElement, id, plan.Room, false) { Panel = true });
        }

        return asked;
    }
}
