using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>A duct, pipe or the like of the request, against a fixture.</summary>
internal static class ServiceReach
{
    /// <summary>True when the fixture's body comes within the service's clearance, in height and seen from above, by more than <paramref name="slack"/> too near; a driver box lies on the joists' lower sides, in a bulkhead on its board.</summary>
    public static bool Near(JsonElement service, GivenFixture fixture, AskedRoom room, double gap, double slack, double? board = null)
    {
        var hot = service.Member("hot") is { ValueKind: JsonValueKind.True };
        var clear = service.Member("clearance").Length(room.Unit) ?? (hot ? room.Imperial ? 25.4 : 25 : 0);
        var bottom = service.Member("bottom").Length(room.Unit) ?? 0;
        var top = service.Member("top").Length(room.Unit) ?? double.MinValue;
        var body = Math.Max(fixture.Asked.Body, fixture.Asked.Box.Count > 0 ? (board ?? gap) + fixture.Asked.Box[0] : 0);
        if (bottom + clear <= gap - body + 0.01 || top - clear >= gap)
        {
            return false;
        }

        var half = (service.Member("width").Length(room.Unit) ?? 0) / 2;
        return Legs(service, room).Any(leg => To(fixture, leg, half, slack > 0) < clear + slack) || Holds(service, fixture, room);
    }

    // a leg ends square; one askew to the joists counts strictly only where the fixture lies beside it
    private static double To(GivenFixture fixture, Wall leg, double half, bool loosely)
    {
        if (leg.IsAlong || leg.IsSquare)
        {
            return leg.IsAlong
                ? fixture.To(leg.Us, new(leg.Vs.From - half, leg.Vs.To + half))
                : fixture.To(new(leg.Us.From - half, leg.Us.To + half), leg.Vs);
        }

        double du = leg.B.U - leg.A.U, dv = leg.B.V - leg.A.V;
        var share = (((fixture.At.U - leg.A.U) * du) + ((fixture.At.V - leg.A.V) * dv)) / ((du * du) + (dv * dv));
        return loosely || share is >= 0 and <= 1 ? fixture.To(leg) - half : double.MaxValue;
    }

    /// <summary>Distance from a place to the middle of the service's path, or to its outline; 0 inside.</summary>
    public static double From(JsonElement service, Uv at, AskedRoom room) => Legs(service, room).Min(leg => leg.Distance(at)) is var off
        && service.Member("outline") is not null && new Border([Ring(service, room)]).AcrossAt(at.U).Any(p => p.From < at.V && at.V < p.To) ? 0 : off;

    private static IEnumerable<Wall> Legs(JsonElement service, AskedRoom room)
    {
        if (service.Member("path") is { } path)
        {
            var corners = path.EnumerateArray().Select(p => p.Point(room.Unit)).Select(p => room.Frame.At(p.X, p.Y)).ToList();
            return corners.Skip(1).Select((to, i) => new Wall(0, corners[i], to));
        }

        var ring = Ring(service, room);
        return ring.Select((from, i) => new Wall(0, from, ring[(i + 1) % ring.Count]));
    }

    private static bool Holds(JsonElement service, GivenFixture fixture, AskedRoom room) =>
        service.Member("outline") is not null
        && new Border([Ring(service, room)]).AcrossAt(fixture.At.U).Any(p => p.From < fixture.At.V && fixture.At.V < p.To);

    private static List<Uv> Ring(JsonElement service, AskedRoom room) =>
        service.GetProperty("outline").Ring(room.Unit).Select(p => room.Frame.At(p.X, p.Y)).ToList();
}
