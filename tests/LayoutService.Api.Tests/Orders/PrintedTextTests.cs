using System.Diagnostics;
using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Orders;

/// <summary>A test that needs the program pdftotext (of Debian's poppler-utils), and says so where it is not there.</summary>
public sealed class NeedsPdfToTextAttribute : FactAttribute
{
    public NeedsPdfToTextAttribute()
    {
        var places = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        if (!places.Any(place => File.Exists(Path.Combine(place, "pdftotext"))))
        {
            Skip = "pdftotext is not installed (poppler-utils).";
        }
    }
}

/// <summary>The job sheet as another program reads it, beside the figures of the same plan's JSON.</summary>
public partial class PrintedTextTests(Service service) : IClassFixture<Service>
{
    [NeedsPdfToText]
    public async Task Marks_cuts_sheets_order_and_takeoff_are_printed_as_the_answer_has_them()
    {
        var room = SmallRoom.With("fixtures", """[{"id":"lamp","kind":"slim-light","at":[900,1200],"cutout":{"diameter":150}}]""");
        var printed = await Printed((await service.SendAsync(HttpMethod.Post, "/v1/plans", "application/pdf", room)).Body);
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        var said = new List<string>();
        said.AddRange(plan.GetProperty("strapping").GetProperty("rows").EnumerateArray().Select(row =>
            $"{row.GetProperty("id").GetString()} {row.GetProperty("marks")[0].GetProperty("nearEdgeText").GetString()}"));
        said.AddRange(plan.GetProperty("cutPlan").GetProperty("stock").EnumerateArray().SelectMany(stick => stick.GetProperty("cuts").EnumerateArray()).Select(cut =>
            $"{cut.GetProperty("pieceId").GetString()}: {cut.GetProperty("lengthText").GetString()}"));
        said.AddRange(plan.GetProperty("cutPlan").GetProperty("sheetStock").EnumerateArray().Select(sheet => $"({sheet.GetProperty("stockId").GetString()})"));
        said.AddRange(plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().SelectMany(piece => piece.GetProperty("cutouts").EnumerateArray()).Select(hole =>
            $"hole lamp: {hole.GetProperty("markText").GetString()}"));
        said.AddRange(plan.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("text").GetString()!));
        said.AddRange(plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray().Select(line =>
            $"{line.GetProperty("description").GetString()} {line.GetProperty("counted").GetRawText()} {line.GetProperty("quantity").GetRawText()}"));
        said.AddRange(plan.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("text").GetString()!));
        Assert.Contains(said, text => text.StartsWith("hole lamp: Face up", StringComparison.Ordinal));
        said.Add("On the sheet as pictured");
        Assert.All(said, text => Assert.Contains(Gaps().Replace(text, ""), printed, StringComparison.Ordinal));
    }

    // lines are broken where they must be: compared without gaps
    private static async Task<string> Printed(byte[] document)
    {
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllBytesAsync(file, document);
            using var reader = Process.Start(new ProcessStartInfo("pdftotext", ["-raw", "-enc", "UTF-8", file, "-"]) { RedirectStandardOutput = true })!;
            var text = await reader.StandardOutput.ReadToEndAsync();
            await reader.WaitForExitAsync();
            return Gaps().Replace(text, "");
        }
        finally
        {
            File.Delete(file);
        }
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Gaps();
}
