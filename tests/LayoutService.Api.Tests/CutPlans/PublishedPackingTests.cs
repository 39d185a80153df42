using System.Globalization;

namespace LayoutService.Api.Tests.CutPlans;

/// <summary>
/// Published one-dimensional packing problems, posted as they are printed. Source: J. E. Beasley, OR-Library, bin packing
/// section, files binpack1 (20 instances, 120 items of 20 to 100, capacity 150) and binpack5 (20 triplet instances, 60
/// items, capacity 100.0), first used in E. Falkenauer, Journal of Heuristics 2 (1996) 5-30. The bin count stands as third
/// number of each instance: the best known when the file was made. Two of them take one bin fewer (u120_08 and u120_19);
/// the plan itself is the proof, as it is recomputed here.
/// </summary>
public class PublishedPackingTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string> Instances => [.. All().Select(i => i.Name)];

    [Theory]
    [MemberData(nameof(Instances))]
    public async Task An_instance_is_cut_from_the_published_number_of_lengths_or_fewer_and_proved(string name)
    {
        var instance = All().Single(i => i.Name == name);
        var wanted = string.Join(",", instance.Items.Select(item => $"{{\"length\":{item}}}"));
        var request = $"{{\"units\":\"metric\",\"kerf\":0,\"endTrim\":0,\"sticks\":{{\"wanted\":[{wanted}],\"stock\":[{{\"length\":{instance.Capacity}}}]}}}}";
        var reply = await service.PostAsync("/v1/cut-plans", request);
        StickCheck.Whole(request, reply);
        var fewer = name is "u120_08" or "u120_19" ? 1 : 0;
        Assert.Equal(instance.Bins - fewer, reply.Json.GetProperty("stock").GetArrayLength());
        Assert.True(reply.Json.GetProperty("results")[0].GetProperty("provedOptimal").GetBoolean());
    }

    /// <summary>
    /// A cutting-stock example reprinted widely: 13 widths on a roll of 5600, at least 73 rolls. The numbers are from a
    /// secondary copy; the first publication is not known to us.
    /// </summary>
    [Fact]
    public async Task The_thirteen_widths_take_73_rolls()
    {
        (int Width, int Count)[] wanted =
        [
            (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20),
            (2000, 10), (2050, 12), (2100, 14), (2140, 16), (2150, 18), (2200, 20),
        ];
        var pieces = string.Join(",", wanted.Select(w => $"{{\"id\":\"w{w.Width}\",\"length\":{w.Width},\"count\":{w.Count}}}"));
        var request = $"{{\"units\":\"metric\",\"kerf\":0,\"sticks\":{{\"wanted\":[{pieces}],\"stock\":[{{\"id\":\"roll\",\"length\":5600}}]}}}}";
        var reply = await service.PostAsync("/v1/cut-plans", request);
        StickCheck.Whole(request, reply);
        Assert.Equal(73, reply.Json.GetProperty("stock").GetArrayLength());
        Assert.True(reply.Json.GetProperty("results")[0].GetProperty("provedOptimal").GetBoolean());
    }

    private static IEnumerable<(string Name, string Capacity, int Bins, string[] Items)> All() => [.. Read("binpack1.txt"), .. Read("binpack5.txt")];

    private static IEnumerable<(string Name, string Capacity, int Bins, string[] Items)> Read(string file)
    {
        var path = Path.Combine(Repository.Root, "tests", "LayoutService.Engine.Tests", "Cutting", "Published", file);
        var words = File.ReadAllText(path).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var at = 1;
        for (var n = int.Parse(words[0], CultureInfo.InvariantCulture); n > 0; n--)
        {
            var items = int.Parse(words[at + 2], CultureInfo.InvariantCulture);
            yield return (words[at], words[at + 1], int.Parse(words[at + 3], CultureInfo.InvariantCulture), words[(at + 4)..(at + 4 + items)]);
            at += 4 + items;
        }
    }
}
