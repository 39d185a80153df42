using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The straps of all parts of a room as one list.</summary>
internal static class JoinedStraps
{
    public static StrappingPlan Of(IReadOnlyList<StrappingPlan> parts)
    {
        var widest = parts.MaxBy(p => p.WidestSpacing)!;
        return parts[0] with
        {
            Rows = [.. parts.SelectMany(p => p.Rows)],
            Nailers = [.. parts.SelectMany(p => p.Nailers)],
            Spacers = [.. parts.SelectMany(p => p.Spacers).GroupBy(s => s.Length).Select(same => new Spacer(same.Key, [.. same.SelectMany(s => s.Between)]))
                .OrderByDescending(s => s.Between.Count).ThenByDescending(s => s.Length)],
            Crossings = [.. parts.SelectMany(p => p.Crossings)],
            Scabs = [.. parts.SelectMany(p => p.Scabs)],
            Plane = Plane([.. parts.Select(p => p.Plane).OfType<StrapPlane>()]),
            WidestSpacing = widest.WidestSpacing,
            WideTrim = parts.Select(p => p.WideTrim).Where(w => w is not null).MaxBy(w => w!.Value.Span.Units),
            WidestSpacingRows = [.. parts.Where(p => p.WidestSpacing == widest.WidestSpacing).SelectMany(p => p.WidestSpacingRows)],
        };
    }

    // the lowest crossing of all sets it; the steps are the greatest of any part
    private static StrapPlane? Plane(List<StrapPlane> planes)
    {
        if (planes.Count == 0)
        {
            return null;
        }

        var (stepped, left) = (planes.MaxBy(p => p.StepFound)!, planes.MaxBy(p => p.StepLeft)!);
        return planes.MinBy(p => p.Level)! with
        {
            StepFound = stepped.StepFound,
            StepLeft = left.StepLeft,
            StepRows = left.StepLeft > Length.Zero && left.StepLeft >= stepped.StepFound ? left.StepRows : stepped.StepRows,
            Estimated = planes.Sum(p => p.Estimated),
        };
    }
}
