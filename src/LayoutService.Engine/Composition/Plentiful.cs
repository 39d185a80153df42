using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>Where the sheets of which there are few did not go round, the plan is made of those that can be had in any number.</summary>
internal static class Plentiful
{
    /// <summary>The survey without limited sheets; null when the findings are of something else, or that leaves nothing or all.</summary>
    public static Survey? Of(Survey survey, IReadOnlyList<Finding> findings)
    {
        var few = findings.Count > 0 && findings.All(f => f.Sentence.Code == "out_of_stock" && f.Where.Contains("sheets"));
        var left = few ? survey.Sheets.Stock.Where(s => s.Quantity is null).ToList() : [];
        return left.Count == 0 || left.Count == survey.Sheets.Stock.Count
            ? null
            : survey with { Sheets = survey.Sheets with { Stock = left } };
    }
}
