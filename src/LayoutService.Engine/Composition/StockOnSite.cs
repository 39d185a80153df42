using System.Globalization;
using LayoutService.Engine.Access;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The survey with its list prices, and without the stock that does not get in or is too heavy for the crew. What is left out is
/// noted with its reason; when nothing is left of sheets or of sticks there is no plan.
/// </summary>
public static class StockOnSite
{
    public static (Survey Survey, IReadOnlyList<Finding> Obstacles) Of(Survey asked)
    {
        var survey = Pricing.WithListPrices(asked);
        if (survey.WayIn is null && survey.Crew is null)
        {
            return (survey, []);
        }

        var most = MostLifted(survey);
        var left = new List<StockLeftOut>();
        var sheets = survey.Sheets.Stock.Where(s => Stays(survey, s.Id, s.Length, s.Width, survey.Sheets.Thickness, Kilograms(survey, s), most, left)).ToList();
        var strap = survey.Strapping;
        var sticks = strap.Stock.Where(s => Stays(
            survey, s.Id, s.Length, Length.Max(strap.Face, strap.Thickness), Length.Min(strap.Face, strap.Thickness),
            MassTable.Published.StickKilograms(strap.Thickness, strap.Face, s.Length), most, left)).ToList();
        List<Finding> obstacles = [];
        if (sheets.Count == 0)
        {
            obstacles.Add(NothingGetsIn("sheet", [.. left.Where(l => survey.Sheets.Stock.Any(s => s.Id == l.Id))]));
        }

        if (sticks.Count == 0)
        {
            obstacles.Add(NothingGetsIn("length of strap", [.. left.Where(l => strap.Stock.Any(s => s.Id == l.Id))]));
        }

        return (survey with { Sheets = survey.Sheets with { Stock = sheets }, Strapping = strap with { Stock = sticks }, LeftOut = left }, obstacles);
    }

    /// <summary>
    /// The heaviest piece that the crew lifts at once, kg, and where that comes from; null for no limit. The caller's own limit
    /// stands; else, with a lift there is none, without one it is the rule's for two people, and half of it for one.
    /// </summary>
    public static Cited<decimal>? MostLifted(Survey survey)
    {
        if (survey.Crew is not { } crew)
        {
            return null;
        }

        if (crew.MassLimit is { } own)
        {
            return new(own, new Citation { Document = "Set by the caller", Basis = Basis.SetByCaller, Confidence = Confidence.High });
        }

        if (crew.Lift)
        {
            return null;
        }

        var rule = new Practice(new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides), survey.Units == UnitSystem.Imperial).LiftMassMost;
        return rule with { Value = crew.People >= 2 ? rule.Value : rule.Value / 2 };
    }

    private static decimal Kilograms(Survey survey, SheetStock sheet) =>
        MassTable.Published.SheetKilograms(survey.Sheets.Type, survey.Sheets.Thickness, sheet.Width, sheet.Length);

    private static bool Stays(
        Survey survey, string id, Length length, Length width, Length thickness, decimal kilograms, Cited<decimal>? most, List<StockLeftOut> left)
    {
        if (most is not null && kilograms > most.Value)
        {
            left.Add(new(id, Sentence.Of(
                "stock_too_heavy", $"Stock {id} weighs {Mass(survey, kilograms)}; this crew lifts {Mass(survey, most.Value)} at once.",
                ("stock", id), ("mass", Mass(survey, kilograms)), ("limit", Mass(survey, most.Value)))));
            return false;
        }

        if (survey.WayIn is { } way && !WayThrough.Admits(way, length, width, thickness))
        {
            left.Add(new(id, Sentence.Of(
                "stock_does_not_get_in", $"Stock {id}, {CutFindings.Say(length, survey.Units)} long, does not get through the passages and round the turn, nor through a window.",
                ("stock", id), ("length", CutFindings.Say(length, survey.Units)))));
            return false;
        }

        return true;
    }

    private static Finding NothingGetsIn(string what, IReadOnlyList<StockLeftOut> left) => new(
        Sentence.Of("nothing_gets_in", $"No {what} in stock gets in and up: {string.Join(" ", left.Select(l => l.Why.Text))}", ("what", what)),
        [.. left.Select(l => l.Id)],
        [
            Sentence.Of("smaller_stock", "Offer shorter, narrower or lighter stock."),
            Sentence.Of("other_way_in", "Open another way in, or have it cut before it is carried."),
            Sentence.Of("more_hands", "Bring a lift or more hands."),
        ]);

    private static string Mass(Survey survey, decimal kilograms) => survey.Units == UnitSystem.Imperial
        ? string.Create(CultureInfo.InvariantCulture, $"{kilograms / 0.45359237m:0.#} lb")
        : string.Create(CultureInfo.InvariantCulture, $"{kilograms:0.#} kg");
}
