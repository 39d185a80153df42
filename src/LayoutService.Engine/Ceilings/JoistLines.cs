using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// Joists as what board is screwed to, in the room turned over (see <see cref="FramedRoom.Turned"/>): a bearing line under the middle of
/// each joist, or of several that act as one, as far as there is wood for both ends of a butt on it. Where joists lap over a beam the line of
/// each runs on under the two.
/// </summary>
/// <param name="Line">The line, in the frame of the room turned over.</param>
/// <param name="Members">The joists over it, by their index.</param>
public sealed record JoistLine(BearingLine Line, IReadOnlyList<int> Members)
{
    /// <summary>Wood that each end of a butt has: 19 mm. Trade defaults; derived.</summary>
    private const long PerEnd = 19 * Length.PerMillimetre;

    /// <summary>Rising across the joists. Cost: supports × supports of a zone.</summary>
    public static IReadOnlyList<JoistLine> Of(FramedRoom room)
    {
        var found = new List<JoistLine>();
        foreach (var at in room.Joists.Supports.Select(s => s.Middle).Distinct().Order())
        {
            var stretches = new List<Span>();
            var members = new SortedSet<int>();
            foreach (var zone in room.Joists.Zones)
            {
                var next = 0;
                for (var s = zone.FirstSupport; s < zone.FirstSupport + zone.SupportCount; s++)
                {
                    var support = room.Joists.Supports[s];
                    if (support.Middle == at || (support.Lo + PerEnd <= at && at + PerEnd <= support.Hi))
                    {
                        stretches.Add(zone.Along);
                        members.UnionWith(zone.Members.Skip(next).Take(support.MemberCount));
                    }

                    next += support.MemberCount;
                }
            }

            found.Add(new JoistLine(new BearingLine(at, Region.Merge(stretches), true), [.. members]));
        }

        return found;
    }

    /// <summary>
    /// The least stagger where several zones have lines of their own, which then cannot be counted as spaces: half a space less than the
    /// rows asked for, of the middle one of all bays. Null in one zone.
    /// </summary>
    public static Length? Stagger(FramedRoom room)
    {
        var bays = room.Joists.Zones
            .SelectMany(z => Enumerable.Range(z.FirstSupport, Math.Max(0, z.SupportCount - 1)).Select(s => room.Joists.Supports[s + 1].Middle - room.Joists.Supports[s].Middle))
            .Order().ToList();
        return room.Joists.Zones.Length == 1 || bays.Count == 0
            ? null
            : new Length(Math.Max(0, ((2 * room.Survey.Sheets.StaggerRows) - 1) * bays[bays.Count / 2] / 2));
    }
}
