using System.IO.Compression;
using System.Text;
using System.Xml.Linq;

namespace LayoutService.Api.Tests.Orders;

/// <summary>The forms of an answer other than JSON.</summary>
public class DocumentTests(Service service) : IClassFixture<Service>
{
    private const string Xlsx = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private static readonly string Room = SmallJob.Alone(SmallJob.Room(3600, 3000));

    [Theory]
    [InlineData(null, "application/json")]
    [InlineData("*/*", "application/json")]
    [InlineData("text/csv", "text/csv")]
    [InlineData("application/json;q=0.4, text/csv;q=0.5", "text/csv")]
    [InlineData("text/*, application/json;q=0.9", "text/csv")]
    [InlineData("application/xml", "application/xml")]
    [InlineData("text/csv;q=0, */*;q=0.1", "application/json")]
    [InlineData(Xlsx, Xlsx)]
    public async Task The_form_is_the_one_that_the_caller_likes_best(string? accept, string form)
    {
        var reply = await service.SendAsync(HttpMethod.Post, "/v1/plans", accept, Room);
        Assert.Equal((200, form), (reply.Status, reply.MediaType));
        Assert.Equal("Accept", reply.Headers["Vary"]);
    }

    [Fact]
    public async Task A_form_that_there_is_not_is_a_406() =>
        Assert.Equal(406, (await service.SendAsync(HttpMethod.Post, "/v1/plans", "image/png", Room)).Status);

    [Theory]
    [InlineData("takeoff")]
    [InlineData("cut-list")]
    [InlineData("rows")]
    [InlineData("checks")]
    public async Task A_csv_has_the_columns_that_its_metadata_names_and_as_many_cells_in_each_row(string view)
    {
        var reply = await service.SendAsync(HttpMethod.Post, $"/v1/plans?view={view}", "text/csv", Room);
        Assert.Equal($"</v1/csv-metadata/{view}>; rel=\"describedby\"; type=\"application/csvm+json\"", reply.Headers["Link"]);
        var rows = CsvReading.Of(reply.Text);
        var metadata = (await service.GetAsync($"/v1/csv-metadata/{view}")).Json;
        var names = metadata.GetProperty("tableSchema").GetProperty("columns").EnumerateArray().Select(c => c.GetProperty("name").GetString()!);
        Assert.Equal(names, rows[0]);
        Assert.True(rows.Count > 3);
        Assert.All(rows, row => Assert.Equal(rows[0].Count, row.Count));
    }

    [Fact]
    public async Task Each_hole_of_the_plan_is_a_row_with_the_mark_of_its_piece()
    {
        var suite = await File.ReadAllTextAsync(Repository.OpenApi("examples/l-suite-with-bulkhead.request.json"));
        var rows = CsvReading.Of((await service.SendAsync(HttpMethod.Post, "/v1/plans?view=holes", "text/csv", suite)).Text);
        var plan = (await service.PostAsync("/v1/plans", suite)).Json;
        var pieces = plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray()
            .Concat(plan.GetProperty("bulkheads").EnumerateArray().SelectMany(b => b.GetProperty("boards").EnumerateArray()));
        var holes = pieces.SelectMany(piece => piece.GetProperty("cutouts").EnumerateArray().Select(hole =>
            $"{piece.GetProperty("id").GetString()} {hole.GetProperty("fixtureId").GetString()} {hole.GetProperty("markText").GetString()}")).ToList();
        var (at, of, mark) = (rows[0].ToList().IndexOf("piece"), rows[0].ToList().IndexOf("fixture"), rows[0].ToList().IndexOf("mark_text"));
        Assert.Equal(holes, rows.Skip(1).Select(row => $"{row[at]} {row[of]} {row[mark]}"));
        Assert.True(holes.Count >= 17, $"{holes.Count} holes");
    }

    [Fact]
    public async Task The_amounts_of_a_csv_add_up_to_the_total()
    {
        var rows = CsvReading.Of((await service.SendAsync(HttpMethod.Post, "/v1/plans", "text/csv", Room)).Text);
        var amount = rows[0].ToList().IndexOf("amount");
        var total = (await service.PostAsync("/v1/plans", Room)).Json.GetProperty("takeoff").GetProperty("totals").Amount();
        Assert.Equal(total, rows.Skip(1).Where(r => r[amount].Length > 0).Sum(r => decimal.Parse(r[amount], System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public async Task A_cell_that_a_spreadsheet_would_calculate_is_made_harmless_and_a_quote_is_doubled()
    {
        var room = Room.Replace("\"code\":\"joint-tape\"", "\"code\":\"joint-tape\",\"sku\":\"=1+1,\\\"x\\\"\"", StringComparison.Ordinal);
        Assert.Contains("\"'=1+1,\"\"x\"\"\"", (await service.SendAsync(HttpMethod.Post, "/v1/plans", "text/csv", room)).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/v1/plans?view=takeoff", "application/json")]
    [InlineData("/v1/plans?view=order", "text/csv")]
    [InlineData("/v1/plans?view=lines", "text/csv")]
    public async Task A_view_that_the_form_does_not_have_is_a_400(string path, string accept)
    {
        var reply = await service.SendAsync(HttpMethod.Post, path, accept, Room);
        Assert.Equal((400, "application/problem+json"), (reply.Status, reply.MediaType));
    }

    [Theory]
    [InlineData("request-for-quotation", "RequestForQuotation")]
    [InlineData("order", "Order")]
    public async Task Ubl_members_are_known_and_stand_in_the_order_of_the_schema(string view, string name)
    {
        var reply = await service.SendAsync(HttpMethod.Post, $"/v1/plans?view={view}", "application/xml", Room);
        var root = XDocument.Parse(Encoding.UTF8.GetString(reply.Body)).Root!;
        Assert.Equal(XNamespace.Get($"urn:oasis:names:specification:ubl:schema:xsd:{name}-2") + name, root.Name);
        Assert.Empty(UblOrder.FaultsOf(root));
        Assert.Equal("RFQ-7", root.Elements().First(e => e.Name.LocalName == "ID").Value);
        Assert.Equal("2024-05-06", root.Elements().First(e => e.Name.LocalName == "IssueDate").Value);
        Assert.All(root.Descendants().Attributes("unitCode"), code => Assert.Contains(code.Value, new[] { "C62", "MTR", "KGM", "LTR", "FOT", "LBR" }));
        var lines = root.Elements().Count(e => e.Name.LocalName.EndsWith("Line", StringComparison.Ordinal));
        Assert.Equal(lines.ToString(System.Globalization.CultureInfo.InvariantCulture), root.Elements().First(e => e.Name.LocalName == "LineCountNumeric").Value);
    }

    [Theory]
    [InlineData("a value", "IssueDate is '2024-5-6'")]
    [InlineData("an amount", "PayableAmount is 'a hundred'")]
    [InlineData("the order", "Order holds")]
    [InlineData("one too many", "Order has !IssueDate twice")]
    [InlineData("one too few", "Order lacks !IssueDate")]
    public async Task What_the_schema_of_an_order_forbids_is_found(string broken, string fault)
    {
        var root = XDocument.Parse((await service.SendAsync(HttpMethod.Post, "/v1/plans?view=order", "application/xml", Room)).Text).Root!;
        Assert.Empty(UblOrder.FaultsOf(root));
        XElement Member(string name) => root.Descendants().First(e => e.Name.LocalName == name);
        var date = Member("IssueDate");
        switch (broken)
        {
            case "a value":
                date.Value = "2024-5-6";
                break;
            case "an amount":
                Member("PayableAmount").Value = "a hundred";
                break;
            case "the order":
                var count = Member("LineCountNumeric");
                count.Remove();
                date.AddAfterSelf(count);
                break;
            case "one too many":
                date.AddAfterSelf(new XElement(date));
                break;
            default:
                date.Remove();
                break;
        }

        Assert.Contains(UblOrder.FaultsOf(root), found => found.StartsWith(fault, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_order_adds_up_to_the_takeoff()
    {
        var root = XDocument.Parse((await service.SendAsync(HttpMethod.Post, "/v1/plans?view=order", "application/xml", Room)).Text).Root!;
        var total = (await service.PostAsync("/v1/plans", Room)).Json.GetProperty("takeoff").GetProperty("totals").Amount();
        Assert.Equal(total, (decimal)root.Descendants().First(e => e.Name.LocalName == "PayableAmount"));
        Assert.Equal(total, root.Descendants().Where(e => e.Name.LocalName == "LineItem").Sum(e => (decimal?)e.Elements().FirstOrDefault(a => a.Name.LocalName == "LineExtensionAmount") ?? 0));
    }

    [Fact]
    public async Task A_document_without_its_head_is_told_what_is_missing()
    {
        var reply = await service.SendAsync(HttpMethod.Post, "/v1/plans", "application/xml", SmallRoom.Text);
        Assert.Equal(["#/document/id", "#/document/issueDate", "#/document/buyer", "#/document/seller"], reply.Json.GetProperty("errors").EnumerateArray().Select(e => e.GetProperty("pointer").GetString()!));
    }

    [Fact]
    public async Task A_workbook_has_a_sheet_for_each_table_and_the_same_bytes_again()
    {
        var first = await service.SendAsync(HttpMethod.Post, "/v1/plans", Xlsx, Room);
        Assert.Equal(first.Body, (await service.SendAsync(HttpMethod.Post, "/v1/plans", Xlsx, Room)).Body);
        using var archive = new ZipArchive(new MemoryStream(first.Body));
        XNamespace main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        using var workbook = archive.GetEntry("xl/workbook.xml")!.Open();
        Assert.Equal(["takeoff", "cut-list", "rows", "checks", "holes"], XDocument.Load(workbook).Descendants(main + "sheet").Select(s => s.Attribute("name")!.Value));
        using var sheet = archive.GetEntry("xl/worksheets/sheet1.xml")!.Open();
        var csv = CsvReading.Of((await service.SendAsync(HttpMethod.Post, "/v1/plans", "text/csv", Room)).Text);
        Assert.Equal(csv.Count, XDocument.Load(sheet).Descendants(main + "row").Count());
    }

    [Theory]
    [InlineData("application/xml", "U+FFFE")]
    [InlineData(Xlsx, "U+FFFE")]
    public async Task A_character_that_xml_cannot_hold_is_replaced(string accept, string character)
    {
        var held = ((char)Convert.ToInt32(character[2..], 16)).ToString();
        var room = SmallRoom.With(Room, "prices.items.3.sku", System.Text.Json.JsonSerializer.Serialize("a" + held + "\U0001F4A1"));
        var reply = await service.SendAsync(HttpMethod.Post, "/v1/plans", accept, room);
        Assert.Equal(200, reply.Status);
        using var stream = accept == Xlsx ? new ZipArchive(new MemoryStream(reply.Body)).GetEntry("xl/worksheets/sheet1.xml")!.Open() : new MemoryStream(reply.Body);
        Assert.Contains("a\uFFFD\U0001F4A1", XDocument.Load(stream).Root!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text/csv")]
    [InlineData("application/xml")]
    [InlineData(Xlsx)]
    public async Task A_job_has_the_same_forms(string accept)
    {
        var reply = await service.SendAsync(HttpMethod.Post, "/v1/jobs", accept, SmallJob.Of((3600, 3000), (2500, 2100)));
        Assert.Equal((200, accept), (reply.Status, reply.MediaType));
    }
}
