using System.Text.Json;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Reading;

/// <summary>
/// A partition that stands before the straps, mm: its line, and the floor under it inside the room. An end within 25 mm of a wall
/// runs on to it.
/// </summary>
public sealed class AskedPartition
{
    public AskedPartition(JsonElement partition, int number, AskedRoom room)
    {
        Id = partition.Member("id").Text() ?? $"partition-{number + 1}";
        Thickness = partition.Member("thickness").Length(room.Unit)!.Value;
        Line = [.. partition.GetProperty("line").EnumerateArray().Select(room.Place)];
        List<Uv> reaching = [.. Line];
        (reaching[0], reaching[^1]) = (Reaching(reaching[1], reaching[0], room), Reaching(reaching[^2], reaching[^1], room));
        Footprint = Planes.Strip(reaching, Thickness / 2).Meet(room.Ceiling);
    }

    public string Id { get; }
    public double Thickness { get; }
    public IReadOnlyList<Uv> Line { get; }
    internal Geometry Footprint { get; }

    private static Uv Reaching(Uv from, Uv end, AskedRoom room)
    {
        if (room.Floor.Walls.Where(w => w.Ring == 0).Min(w => w.Distance(end)) > 25)
        {
            return end;
        }

        var length = Planes.Apart(from, end);
        return new(end.U + ((end.U - from.U) / length * 50), end.V + ((end.V - from.V) / length * 50));
    }
}
