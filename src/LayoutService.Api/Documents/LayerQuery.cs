using LayoutService.Api.Hosting;
using LayoutService.Drawing;

namespace LayoutService.Api.Documents;

/// <summary>Reads the query <c>layers</c>: what the drawing shows, as words separated by commas; all of them without it.</summary>
internal static class LayerQuery
{
    public const string Name = "layers";

    public static readonly IReadOnlyList<(string Word, Layers Layer)> Words =
        [.. Enum.GetValues<Layers>().Where(layer => layer != Layers.None).Select(layer => (layer.ToString().ToLowerInvariant(), layer))];

    public static bool TryRead(HttpRequest request, out Layers layers, out ProblemResult wrong)
    {
        (layers, wrong) = (Layers.All, null!);
        if (!request.Query.TryGetValue(Name, out var values))
        {
            return true;
        }

        layers = Layers.None;
        foreach (var word in string.Join(',', values.ToArray()).Split(','))
        {
            var found = Words.FirstOrDefault(known => known.Word == word.Trim());
            if (found.Word is null)
            {
                wrong = new(ProblemKind.BadQuery, $"A word of {Name} is not known; the words are {string.Join(", ", Words.Select(known => known.Word))}.");
                return false;
            }

            layers |= found.Layer;
        }

        return true;
    }
}
