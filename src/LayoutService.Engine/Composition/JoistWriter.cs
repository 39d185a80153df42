using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Writes walls, joists and bays in the caller's coordinates.</summary>
public static class JoistWriter
{
    /// <summary>Id of the joist at an index in the working frame; numbered in the caller's direction across.</summary>
    public static string Name(FramedRoom room, int index) =>
        $"J{(room.Frame.MirrorV ? room.Joists.Length - index : index + 1)}";

    public static IReadOnlyList<WallLine> Walls(FramedRoom room)
    {
        var outline = room.Survey.Room.Outline;
        return [.. outline.Select((from, i) =>
        {
            var to = outline[(i + 1) % outline.Count];
            var length = Rings.DistanceBetween(room.Outline[i], room.Outline[(i + 1) % outline.Count]);
            return new WallLine($"W{i + 1}", i, from, to, new Length((long)Math.Round(length)));
        })];
    }

    public static JoistPlan Joists(FramedRoom room)
    {
        var count = room.Joists.Length;
        var face = room.Field.Face.Units;
        var supportOf = new Support[count];
        foreach (var support in room.Supports)
        {
            Array.Fill(supportOf, support, support.FirstMember, support.MemberCount);
        }

        var members = new List<JoistMember>(count);
        for (var n = 0; n < count; n++)
        {
            var index = room.Frame.MirrorV ? count - 1 - n : n;
            var at = room.Joists[index];
            var support = supportOf[index];
            members.Add(new JoistMember(
                $"J{n + 1}",
                room.Field.Id,
                new Length(room.Frame.AcrossIn(at)),
                room.Field.Face,
                room.Frame.Out(new Uv(room.Frame.MirrorU ? room.Frame.SizeU : 0, at)),
                room.Frame.Out(new Uv(room.Frame.MirrorU ? 0 : room.Frame.SizeU, at)),
                support.Doubled ? Name(room, room.Frame.MirrorV ? support.FirstMember + support.MemberCount - 1 : support.FirstMember) : null));
        }

        return new JoistPlan(members, Bays(members, face, room.Frame.SizeV));
    }

    // clear spaces between joist faces, and between the outline's ends and the first and last face
    private static List<JoistBay> Bays(List<JoistMember> members, long face, long size)
    {
        var bays = new List<JoistBay>();
        long at = 0;
        foreach (var member in members)
        {
            Add(member.At.Units - (face / 2));
            at = Math.Max(at, member.At.Units + (face / 2));
        }

        Add(size);
        return bays;

        void Add(long to)
        {
            if (to - at > 6 * Length.PerMillimetre)
            {
                bays.Add(new JoistBay($"BAY{bays.Count + 1}", new Length(at), new Length(to), new Length(to - at)));
            }
        }
    }
}
