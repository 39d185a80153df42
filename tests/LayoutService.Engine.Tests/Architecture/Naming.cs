using System.Text.RegularExpressions;

namespace LayoutService.Engine.Tests.Architecture;

/// <summary>Which namespaces a piece of code names.</summary>
internal static partial class Naming
{
    /// <summary>
    /// The engine's folders that some code names: in a <c>using</c> line of any kind, in a name from the root
    /// (<c>LayoutService.Engine.Sheets.…</c>), or half-qualified with one of the folder's types
    /// (<c>Sheets.SheetPlan</c>). A member (<c>room.Survey.Sheets.Stock</c>, or <c>Steps.First()</c> of a list) names no folder.
    /// </summary>
    /// <param name="code">Code without comments and texts.</param>
    /// <param name="folders">The types that each folder declares.</param>
    public static IReadOnlySet<string> FoldersNamed(string code, IReadOnlyDictionary<string, IReadOnlyList<string>> folders)
    {
        var body = NamespaceLine().Replace(code, string.Empty);
        var named = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (folder, types) in folders)
        {
            var full = $@"\bEngine\.{folder}\b";
            var half = $@"(?<![\w.]|\.\s*){folder}\s*\.\s*({string.Join('|', types.DefaultIfEmpty("(?!)"))})\b";
            var whole = $@"^\s*(global\s+)?using\s+(static\s+)?([\w]+\s*=\s*)?{folder}\b";
            if (Regex.IsMatch(body, full) || Regex.IsMatch(body, half) || Regex.IsMatch(body, whole, RegexOptions.Multiline))
            {
                named.Add(folder);
            }
        }

        return named;
    }

    /// <summary>Namespaces of <c>using</c> lines that are not the engine's.</summary>
    public static IReadOnlyList<string> OutsideNamespaces(string code) =>
        [.. UsingLine().Matches(code)
            .Select(match => match.Groups["name"].Value)
            .Where(name => !name.StartsWith("LayoutService.", StringComparison.Ordinal))
            .Distinct()];

    /// <summary>Names of the types that some code declares.</summary>
    public static IReadOnlyList<string> TypesDeclared(string code) =>
        [.. TypeDeclaration().Matches(code).Select(match => match.Groups["name"].Value).Distinct()];

    [GeneratedRegex(@"^\s*namespace\s+[\w.]+\s*;", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"^\s*(?:global\s+)?using\s+(?:static\s+)?(?:\w+\s*=\s*)?(?:global::)?(?<name>[A-Z][\w.]*)\s*(?:<[^;]*>)?;", RegexOptions.Multiline)]
    private static partial Regex UsingLine();

    [GeneratedRegex(@"^[ \t]*(?:(?:public|internal|private|protected|sealed|static|abstract|readonly|partial|file|ref)\s+)*(?:class|record\s+struct|record\s+class|record|struct|enum|interface|delegate\s+[\w<>\[\]?, ]+?)\s+(?<name>[A-Z]\w*)", RegexOptions.Multiline)]
    private static partial Regex TypeDeclaration();
}
