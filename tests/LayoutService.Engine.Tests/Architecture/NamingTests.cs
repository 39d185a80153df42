namespace LayoutService.Engine.Tests.Architecture;

public sealed class NamingTests
{
    private static readonly Dictionary<string, IReadOnlyList<string>> Folders = new() { ["Cutting"] = [], ["Sheets"] = ["SheetPlan"] };

    [Theory]
    [InlineData("using LayoutService.Engine.Sheets;")]
    [InlineData("using static LayoutService.Engine.Sheets.SheetSearch;")]
    [InlineData("using Layout = LayoutService.Engine.Sheets.SheetLayout;")]
    [InlineData("global using LayoutService.Engine.Sheets;")]
    [InlineData("namespace LayoutService.Engine.Strapping;\nusing Sheets;")]
    [InlineData("var a = new global::LayoutService.Engine.Sheets.SheetPlan();")]
    [InlineData("Engine.Sheets.SheetPlan plan;")]
    [InlineData("return Sheets.SheetPlan.Empty;")]
    [InlineData("List<Sheets.SheetPlan> plans;")]
    [InlineData("var text = $\"{Sheets.SheetPlan.Name}\";")]
    public void A_folder_is_seen_however_it_is_named(string source) =>
        Assert.Equal(["Sheets"], Naming.FoldersNamed(SourceTree.WithoutCommentsAndTexts(source), Folders));

    [Theory]
    [InlineData("var stock = room.Survey.Sheets.Stock;")]
    [InlineData("var stock = room.Survey\n    .Sheets.Stock;")]
    [InlineData("// Sheets.SheetPlan is elsewhere")]
    [InlineData("/// <see cref=\"Sheets.SheetPlan\"/>")]
    [InlineData("var said = \"using Sheets.SheetPlan\";")]
    [InlineData("var said = $\"Sheets.Now {count}\";")]
    [InlineData("namespace LayoutService.Engine.Sheets;")]
    [InlineData("public SheetPlan Sheets { get; init; }")]
    [InlineData("var first = Sheets.First(s => s.Wide);")]
    public void A_member_a_comment_a_text_and_the_own_namespace_name_no_folder(string source) =>
        Assert.Empty(Naming.FoldersNamed(SourceTree.WithoutCommentsAndTexts(source), Folders));

    [Fact]
    public void Every_form_of_type_is_seen_where_it_is_declared()
    {
        const string Source = """
            public sealed class Alpha;
            internal readonly record struct Beta(int A);
            public abstract partial record Gamma
            file enum Delta { }
            public delegate long Epsilon(IReadOnlyList<int> all);
            """;
        Assert.Equal(["Alpha", "Beta", "Gamma", "Delta", "Epsilon"], Naming.TypesDeclared(Source));
    }

    [Fact]
    public void Namespaces_from_outside_are_listed_by_their_using_lines()
    {
        const string Source = "using System.Text;\nusing Shapes = NetTopologySuite.Geometries.Geometry;\nusing LayoutService.Engine.Measures;\nusing var stream = Open();\n";
        Assert.Equal(["System.Text", "NetTopologySuite.Geometries.Geometry"], Naming.OutsideNamespaces(Source));
    }
}
