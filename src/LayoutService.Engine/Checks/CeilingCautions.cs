using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// Dangers and limits that belong to this plan. They never advise on structure, gas or wiring: they say whose work it is.
/// </summary>
public static class CeilingCautions
{
    private static readonly Citation Practice = new()
    {
        Document = "Common practice, no source", Basis = Basis.CommonPractice, Confidence = Confidence.Low,
    };

    private static readonly Citation Chimney = new()
    {
        Document = "International Residential Code", Clause = "R1003.18", Publisher = "International Code Council",
        Basis = Basis.Published, Confidence = Confidence.Low, Note = "From memory: 2 in of air round masonry chimneys inside a building; the Canadian code's 50 mm is as far.",
    };

    /// <summary>The cautions of this plan, the most urgent first.</summary>
    public static IReadOnlyList<Caution> Of(RuleBook book, CheckFacts facts)
    {
        var bench = new CheckBench(book, facts);
        var all = new List<Caution>
        {
            new(Sentence.Of("hidden_lines", "Find cables, pipes and ducts above before you nail or screw: locate or probe each joist line, and switch the power off."), Practice, []),
        };
        if (facts.Straps is not null)
        {
            var setback = bench.Limit("cable-setback");
            all.Add(new(
                Sentence.Of(
                    "cables_in_strap_gap",
                    $"A cable in the gap that the straps make lies closer than {bench.Text(setback.Value)} to where screws go: protect it with steel plates or keep it that far off. An electrician decides.",
                    ("setback", bench.Text(setback.Value))),
                setback.Source, facts.CablesInGap));
        }

        else
        {
            all.Add(new(
                Sentence.Of("board_copies_joists", "Nothing is packed: the board copies the joists, and a joist that is out shows. No cable, pipe or duct passes below them: each goes through a bore that the code allows, by its own trade."),
                Practice, []));
        }

        if (facts.GasServices.Count > 0)
        {
            all.Add(new(Sentence.Of("gas", "Gas pipe and valves are a licensed trade's: do not move, enclose or fasten to them before that trade has looked."), Practice, facts.GasServices));
        }

        if (facts.HotServices.Count > 0)
        {
            all.Add(new(Sentence.Of("heat_clearance", "Keep wood, board and insulation off flues and hot ducts by the distance that their own listing gives."), Practice, facts.HotServices));
        }

        if (facts.Chimneys.Count > 0)
        {
            all.Add(new(
                Sentence.Of(
                    "chimney_clearance",
                    "Straps, blocks and other wood keep the distance from a chimney that its listing and the local code ask for (2 in or 50 mm is usual round masonry inside a house): the plan keeps the opening's clearance and no more, so measure with it."),
                Chimney, facts.Chimneys));
        }

        all.AddRange(FixtureCautions.Of(bench));
        all.AddRange(BattCautions.Of(facts));
        all.AddRange(SiteCautions.Of(bench));
        all.Add(Lifting(bench));
        all.Add(new(Sentence.Of("dust", "Wear eye protection and a respirator overhead. An old ceiling may hold asbestos or lead: have it tested before you break it."), Practice, []));
        var blocks = book.Limit("fireblock-horizontal");
        all.Add(new(
            Sentence.Of("fireblocking", "Where a bulkhead or a furred wall opens into the joist bays, close the opening with fireblocking before you board it."),
            blocks.Source, facts.Bulkheads));
        if (facts.Straps is { } straps && straps.Thickness < Measures.Length.FromInches(1.5m) && book.Has("stricter-strap-section"))
        {
            all.Add(new(
                Sentence.Of("stricter_strap_section", "Outside the residential code, furring over open framing is nominal 2 in wood: ask before you use 1 in straps there."),
                book.Limit("stricter-strap-section").Source, []));
            all.Add(new(
                Sentence.Of("screw_not_nail_board", "Screw the board to 1 in straps: nails want nominal 2 in wood behind them."),
                book.Limit("nailed-strap-section").Source, []));
        }

        if (facts.Straps is not null)
        {
            all.Add(new(Sentence.Of("straps_no_sound_isolation", "Plain wood straps do not isolate sound. Resilient channel or clips do; price them if sound matters."),
                new Citation
                {
                    Document = "Technical note of an engineered-wood producer, 2015", Basis = Basis.Secondary, Confidence = Confidence.Medium,
                    Note = "Wood furring gives no significant improvement over board fastened direct.",
                }, []));
        }

        if (facts.Sisters.Count > 0)
        {
            all.Add(new(
                Sentence.Of(
                    "sisters_only_level",
                    "Sisters here only carry the straps at one level; they strengthen nothing. A joist this far out may be sagged, cut or cracked: have an engineer or the building department look at it before it is hidden."),
                Practice, facts.Sisters));
        }

        all.Add(JoistCutting(bench));
        all.Add(new(Sentence.Of("structure", "This plan does not judge the floor. Cutting, notching, boring, removing or loading joists and beams is for an engineer or the building department."), Practice, []));
        all.Add(new(Sentence.Of("permits", "Ask the building department whether a permit and an inspection before closing are needed; wiring, gas and plumbing are licensed trades' work."), Practice, []));
        return all;
    }

    // Figures for sawn joists of the depth given; engineered joists are cut by their maker's rules alone.
    private static Caution JoistCutting(CheckBench bench)
    {
        var hole = bench.Book.Limit("joist-hole");
        var notch = bench.Book.Limit("joist-notch-depth");
        var edge = bench.Limit("joist-hole-edge");
        if (bench.Facts.Floor.Joists != JoistKind.Sawn)
        {
            return new(Sentence.Of("engineered_joist_cutting", "Do not cut, notch or bore engineered joists or trusses but as their maker says in writing."), hole.Source, []);
        }

        if (bench.Facts.Floor.JoistDepth is not { } depth)
        {
            return new(Sentence.Of("joist_cutting", "Do not notch or bore a joist before the electrician or plumber has the code's limits for its depth: straps let cables cross without boring."), hole.Source, []);
        }

        var (most, deep) = (Share(depth, hole.Value), Share(depth, notch.Value));
        return new(
            Sentence.Of(
                "joist_cutting_limits",
                $"In these joists the code lets nobody bore a hole over {bench.Text(most)}, nearer than {bench.Text(edge.Value)} to an edge, or notch deeper than {bench.Text(deep)}, and never in the bottom at mid span: straps let cables cross without boring.",
                ("hole", bench.Text(most)), ("edge", bench.Text(edge.Value)), ("notch", bench.Text(deep))),
            hole.Source, []);
    }

    private static Length Share(Length depth, Figure share) => Length.FromMillimetres(Math.Min(depth.Millimetres * share.Value, 1_000_000m));

    private static Caution Lifting(CheckBench bench)
    {
        var (people, source) = bench.Book.Limit("lift-people");
        var board = bench.Facts.Board;
        if (board.HeaviestSheet is not { } kilograms)
        {
            return new(Sentence.Of("overhead_weight", "Sheets are heavy overhead: two people and a lift."), source, []);
        }

        var unit = bench.Imperial ? "lb" : "kg";
        var most = bench.Book.Limit("lift-mass-most").Value;
        var mass = decimal.Round(Figure.Of(kilograms, FigureUnit.Parse("kg")).In(unit)).ToString(CultureInfo.InvariantCulture) + " " + unit;
        var count = people.Value.ToString("0.##", CultureInfo.InvariantCulture);
        var lift = kilograms > most.In("kg")
            ? $"The heaviest sheet is {mass}, more than may be raised without a lift: use a lift and {count} people."
            : $"The heaviest sheet is {mass}: use {count} people, and a lift where you can.";
        return new(Sentence.Of("overhead_weight", lift, ("mass", mass), ("people", count)), source, board.HeaviestSheets);
    }
}
