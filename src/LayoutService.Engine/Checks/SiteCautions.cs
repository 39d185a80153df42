using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>A ceiling that is there already, and what lies above and below.</summary>
internal static class SiteCautions
{
    private static readonly Citation Practice = new()
    {
        Document = "Common practice, no source", Basis = Basis.CommonPractice, Confidence = Confidence.Low,
    };

    private static readonly Citation Separation = new()
    {
        Document = "International Residential Code", Clause = "Table R302.6", Publisher = "International Code Council",
        Basis = Basis.Published, Confidence = Confidence.Low, Note = "From memory: 5/8 in type X board under habitable rooms above a garage.",
    };

    public static IEnumerable<Caution> Of(CheckBench bench)
    {
        var facts = bench.Facts;
        if (facts.Existing is { Stays: true } stays)
        {
            yield return new(
                Sentence.Of(
                    "existing_ceiling_stays",
                    $"The straps are screwed through the old ceiling, {bench.Text(stays.Thickness)}, into the joists: nothing hangs on the old ceiling. Find each joist by probing, and have old plaster, tile or texture tested for asbestos and old paint for lead before you drill or screw through it.",
                    ("thickness", bench.Text(stays.Thickness))),
                Practice, []);
            yield return new(Weight(bench), Practice, []);
            if (facts.OldCeilingOpened.Count > 0)
            {
                yield return new(
                    Sentence.Of(
                        "old_ceiling_opened",
                        "The old ceiling is opened at these: have it tested for asbestos and its paint for lead before you cut, switch the power off and look above for cables, pipes and ducts first, and cut no deeper than it is thick. Where it is part of a fire or smoke separation, ask the building department how each opening is closed again."),
                    Practice, facts.OldCeilingOpened);
            }
        }
        else if (facts.Existing is not null)
        {
            yield return new(
                Sentence.Of(
                    "existing_ceiling_comes_down",
                    "The old ceiling comes down first: have it tested for asbestos, and its paint for lead, before you break it. It may hide live cables and hold up insulation. What is found there may change this plan: measure again."),
                Practice, []);
        }

        if (facts.WallsLined)
        {
            yield return new(
                Sentence.Of(
                    "walls_lined",
                    "The room was measured between finished wall faces: the lining stays, and straps and board stop at it. What is fastened to a wall goes through the lining into the framing or masonry behind, with screws and anchors longer than those ordered by what the lining is thick: the plan does not know it. Look for cables and pipes behind the lining before you drill. No wall board will hold up the ceiling's edge, so every edge needs the fasteners of the plan."),
                Practice, []);
        }

        if (facts.OpenEdges.Count > 0)
        {
            yield return new(
                Sentence.Of(
                    "open_edge",
                    "Where the ceiling ends without a wall the joist bays stand open to the next space: ask the building department where fireblocking or draftstopping must close them before the edge is boarded and beaded. The edge carries nothing: no partition, rail or curtain is fastened to it."),
                Practice, facts.OpenEdges);
        }

        if (facts.WarmSide is { } warm)
        {
            yield return new(warm, WarmSide.Source, []);
        }

        if (facts.GarageBelow)
        {
            yield return new(
                Sentence.Of("garage_below", "A garage below rooms is parted from them for fire and fumes: ask the building department which board the ceiling must have, how its joints are sealed, and what may pass through it."),
                Separation, []);
        }
    }

    private static Sentence Weight(CheckBench bench)
    {
        if (bench.Facts.ExistingMassPerArea is not { } kilograms)
        {
            return Sentence.Of("existing_ceiling_weight", "The joists carry the old ceiling and the new one: what the old one weighs is not known here. Whether the floor carries both is for an engineer or the building department.");
        }

        var unit = bench.Imperial ? "lb/ft2" : "kg/m2";
        var mass = $"{decimal.Round(Figure.Of(kilograms, FigureUnit.Parse("kg/m2")).In(unit), 2).ToString(CultureInfo.InvariantCulture)} {(bench.Imperial ? "lb/ft²" : "kg/m²")}";
        return Sentence.Of(
            "existing_ceiling_weight",
            $"The joists carry the old ceiling, {mass} or so, and the new one. Whether the floor carries both is for an engineer or the building department.",
            ("mass", mass));
    }
}
