namespace LayoutService.Engine.Tests.Architecture;

public sealed class FilesStaySmallTests
{
    private const int Most = 300;

    // longer than the rule, each with the reason; the figure is the end for that file
    private static readonly Dictionary<string, int> Longer = new(StringComparer.Ordinal)
    {
        // one linear program: its rows, its two kinds of columns and the bound that is read from its prices
        ["src/LayoutService.Engine/Cutting/LengthRelaxation.cs"] = 350,

        // the chain over courses, its stagger tables and the bettering of one course read the same options
        ["src/LayoutService.Engine/Sheets/SheetSearch.cs"] = 350,
    };

    [Fact]
    public void No_file_is_longer_than_300_lines_but_those_listed_with_a_reason()
    {
        var faults = SourceTree.All
            .Where(file => file.Lines > Longer.GetValueOrDefault(file.Path, Most))
            .Select(file => $"{file.Path} has {file.Lines} lines");
        Assert.Empty(faults);
    }

    [Fact]
    public void Every_file_listed_as_longer_is_there() =>
        Assert.Empty(Longer.Keys.Except(SourceTree.All.Select(file => file.Path)));

    // a type named like a folder hides the folder's namespace
    [Fact]
    public void No_type_bears_the_name_of_a_folder()
    {
        var segments = SourceTree.All
            .SelectMany(file => file.Path.Split('/')[1..^1].SelectMany(part => part.Split('.')))
            .ToHashSet(StringComparer.Ordinal);
        var faults = SourceTree.All.SelectMany(file =>
            Naming.TypesDeclared(file.Code).Where(segments.Contains).Select(type => $"{file.Path} declares {type}"));
        Assert.Empty(faults);
    }

    [Fact]
    public void No_type_is_named_for_what_code_does_to_code()
    {
        string[] hollow = ["Manager", "Helper", "Helpers", "Utils", "Util", "Common", "Base", "Processor"];
        var faults = SourceTree.All.SelectMany(file =>
            Naming.TypesDeclared(file.Code)
                .Where(type => hollow.Any(word => type.EndsWith(word, StringComparison.Ordinal)))
                .Select(type => $"{file.Path} declares {type}"));
        Assert.Empty(faults);
    }
}
