using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>What batts alone do not do, and who must say what is asked for.</summary>
internal static class BattCautions
{
    private static readonly Citation Practice = new()
    {
        Document = "Common practice, no source", Basis = Basis.CommonPractice, Confidence = Confidence.Low,
    };

    private static readonly Citation FullSpace = new()
    {
        Document = "National Building Code of Canada", Clause = "9.25.2.3", Publisher = "National Research Council of Canada",
        Basis = Basis.Published, Confidence = Confidence.Medium, Note = "Read in Ontario's code of 2012 and 2024, which has the same article.",
    };

    public static IEnumerable<Caution> Of(CheckFacts facts)
    {
        if (facts.InsulationMassPerArea is not > 0)
        {
            yield break;
        }

        yield return new(Sentence.Of("batt_fibres", "Wear gloves, long sleeves, eye protection and a respirator when you cut and fit batts overhead."), Practice, []);
        if (facts.ThermalInsulation)
        {
            if (facts.WarmSide is null)
            {
                yield return new(
                    Sentence.Of("vapour_and_air_barrier", "Where this ceiling parts warm from cold, it needs an air barrier and a vapour barrier on the side that the code says: the plan has neither. Ask the building department."),
                    Practice, []);
            }

            yield return new(
                Sentence.Of("thermal_minimum", "The plan states what the batts are worth; whether that meets the code's minimum for this place and climate is for the code and the building department. The rim joist is sealed and insulated before it is boarded over."),
                Practice, []);
            yield return new(
                Sentence.Of("full_width_and_length", "Insulation that counts for heat fills the full width and length of each bay and touches an airtight face: parts listed as uncovered must be filled another way."),
                FullSpace, []);
        }
    }
}
