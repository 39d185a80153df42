using System.Text.Json;
using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Contract;

/// <summary>A line of said-rules.txt: a rule that no schema shows, and the words of the contract that say it.</summary>
internal sealed record SaidRule(string Source, string Code, string Place, string Words)
{
    public static IReadOnlyList<SaidRule> All { get; } = [.. File.ReadLines(Path.Combine(Folder, "said-rules.txt"))
        .Where(line => line.Length > 0 && line[0] != '#')
        .Select(line => line.Split(" | "))
        .Select(cells => new SaidRule(cells[0], cells[1], cells[2], cells[3]))];

    /// <summary>True for a rule that no description says; then its words are why.</summary>
    public bool Unsaid => Place == "-";

    private static string Folder => Path.Combine(Repository.Root, "tests", "LayoutService.Api.Tests", "Contract");

    /// <summary>Source file without its ending, and the codes of the faults that it adds, in order.</summary>
    public static IEnumerable<(string Source, IReadOnlyList<string> Codes)> InSource() =>
        Directory.GetFiles(Path.Combine(Repository.Root, "src", "LayoutService.Api"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !Regex.IsMatch(file, "/(obj|bin|Wire)/"))
            .Select(file => (Path.GetFileNameWithoutExtension(file), Text: File.ReadAllText(file)))
            .Where(file => Regex.IsMatch(file.Text, @"\b(faults\.Add|Fault\.At)\("))
            .Select(file => (file.Item1, (IReadOnlyList<string>)[.. Regex.Matches(file.Text, @"\$?""(\{what\}_[a-z_]+|[a-z]+(?:_[a-z]+)+|required)""").Select(match => match.Groups[1].Value)]))
            .Where(file => file.Item2.Count > 0);

    /// <summary>Whether the contract's description has the words.</summary>
    public bool IsSaid(JsonElement schemas)
    {
        var place = Place.Split('.');
        return schemas.TryGetProperty(place[0], out var said)
            && (place.Length == 1 || (said.TryGetProperty("properties", out var members) && members.TryGetProperty(place[1], out said)))
            && said.GetProperty("description").GetString()!.Contains(Words, StringComparison.Ordinal);
    }
}
