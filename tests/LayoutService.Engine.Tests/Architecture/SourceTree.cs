using System.Reflection;
using System.Text.RegularExpressions;

namespace LayoutService.Engine.Tests.Architecture;

/// <summary>One source file: its path from the repository's root with forward slashes, and its text.</summary>
internal sealed record SourceFile(string Path, string Text)
{
    /// <summary>Text without comments, and without the texts of its strings.</summary>
    public string Code { get; } = SourceTree.WithoutCommentsAndTexts(Text);

    public int Lines => Text.Count(c => c == '\n') + (Text.EndsWith('\n') ? 0 : 1);

    public string Name => Path[(Path.LastIndexOf('/') + 1)..];
}

/// <summary>The repository's own sources, found upwards from where the tests run.</summary>
internal static partial class SourceTree
{
    public static readonly string Root = FindRoot();

    public static IReadOnlyList<SourceFile> Engine { get; } = Read("src/LayoutService.Engine");

    public static IReadOnlyList<SourceFile> All { get; } = Read("src");

    /// <summary>Sources below a folder, by path; what a build leaves behind is passed over.</summary>
    public static IReadOnlyList<SourceFile> Read(string folder) =>
        [.. Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal)
            .Select(path => new SourceFile(path, File.ReadAllText(Path.Combine(Root, path))))];

    public static string ReadText(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>The engine's folder that a file lies in; empty for the engine's root.</summary>
    public static string EngineFolder(SourceFile file)
    {
        var parts = file.Path.Split('/');
        return parts.Length > 3 ? parts[2] : string.Empty;
    }

    /// <summary>Comments become nothing and strings empty; of a string with code in braces that code stays, since it counts.</summary>
    public static string WithoutCommentsAndTexts(string text) => CommentOrText().Replace(text, match => match.Value[0] switch
    {
        '/' => string.Empty,
        '$' => string.Join(' ', CodeInBraces().Matches(match.Value).Select(code => code.Value)),
        '\'' => "' '",
        _ => "\"\"",
    });

    [GeneratedRegex("""
        \$+@?"{3,}[\s\S]*?"{3,}|"{3,}[\s\S]*?"{3,}|(?:\$@|@\$)"(?:[^"]|"")*"|@"(?:[^"]|"")*"|\$"(?:\\.|[^"\\\n])*"|"(?:\\.|[^"\\\n])*"|'(?:\\.[^']*|[^'\\\n])'|//[^\n]*|/\*[\s\S]*?\*/
        """)]
    private static partial Regex CommentOrText();

    [GeneratedRegex(@"\{[^{}]*(\}|$)")]
    private static partial Regex CodeInBraces();

    private static string FindRoot()
    {
        var start = Path.GetDirectoryName(Assembly.GetExecutingAssembly().Location)!;
        for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "LayoutService.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"No LayoutService.sln above {start}.");
    }
}
