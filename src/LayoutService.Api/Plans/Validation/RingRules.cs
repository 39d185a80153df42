using System.Globalization;
using LayoutService.Engine.Geometry;

namespace LayoutService.Api.Plans.Validation;

/// <summary>A ring of corners encloses one simple piece of floor.</summary>
internal static class RingRules
{
    private const int MostTold = 10;

    public static void Check(IReadOnlyList<Point> ring, string pointer, int least, int most, FaultList faults)
    {
        if (ring.Count < least || ring.Count > most)
        {
            faults.Add(pointer, "count_out_of_range",
                $"This outline must have from {least} to {most} corners, a repeated first one not counted; it has {ring.Count}.",
                ("least", Number(least)), ("most", Number(most)), ("count", Number(ring.Count)));
            return;
        }

        foreach (var fault in RingFaults.Of(ring, MostTold))
        {
            Tell(fault, pointer, faults);
        }
    }

    private static void Tell(RingFault fault, string pointer, FaultList faults)
    {
        var (first, second) = (Number(fault.First), Number(fault.Second));
        switch (fault.Kind)
        {
            case RingFaultKind.RepeatedCorner:
                faults.Add($"{pointer}/{first}", "outline_corner_repeated", "This corner is the same place as the one before it.");
                break;
            case RingFaultKind.Spike:
                faults.Add($"{pointer}/{first}", "outline_spike", "The outline turns straight back on itself at this corner.");
                break;
            case RingFaultKind.Crossing:
                faults.Add($"{pointer}/{second}", "outline_crosses_itself",
                    $"The edge from this corner meets the edge from corner {first}; an outline does not cross or touch itself.", ("edge", second), ("other", first));
                break;
            default:
                faults.Add(pointer, "outline_no_area", "The outline encloses no area.");
                break;
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
