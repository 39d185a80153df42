using LayoutService.Engine.Ceilings;

namespace LayoutService.Drawing;

/// <summary>The walls as a heavy line, openings crossed, partitions grey where they stand before the straps and dashed where they come after the board, and the corner that all marks are measured from.</summary>
internal static class OutlineLayer
{
    public static void Draw(SvgInk ink, RoomSurvey room, PlanView view, LabelField labels, IReadOnlyList<PlannedPartition> partitions)
    {
        ink.Group("outline", null);
        ink.Ring(room.Outline.Select(p => view[p]), ("stroke-width", "3"), ("stroke-linejoin", "miter"));
        foreach (var opening in room.Openings)
        {
            ink.Group(null, $"{opening.Id}: {opening.Kind.ToString().ToLowerInvariant()}");
            var corners = opening.Outline.Select(p => view[p]).ToList();
            ink.Ring(corners, ("stroke-width", "2"), ("fill", "#ffffff"));
            for (var i = 0; i < corners.Count / 2; i++)
            {
                ink.Line(corners[i], corners[i + (corners.Count / 2)]);
            }

            ink.EndGroup();
            var box = view.BoxOf(opening.Outline);
            labels.Keep(box);
            Label.Write(ink, labels, opening.Id, Lettering.Small, [new(box.Middle.X, box.Bottom + 8), new(box.Middle.X, box.Top - 8)], null);
        }

        foreach (var partition in partitions)
        {
            ink.Group(null, $"partition {partition.Id}");
            foreach (var outline in partition.Outlines)
            {
                ink.Ring(
                    outline.Select(p => view[p]), ("stroke-width", "2"), ("fill", partition.Wish.Top != PartitionTop.Board ? "#dddddd" : "none"),
                    ("stroke-dasharray", partition.Wish.Top == PartitionTop.Joists ? "none" : "6 3"));
                var box = view.BoxOf(outline);
                labels.Keep(box);
                Label.Write(ink, labels, partition.Id, Lettering.Small, [new(box.Middle.X, box.Bottom + 8), new(box.Middle.X, box.Top - 8), new(box.Right + 12, box.Middle.Y)], null);
            }

            ink.EndGroup();
        }

        ink.EndGroup();
    }
}
