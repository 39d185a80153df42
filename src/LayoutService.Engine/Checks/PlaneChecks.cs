using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>The plane of the fastening faces, and cables in the gap that straps make.</summary>
internal static class PlaneChecks
{
    public static IEnumerable<Check> Of(CheckBench bench)
    {
        var plane = bench.Limit("plane");
        yield return bench.Facts.Floor.GreatestStep is { } step
            ? bench.Lengths(
                "plane", CheckComparison.AtMost, step, plane, bench.Facts.Floor.StepAt,
                bench.Facts.Straps is null
                    ? Sentence.Of("board_shows_step", "Board screwed to these joists shows the step and nothing packs it: plane or sister the joist, or strap the ceiling and pack the straps.")
                    : Sentence.Of("joists_too_far_apart", "A joist here is too high for packing and for a sister of 2x4: fur it down with deeper wood, or make the lower part a bulkhead or a ceiling of its own."),
                note: Packed(bench))
            : bench.NotChecked(
                "plane", CheckComparison.AtMost, plane.Source, plane.Value, ["#/joistFields/0/undersides"],
                bench.Facts.Straps is null
                    ? Sentence.Of("board_copies_joists", "Board screwed to the joists copies them, and nothing is packed.")
                    : Sentence.Of("straps_copy_joists", "Straps nailed tight copy the joists: only packing makes a plane."));

        if (bench.Facts.Straps is null)
        {
            yield break;
        }

        var setback = bench.Limit("cable-setback");
        var byElectrician = Sentence.Of(
            "cable_setback_by_electrician", "The gap is shallower than the distance that a cable needs from a screw: an electrician says where plates go.");
        if (!bench.Facts.ServicesGiven)
        {
            yield return bench.NotChecked("cable-setback", CheckComparison.AtLeast, setback.Source, setback.Value, ["#/services"], byElectrician);
        }
        else if (bench.Facts.CableToStrap is { } distance)
        {
            yield return bench.Lengths(
                "cable-setback", CheckComparison.AtLeast, distance, setback, bench.Facts.CablesInGap,
                Sentence.Of("plate_or_move_cable", "Have an electrician move this cable off the straps, or protect it with steel plates."), note: byElectrician);
        }
    }

    // what is held to the rule is the plane after packing: say what was found before
    private static Sentence? Packed(CheckBench bench) => bench.Facts.Floor.StepFound is { } found && found > bench.Facts.Floor.GreatestStep
        ? Sentence.Of(
            "packed_to_plane", $"As found the greatest step is {bench.Text(found)}; the packing of the plan takes it out.", ("found", bench.Text(found)))
        : null;
}
