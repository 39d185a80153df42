using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Writes walls, joists and bays in the caller's coordinates.</summary>
public static class JoistWriter
{
    /// <summary>Ids of the joists by their index in the working frame; numbered in the caller's direction across, then along.</summary>
    public static string[] Names(FramedRoom room)
    {
        var names = new string[room.Joists.Members.Length];
        var order = Order(room);
        for (var n = 0; n < order.Length; n++)
        {
            names[order[n]] = $"J{(room.Survey.Part?.Taken.Joists ?? 0) + n + 1}";
        }

        return names;
    }

    public static IReadOnlyList<WallLine> Walls(FramedRoom room)
    {
        var outline = room.Survey.Room.Outline;
        return [.. outline.Select((from, i) =>
        {
            var to = outline[(i + 1) % outline.Count];
            var length = Rings.DistanceBetween(room.Outline[i], room.Outline[(i + 1) % outline.Count]);
            return new WallLine($"W{i + 1}", i, from, to, new Length((long)Math.Round(length)), room.Survey.Room.Walls.TryGetValue(i, out var kind) ? kind : null);
        })];
    }

    public static JoistPlan Joists(FramedRoom room)
    {
        var (frame, joists, names) = (room.Frame, room.Joists, Names(room));
        var with = Partners(room);
        var members = new List<JoistMember>(names.Length);
        foreach (var index in Order(room))
        {
            var joist = joists.Members[index];
            var (from, to) = frame.MirrorU ? (joist.Along.Hi, joist.Along.Lo) : (joist.Along.Lo, joist.Along.Hi);
            var field = room.Survey.JoistFields[joist.Field];
            members.Add(new JoistMember(
                names[index],
                field.Id,
                new Length(frame.AcrossIn(joist.At)),
                field.Face,
                frame.Out(new Uv(from, joist.At)),
                frame.Out(new Uv(to, joist.At)),
                with[index] is { } other ? names[other] : null));
        }

        return new JoistPlan(members, Bays(room));
    }

    private static int[] Order(FramedRoom room)
    {
        var (frame, members) = (room.Frame, room.Joists.Members);
        return [.. Enumerable.Range(0, members.Length)
            .OrderBy(i => frame.AcrossIn(members[i].At))
            .ThenBy(i => Math.Min(frame.AlongIn(members[i].Along.Lo), frame.AlongIn(members[i].Along.Hi)))];
    }

    // the first joist, in the caller's order, of the support that a joist is one of several in
    private static int?[] Partners(FramedRoom room)
    {
        var with = new int?[room.Joists.Members.Length];
        foreach (var zone in room.Joists.Zones)
        {
            var next = 0;
            for (var s = zone.FirstSupport; s < zone.FirstSupport + zone.SupportCount; s++)
            {
                var support = room.Joists.Supports[s];
                var together = zone.Members.Skip(next).Take(support.MemberCount).ToList();
                next += support.MemberCount;
                foreach (var member in together.Where(_ => support.Doubled))
                {
                    with[member] ??= room.Frame.MirrorV ? together[^1] : together[0];
                }
            }
        }

        return with;
    }

    // clear spaces between joist faces, and between the outline's ends and the first and last face, zone by zone
    private static List<JoistBay> Bays(FramedRoom room)
    {
        var bays = new List<JoistBay>();
        var frame = room.Frame;
        var zones = frame.MirrorU ? room.Joists.Zones.Reverse() : room.Joists.Zones;
        foreach (var zone in zones)
        {
            var (a, b) = (frame.AlongIn(zone.Along.Lo), frame.AlongIn(zone.Along.Hi));
            (Length, Length)? along = room.Joists.Zones.Length == 1 ? null : (new Length(Math.Min(a, b)), new Length(Math.Max(a, b)));
            long at = 0;
            IReadOnlyList<int> before = [];
            foreach (var (face, low, high) in Faces(room, zone).OrderBy(s => s.Face.Lo))
            {
                Add(at, face.Lo, [.. before.Append(low).Distinct()], along);
                at = Math.Max(at, face.Hi);
                before = [high];
            }

            Add(at, frame.SizeV, before, along);
        }

        return bays;

        void Add(long from, long to, IReadOnlyList<int> fields, (Length, Length)? along)
        {
            if (to - from > FloorJoists.TouchingFaces)
            {
                bays.Add(new JoistBay($"BAY{(room.Survey.Part?.Taken.Bays ?? 0) + bays.Count + 1}", new Length(from), new Length(to), new Length(to - from), fields, along));
            }
        }
    }

    // the faces of a zone's supports from the caller's side, each with the fields of its joists at either side of it
    private static IEnumerable<(Span Face, int Low, int High)> Faces(FramedRoom room, JoistZone zone)
    {
        var next = 0;
        for (var s = zone.FirstSupport; s < zone.FirstSupport + zone.SupportCount; s++)
        {
            var support = room.Joists.Supports[s];
            var (a, b) = (room.Frame.AcrossIn(support.Lo), room.Frame.AcrossIn(support.Hi));
            var (first, last) = (room.Joists.Members[zone.Members[next]].Field, room.Joists.Members[zone.Members[next + support.MemberCount - 1]].Field);
            next += support.MemberCount;
            yield return (new Span(Math.Min(a, b), Math.Max(a, b)), room.Frame.MirrorV ? last : first, room.Frame.MirrorV ? first : last);
        }
    }
}
