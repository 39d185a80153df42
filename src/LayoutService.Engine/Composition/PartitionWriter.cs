using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Writes what each partition has to do with the straps.</summary>
internal static class PartitionWriter
{
    public static IReadOnlyList<PlannedPartition> Write(FramedRoom room, ChosenCeiling chosen, CutLumber lumber, string[] rowIds, IReadOnlyList<string> nailerIds) =>
        room.Partitions.Count == 0 ? [] : [.. room.Partitions.Select(partition =>
        {
            var rows = Enumerable.Range(0, chosen.Lines.Count).Where(l => Touches(room, partition, chosen.Lines[l], chosen)).ToList();
            var blocks = Enumerable.Range(0, lumber.Nailers.Count).Where(n =>
                lumber.Nailers[n].For?.Contains(partition.Wish.Id) == true || room.PartitionAt(lumber.Nailers[n].Source) == partition).Select(n => nailerIds[n]).ToList();
            var ordered = room.Survey.Strapping.Direct ? Joists(room, partition) : rows.OrderBy(l => room.Frame.AlongIn(chosen.Lines[l].At)).Select(l => rowIds[l]).ToList();
            return new PlannedPartition(
                partition.Wish,
                [.. partition.Footprint.Patches.Select(p => (IReadOnlyList<Point>)[.. p.Outer.Select(room.Frame.Out)])],
                ordered,
                blocks,
                Notes(partition, ordered, room.Survey.Strapping.Direct));
        })];

    // without straps a plate under the board is screwed to the joists that it lies under
    private static List<string> Joists(FramedRoom room, FramedPartition partition)
    {
        if (partition.Stands)
        {
            return [];
        }

        var names = JoistWriter.Names(room);
        return [.. Enumerable.Range(0, names.Length)
            .Where(j => room.Joists.Members[j] is var joist
                && partition.Footprint.Meet(Footprint.Of([Box(joist.Along, new Span(joist.At - (joist.Face / 2), joist.At + (joist.Face / 2)))])) is { Empty: false })
            .OrderBy(j => room.Frame.AcrossIn(room.Joists.Members[j].At))
            .Select(j => names[j])];
    }

    private static bool Touches(FramedRoom room, FramedPartition partition, StrapLine line, ChosenCeiling chosen)
    {
        if (partition.Stands)
        {
            return line.Stretches.Any(s => room.PartitionAt(s.LowSource) == partition || room.PartitionAt(s.HighSource) == partition)
                || chosen.WallRows.Any(w => w.At == line.At && w.Sources.Any(s => room.PartitionAt(s) == partition) && line.Stretches.Any(s => w.Across.Any(s.Across.Overlaps)));
        }

        return partition.Footprint.Patches.Any(p => line.Stretches.Any(s =>
            partition.Footprint.Meet(Footprint.Of([Box(new Span(line.At - chosen.Rules.Half, line.At + chosen.Rules.Half), s.Across)])) is { Empty: false }));
    }

    private static Uv[] Box(Span along, Span across) => [new(along.Lo, across.Lo), new(along.Hi, across.Lo), new(along.Hi, across.Hi), new(along.Lo, across.Hi)];

    private static IReadOnlyList<Sentence> Notes(FramedPartition partition, List<string> rows, bool direct)
    {
        var notes = new List<Sentence>();
        if (!partition.Stands && rows.Count == 0)
        {
            notes.Add(partition.StopsBoard
                ? Sentence.Of("no_strap_to_hang_plate_on", "No strap lies over this plate: move the partition under a row, or put blocking between the joists for it before it is framed.")
                : direct
                ? Sentence.Of("no_joist_over_plate", "No joist lies over this plate: move the partition under one, or fix its plate through the board to blocking put in beforehand.")
                : Sentence.Of("no_strap_over_plate", "No strap lies over this plate: move the partition under a row, or fix its plate through the board to blocking put in beforehand."));
        }

        if (partition.Wish.Rated)
        {
            notes.Add(Sentence.Of("rated_to_joists", "Rated: it goes to the joists, and its own listing says how the bays above it are closed up to the floor."));
        }

        return notes;
    }
}
