using System.Text.RegularExpressions;

namespace LayoutService.Engine.Tests.Architecture;

/// <summary>What is sent and answered never binds to the engine's types; mapping and writing stand between.</summary>
public sealed class WireStaysApartTests
{
    [Theory]
    [InlineData("src/LayoutService.Api/Plans/Requests")]
    [InlineData("src/LayoutService.Api/Plans/Answers")]
    [InlineData("src/LayoutService.Api/CutPlans/Requests")]
    [InlineData("src/LayoutService.Api/CutPlans/Answers")]
    [InlineData("src/LayoutService.Api/Jobs/Requests")]
    [InlineData("src/LayoutService.Api/Jobs/Answers")]
    [InlineData("src/LayoutService.Api/Comparisons/Requests")]
    [InlineData("src/LayoutService.Api/Comparisons/Answers")]
    public void Requests_and_answers_name_nothing_of_the_engine(string folder)
    {
        var files = SourceTree.Read(folder);
        Assert.NotEmpty(files);
        Assert.Empty(files.Where(file => Regex.IsMatch(file.Code, @"\bEngine\s*\.\s*[A-Z]")).Select(file => file.Path));
    }

    [Fact]
    public void The_api_leaves_polygons_to_the_engine() =>
        Assert.Empty(SourceTree.Read("src/LayoutService.Api").Where(file => file.Code.Contains("NetTopologySuite", StringComparison.Ordinal)).Select(file => file.Path));
}
