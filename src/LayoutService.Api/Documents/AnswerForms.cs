using LayoutService.Api.Hosting;

namespace LayoutService.Api.Documents;

/// <summary>
/// One form of an answer: its media type, the words of <c>view</c> that it knows (the first is meant when none is asked for) and
/// how it is written.
/// </summary>
internal sealed record AnswerForm<T>(string MediaType, IReadOnlyList<string> Views, Func<T, string?, IResult> Write)
{
    /// <summary>Further names of the query that this form alone knows.</summary>
    public IReadOnlyList<string> Names { get; init; } = [];
}

/// <summary>The forms of an answer, the usual one first. A new form is a new row.</summary>
internal sealed class AnswerForms<T>(params AnswerForm<T>[] forms)
{
    public IReadOnlyList<string> MediaTypes { get; } = [.. forms.Select(form => form.MediaType)];

    public IReadOnlyList<string> Views { get; } = [.. forms.SelectMany(form => form.Views).Distinct()];

    /// <summary>
    /// The form that <c>Accept</c> asks for (RFC 9110, 12.5.1) and the view asked for; or the problem, when the form has no
    /// such view. That some form is acceptable was seen to before.
    /// </summary>
    public (AnswerForm<T> Form, string? View, ProblemResult? Problem) For(HttpRequest request)
    {
        var type = Acceptable.Best(request.Headers.Accept!, MediaTypes) ?? MediaTypes[0];
        var form = forms.First(known => known.MediaType == type);
        var view = request.Query["view"];
        if (view.Count == 0)
        {
            return (form, form.Views.Count == 0 ? null : form.Views[0], null);
        }

        return view.Count == 1 && form.Views.Contains(view[0])
            ? (form, view[0], null)
            : (form, null, new(ProblemKind.BadQuery, form.Views.Count == 0
                ? $"An answer in {type} has no views; view goes with another header Accept."
                : $"The views of an answer in {type} are {string.Join(", ", form.Views)}."));
    }
}
