using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace LayoutService.Engine.Tests.Architecture;

public sealed class EngineIsPureTests
{
    // a clock, chance, the machine, another thread, a file or a wire: each would make one request have two answers
    private const string Impure =
        @"(?<![\w.])(DateTime|DateTimeOffset|DateOnly|TimeOnly|TimeProvider|Stopwatch|Random|RandomNumberGenerator|Guid|Environment|Console"
        + @"|Thread|ThreadPool|Task|ValueTask|Timer|Process|HttpClient|Socket|FileStream|FileInfo|DirectoryInfo|Interlocked)\b"
        + @"|(?<![\w.])(File|Directory|Path|Parallel)\s*\.\s*[A-Z]"
        + @"|\b(async|await)\s"
        + @"|\bSystem\.(IO|Net|Threading|Diagnostics\.Process)\b";

    [Fact]
    public void The_engine_knows_no_clock_no_chance_no_file_and_no_thread()
    {
        var faults = SourceTree.Engine.SelectMany(file =>
            Regex.Matches(file.Code, Impure).Select(match => $"{file.Path}: {match.Value}"));
        Assert.Empty(faults);
    }

    [Theory]
    [InlineData("var now = DateTime.UtcNow;")]
    [InlineData("new Random(1)")]
    [InlineData("File.ReadAllText(path)")]
    [InlineData("Parallel.For(0, 9, Do)")]
    [InlineData("using System.IO;")]
    [InlineData("await Wait();")]
    public void Impure_code_would_be_noticed(string code) => Assert.Matches(Impure, code);

    [Fact]
    public void The_engine_stands_on_one_package_and_no_other_project()
    {
        var project = XDocument.Parse(SourceTree.ReadText("src/LayoutService.Engine/LayoutService.Engine.csproj"));
        Assert.Equal(["NetTopologySuite"], Included(project, "PackageReference"));
        Assert.Empty(Included(project, "ProjectReference"));
        Assert.Empty(Included(project, "FrameworkReference"));
        Assert.Empty(Included(project, "Using"));
    }

    [Fact]
    public void The_auditor_shares_no_code_with_what_it_audits()
    {
        var project = XDocument.Parse(SourceTree.ReadText("tests/LayoutService.Auditor/LayoutService.Auditor.csproj"));
        Assert.Empty(Included(project, "ProjectReference"));
        Assert.Empty(Included(project, "Reference"));
        Assert.Empty(Included(project, "Compile"));
        var faults = SourceTree.Read("tests/LayoutService.Auditor")
            .Where(file => Regex.IsMatch(file.Code, @"\bLayoutService\.(Engine|Api)\b"));
        Assert.Empty(faults.Select(file => file.Path));
    }

    private static IEnumerable<string> Included(XDocument project, string item) =>
        project.Descendants(item).Select(element => (string?)element.Attribute("Include") ?? string.Empty);
}
