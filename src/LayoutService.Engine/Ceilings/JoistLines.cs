using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// Joists as what board is screwed to, in the room turned over (see <see cref="FramedRoom.Turned"/>): a bearing line under the middle of
/// each joist, or of several that act as one, as far as it runs.
/// </summary>
/// <param name="Line">The line, in the frame of the room turned over.</param>
/// <param name="Face">From outer face to outer face across the joists.</param>
/// <param name="Members">The joists in it, by their index.</param>
public sealed record JoistLine(BearingLine Line, Span Face, IReadOnlyList<int> Members)
{
    /// <summary>Rising across the joists. Joists that run on from zone to zone are one line.</summary>
    public static IReadOnlyList<JoistLine> Of(FramedRoom room)
    {
        var found = new List<JoistLine>();
        foreach (var zone in room.Joists.Zones)
        {
            var next = 0;
            for (var s = zone.FirstSupport; s < zone.FirstSupport + zone.SupportCount; s++)
            {
                var support = room.Joists.Supports[s];
                IReadOnlyList<int> members = [.. zone.Members.Skip(next).Take(support.MemberCount)];
                next += support.MemberCount;
                var before = found.FindIndex(l => l.Members.SequenceEqual(members) && l.Line.Stretches[0].Hi == zone.Along.Lo);
                var along = before < 0 ? zone.Along : new Span(found[before].Line.Stretches[0].Lo, zone.Along.Hi);
                var line = new JoistLine(new BearingLine(support.Middle, [along], true), new Span(support.Lo, support.Hi), members);
                if (before < 0)
                {
                    found.Add(line);
                }
                else
                {
                    found[before] = line;
                }
            }
        }

        return [.. found.OrderBy(l => l.Line.At).ThenBy(l => l.Line.Stretches[0].Lo)];
    }
}
