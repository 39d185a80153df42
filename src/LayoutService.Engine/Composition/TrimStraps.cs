using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Short straps on both sides of a hole that a row is trimmed round, where the headers stand too far apart for the board: from joist to
/// joist, beside the hole. Common practice, no source. Cost: trimmed stretches × rows.
/// </summary>
internal static class TrimStraps
{
    /// <summary>The ceiling with those straps; a place that has no room for one is left as it was, and its span is told.</summary>
    public static ChosenCeiling With(FramedRoom room, StrapLines straps, ChosenCeiling chosen)
    {
        var wide = TrimSpans.Wide(room, chosen.Rules, chosen.Lines).ToList();
        if (wide.Count == 0)
        {
            return chosen;
        }

        var lines = chosen.Lines.ToList();
        foreach (var trim in wide)
        {
            var at = chosen.Lines[trim.Line].At;
            var (low, high) = (at - chosen.Rules.MinGap, at + chosen.Rules.MinGap);
            foreach (var hole in room.KeepOuts.Firm.Concat(room.KeepOuts.Soft).Where(h => h.AcrossKept.Overlaps(trim.Gap) && h.AlongKept.Lo < high && low < h.AlongKept.Hi))
            {
                (low, high) = (Math.Min(low, hole.AlongKept.Lo - chosen.Rules.Half), Math.Max(high, hole.AlongKept.Hi + chosen.Rules.Half));
            }

            foreach (var place in new[] { room.SnapDown(low), room.SnapUp(high) })
            {
                var line = new StrapLine(place, false, straps.Short(place, [trim.Gap]), null);
                if (line.Stretches.Any(s => s.Across.Lo <= trim.Gap.Lo && trim.Gap.Hi <= s.Across.Hi) && !lines.Exists(other => line.LiesOn(other, chosen.Rules.MinGap)))
                {
                    lines.Add(line);
                }
            }
        }

        return chosen.Over([.. lines.OrderBy(l => l.At).ThenBy(l => l.Stretches[0].Across.Lo)]);
    }
}
