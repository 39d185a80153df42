using System.Text;
using System.Xml.Linq;

namespace LayoutService.Api.Tests.Orders;

/// <summary>The drawing and the printed job sheet of a plan.</summary>
public class PictureTests(Service service) : IClassFixture<Service>
{
    private const string Svg = "image/svg+xml";
    private static readonly string Room = SmallRoom.Text;

    [Fact]
    public async Task The_drawing_comes_as_a_form_and_inside_the_JSON_alike()
    {
        var drawn = await service.SendAsync(HttpMethod.Post, "/v1/plans", Svg, Room);
        Assert.Equal((200, Svg), (drawn.Status, drawn.MediaType));
        Assert.Equal("svg", XDocument.Parse(drawn.Text).Root!.Name.LocalName);
        var inside = await service.PostAsync("/v1/plans?include=all,drawing", Room);
        Assert.Equal(drawn.Text, inside.Json.GetProperty("drawing").GetString());
        Assert.True(inside.Json.TryGetProperty("takeoff", out _));
        Assert.False((await service.PostAsync("/v1/plans", Room)).Json.TryGetProperty("drawing", out _));
        Assert.False((await service.PostAsync("/v1/plans?include=all", Room)).Json.TryGetProperty("drawing", out _));
    }

    [Fact]
    public async Task The_drawing_comes_in_bulk_where_it_is_asked_for()
    {
        var reply = await service.PostAsync("/v1/plans/bulk?include=drawing", Encoding.UTF8.GetBytes(Room.ReplaceLineEndings("") + "\n"), "application/jsonl");
        Assert.Equal(200, reply.Status);
        Assert.Contains("\"drawing\":\"<svg", reply.Text.Replace("\\u003C", "<", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Layers_choose_what_is_drawn()
    {
        var drawn = await service.SendAsync(HttpMethod.Post, "/v1/plans?layers=outline,sheets", Svg, Room);
        var groups = XDocument.Parse(drawn.Text).Root!.Elements().Attributes("id").Select(id => id.Value);
        Assert.Equal(["outline", "sheets", "letters"], groups);
    }

    [Theory]
    [InlineData("roof", Svg, "A word of layers is not known; the words are outline, dimensions, joists, services, straps, marks, sheets, fixtures, bulkheads, insulation, legend, all.")]
    [InlineData("outline", "application/json", "The only name after the question mark is include.")]
    public async Task Layers_that_cannot_be_drawn_are_a_400(string layers, string form, string said)
    {
        var reply = await service.SendAsync(HttpMethod.Post, $"/v1/plans?layers={layers}", form, Room);
        Assert.Equal(400, reply.Status);
        Assert.Equal(said, reply.Json.GetProperty("detail").GetString());
    }

    [Theory]
    [InlineData("metric", 595, 842)]
    [InlineData("imperial", 612, 792)]
    public async Task The_job_sheet_has_the_paper_of_the_units_and_the_same_bytes_each_time(string units, int width, int height)
    {
        var room = units == "metric"
            ? Room
            : """{"units":"imperial","room":{"outline":[[0,0],[144,0],[144,120],[0,120]]},"joistFields":[{"run":"y","spacing":16,"first":8}]}""";
        var first = await service.SendAsync(HttpMethod.Post, "/v1/plans", "application/pdf", room);
        Assert.Equal((200, "application/pdf"), (first.Status, first.MediaType));
        Assert.Equal(first.Body, (await service.SendAsync(HttpMethod.Post, "/v1/plans", "application/pdf", room)).Body);
        using var document = PdfSharp.Pdf.IO.PdfReader.Open(new MemoryStream(first.Body), PdfSharp.Pdf.IO.PdfDocumentOpenMode.Import);
        Assert.InRange(document.PageCount, 4, 12);
        Assert.All(document.Pages.Cast<PdfSharp.Pdf.PdfPage>(), page => Assert.Equal((width, height), ((int)page.Width.Point, (int)page.Height.Point)));
    }
}
