using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.RegularExpressions;
using LayoutService.Api.Tests;
using LayoutService.Api.Tests.Running;

namespace LayoutService.Browser.Tests;

/// <summary>
/// The module that is served is what the sources give, the sources are sound, and what describes the element describes all of it.
/// With LAYOUT_REGENERATE=1 module, types and the page's snippet are written anew instead of compared.
/// </summary>
public sealed class SourceTests
{
    private const int MostGzippedBytes = 40_000;
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(3);
    private static readonly string Folder = Path.Combine(Repository.Root, "src", "LayoutService.Calculator");
    private static readonly string Module = Path.Combine(Repository.Root, "src", "LayoutService.Api", "wwwroot", "ceiling-calculator.js");

    /// <summary>The tools, installed once for the whole run as the lock file says.</summary>
    private static readonly Lazy<Task<string>> Tools = new(() =>
    {
        var installed = new FileInfo(Path.Combine(Folder, "node_modules", ".package-lock.json"));
        return installed.Exists && installed.LastWriteTimeUtc >= File.GetLastWriteTimeUtc(Path.Combine(Folder, "package-lock.json"))
            ? Task.FromResult(string.Empty)
            : Tool.RunAsync("npm", ["ci", "--silent", "--no-audit", "--no-fund"], Longest, Folder);
    });

    [NeedsFact("npm", "npm")]
    public async Task The_module_is_what_the_sources_give()
    {
        await Tools.Value;
        var made = Path.GetTempFileName();
        await Tool.RunAsync("node", ["bundle.mjs", made], Longest, Folder);
        var bytes = await File.ReadAllBytesAsync(made);
        File.Delete(made);
        if (Repository.Regenerate)
        {
            await File.WriteAllBytesAsync(Module, bytes);
        }

        var committed = await File.ReadAllBytesAsync(Module);
        Assert.True(bytes.AsSpan().SequenceEqual(committed), "Run npm run bundle in src/LayoutService.Calculator.");
    }

    [NeedsFact("npm", "npm")]
    public async Task The_sources_have_no_fault_that_a_strict_reader_of_types_finds()
    {
        await Tools.Value;
        await Tool.RunAsync("npm", ["run", "--silent", "check"], Longest, Folder);
    }

    [NeedsFact("npm", "npm")]
    public async Task The_types_are_those_of_the_Contract()
    {
        await Tools.Value;
        var file = Path.Combine(Folder, "source", "contract.d.ts");
        var made = Repository.Regenerate ? file : Path.GetTempFileName();
        await Tool.RunAsync("node", ["types.mjs", Repository.OpenApi("layout-service.v1.json"), made], Longest, Folder);
        Assert.Equal(await File.ReadAllTextAsync(file), await File.ReadAllTextAsync(made));
    }

    [Fact]
    public async Task The_module_is_small()
    {
        using var packed = new MemoryStream();
        await using (var gzip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            await gzip.WriteAsync(await File.ReadAllBytesAsync(Module));
        }

        Assert.InRange(packed.Length, 1, MostGzippedBytes);
    }

    [Fact]
    public void The_manifest_names_each_attribute_event_part_and_property_of_the_source_and_no_other()
    {
        var element = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "custom-elements.json"))).RootElement.GetProperty("modules")[0].GetProperty("declarations")[0];
        var sources = Directory.GetFiles(Path.Combine(Folder, "source"), "*.ts", SearchOption.AllDirectories).Select(File.ReadAllText).ToList();
        var main = File.ReadAllText(Path.Combine(Folder, "source", "element.ts"));
        var style = File.ReadAllText(Path.Combine(Folder, "source", "calculator.css"));
        Assert.Equal(Found([main], @"(?:get|has)Attribute\('([a-z]+)'\)"), Named(element, "attributes"));
        Assert.Equal(Found([main], @"#tell\('([a-z-]+)'"), Named(element, "events"));
        Assert.Equal(Found(sources, @"\bpart: '([a-z]+)'"), Named(element, "cssParts"));
        Assert.Equal(Found([style], @"var\((--ceiling-[a-z-]+)"), Named(element, "cssProperties"));
    }

    [Fact]
    public async Task The_page_on_embedding_names_them_too_and_shows_the_address_and_hash_that_are_served()
    {
        var page = Path.Combine(Repository.Root, "docs", "embedding.md");
        var text = await File.ReadAllTextAsync(page);
        var bytes = await File.ReadAllBytesAsync(Module);
        var now = Regex.Replace(text, "/calculator/[0-9a-f]{12}/", $"/calculator/{Convert.ToHexStringLower(SHA256.HashData(bytes))[..12]}/");
        now = Regex.Replace(now, "sha384-[A-Za-z0-9+/=]{64}", "sha384-" + Convert.ToBase64String(SHA384.HashData(bytes)));
        if (Repository.Regenerate)
        {
            await File.WriteAllTextAsync(page, now);
            text = now;
        }

        Assert.Equal(now, text);
        var element = JsonDocument.Parse(await File.ReadAllTextAsync(Path.Combine(Folder, "custom-elements.json"))).RootElement.GetProperty("modules")[0].GetProperty("declarations")[0];
        foreach (var name in new[] { "attributes", "events", "cssParts", "cssProperties" }.SelectMany(list => Named(element, list)))
        {
            Assert.Contains($"`{name}`", text, StringComparison.Ordinal);
        }
    }

    private static IEnumerable<string> Found(IEnumerable<string> sources, string pattern) =>
        sources.SelectMany(source => Regex.Matches(source, pattern)).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal);

    private static IEnumerable<string> Named(JsonElement element, string list) =>
        element.GetProperty(list).EnumerateArray().Select(item => item.GetProperty("name").GetString()!).Order(StringComparer.Ordinal);
}
