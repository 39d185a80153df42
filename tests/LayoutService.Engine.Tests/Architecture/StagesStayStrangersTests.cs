using System.Text.RegularExpressions;

namespace LayoutService.Engine.Tests.Architecture;

public sealed class StagesStayStrangersTests
{
    private static readonly Dictionary<string, IReadOnlyList<string>> TypesByFolder = SourceTree.Engine
        .Where(file => SourceTree.EngineFolder(file).Length > 0)
        .GroupBy(SourceTree.EngineFolder)
        .ToDictionary(group => group.Key, group => (IReadOnlyList<string>)[.. group.SelectMany(file => Naming.TypesDeclared(file.Code)).Distinct()]);

    public static TheoryData<string> Folders => [.. FolderAllowances.ByFolder.Keys];

    [Fact]
    public void Every_folder_of_the_engine_is_in_the_allow_list() =>
        Assert.Equal(
            FolderAllowances.ByFolder.Keys,
            SourceTree.Engine.Select(SourceTree.EngineFolder).Distinct().Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_names_only_the_folders_it_may(string folder)
    {
        var allowed = FolderAllowances.ByFolder[folder].Append(folder).ToHashSet();
        var faults = SourceTree.Engine
            .Where(file => SourceTree.EngineFolder(file) == folder)
            .SelectMany(file => Naming.FoldersNamed(file.Code, TypesByFolder).Where(name => !allowed.Contains(name)).Select(name => $"{file.Path} names {name}"));
        Assert.Empty(faults);
    }

    [Fact]
    public void Every_file_of_the_engine_bears_the_namespace_of_its_folder()
    {
        var faults = SourceTree.Engine.Where(file =>
        {
            var folder = SourceTree.EngineFolder(file);
            var wanted = folder.Length == 0 ? "LayoutService.Engine" : $"LayoutService.Engine.{folder}";
            return !Regex.IsMatch(file.Code, $@"^namespace {Regex.Escape(wanted)};", RegexOptions.Multiline);
        });
        Assert.Empty(faults.Select(file => file.Path));
    }

    [Fact]
    public void Takeoff_and_steps_read_the_plan_records_of_the_stages_and_nothing_else_of_theirs()
    {
        var stages = SourceTree.Engine.Where(file => SourceTree.EngineFolder(file) is "Strapping" or "Sheets" or "Insulation" or "Fixtures").ToList();
        var records = stages.Where(file => FolderAllowances.PlanRecords.Contains(file.Name)).ToList();
        Assert.Equal(FolderAllowances.PlanRecords.Length, records.Count);

        var inner = stages.Except(records).SelectMany(file => Naming.TypesDeclared(file.Code)).Distinct().ToList();
        var readers = SourceTree.Engine.Where(file => FolderAllowances.Readers.Contains(SourceTree.EngineFolder(file)));
        var faults = readers.SelectMany(file =>
            inner.Where(type => Regex.IsMatch(file.Code, $@"(?<![\w.]|\.\s*)((global::)?(LayoutService\.)?(Engine\.)?(Strapping|Sheets|Insulation|Fixtures)\.)?{type}\b")).Select(type => $"{file.Path} names {type}"));
        Assert.Empty(faults);
    }

    [Fact]
    public void Polygon_overlay_is_used_by_geometry_alone()
    {
        var faults = SourceTree.Engine.SelectMany(file => Naming.OutsideNamespaces(file.Code)
            .Where(name => !name.StartsWith("System", StringComparison.Ordinal))
            .Where(name => !(name.StartsWith("NetTopologySuite", StringComparison.Ordinal) && SourceTree.EngineFolder(file) == "Geometry"))
            .Select(name => $"{file.Path} uses {name}"));
        Assert.Empty(faults);
    }
}
