using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Says what each mount hangs from: the joist over it, or the block that is put between joists for it.</summary>
public static class MountWriter
{
    public static IReadOnlyList<PlannedMount> Write(FramedRoom room, StrappingPlan strapping) =>
        [.. room.Survey.Mounts.Select(mount =>
        {
            var under = MountBlocks.Under(room, room.Frame.In(mount.At));
            if (under is { } support)
            {
                var names = JoistWriter.Names(room);
                IReadOnlyList<string> joists = [.. room.Joists.ZoneAt(room.Frame.In(mount.At).U).Members
                    .Where(j => support.Lo <= room.Joists.Members[j].At && room.Joists.Members[j].At <= support.Hi).Select(j => names[j]).Order(StringComparer.Ordinal)];
                return new PlannedMount(mount, joists, Sentence.Of("hang_from_joist", "Hang it from the joist over it, never from a strap."));
            }

            IReadOnlyList<string> blocks = [.. strapping.Nailers.Where(n => n.Reasons.Any(r => r.Kind == "mount" && r.Of.Contains(mount.Id))).Select(n => n.Id)];
            return blocks.Count > 0
                ? new PlannedMount(mount, blocks, Sentence.Of("hang_from_block", "Hang it from the block between the joists, never from a strap."))
                : new PlannedMount(mount, [], Sentence.Of("no_joists_beside_mount", "No joist stands on both sides of it: it needs framing of its own, to a design by someone licensed to give one."));
        })];
}
