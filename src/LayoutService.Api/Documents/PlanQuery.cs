using LayoutService.Api.Hosting;
using LayoutService.Api.Plans;
using LayoutService.Api.Plans.Writing;

namespace LayoutService.Api.Documents;

/// <summary>Reads the query of a call whose answer has several forms: <c>include</c> for the JSON, <c>view</c> for the others.</summary>
internal static class PlanQuery
{
    public static bool TryRead<T>(HttpRequest request, AnswerForms<T> forms, out Blocks? blocks, out AnswerForm<T> form, out string? view, out ProblemResult wrong)
    {
        (form, view, var unknown) = forms.For(request);
        var names = form.Names;
        var rest = new QueryCollection(request.Query.Where(pair => pair.Key != "view" && !names.Contains(pair.Key)).ToDictionary(pair => pair.Key, pair => pair.Value));
        blocks = null;
        if (unknown is not null)
        {
            wrong = unknown;
            return false;
        }

        if (!PlanEndpoints.TryBlocks(rest, out var asked, out wrong))
        {
            return false;
        }

        blocks = rest.Count == 0 ? null : asked;
        return true;
    }
}
