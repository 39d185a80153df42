using LayoutService.Engine.Checks;
using static LayoutService.Engine.Tests.Checks.PlainRoom;

namespace LayoutService.Engine.Tests.Checks;

public class CeilingCautionsTests
{
    [Fact]
    public void A_strapped_ceiling_is_warned_of_what_hurts_people_and_work()
    {
        var codes = CeilingCautions.Of(Book("us-irc-2021"), Facts()).Select(caution => caution.Sentence.Code).ToList();
        Assert.Equal(
            ["hidden_lines", "cables_in_strap_gap", "overhead_weight", "dust", "fireblocking", "stricter_strap_section", "screw_not_nail_board", "straps_no_sound_isolation", "joist_cutting_limits", "structure", "permits"],
            codes);
    }

    [Fact]
    public void Gas_and_heat_are_named_where_they_are()
    {
        var cautions = CeilingCautions.Of(Book("ca-nbc-2020"), Facts() with { GasServices = ["G1"], HotServices = ["F1"] });
        Assert.Equal(["G1"], Assert.Single(cautions, caution => caution.Sentence.Code == "gas").Where);
        Assert.Equal(["F1"], Assert.Single(cautions, caution => caution.Sentence.Code == "heat_clearance").Where);
    }

    [Fact]
    public void The_heaviest_sheet_is_said_in_the_callers_units_with_its_people_and_lift()
    {
        var heavy = CeilingCautions.Of(Book("us-irc-2021"), Facts()).Single(caution => caution.Sentence.Code == "overhead_weight");
        Assert.Equal("The heaviest sheet is 82 lb, more than may be raised without a lift: use a lift and 2 people.", heavy.Sentence.Text);
        Assert.Equal(["S1"], heavy.Where);
    }

    [Fact]
    public void Each_sentence_gives_the_values_in_it_by_name()
    {
        foreach (var caution in CeilingCautions.Of(Book("ca-on-2024"), Facts()))
        {
            Assert.All(caution.Sentence.Params, pair => Assert.Contains(pair.Value, caution.Sentence.Text));
        }
    }
}
