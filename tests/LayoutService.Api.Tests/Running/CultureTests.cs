using System.Text;

namespace LayoutService.Api.Tests.Running;

[Collection(OwnProcess.Name)]
public sealed class CultureTests
{
    [Fact]
    public async Task Another_culture_time_zone_and_one_processor_change_no_byte()
    {
        await using var here = await RunningService.StartAsync();
        await using var there = await RunningService.StartAsync(0, ("LANG", "tr_TR.UTF-8"), ("LC_ALL", "tr_TR.UTF-8"), ("TZ", "Pacific/Auckland"), ("DOTNET_PROCESSOR_COUNT", "1"), ("DOTNET_gcServer", "0"));
        foreach (var name in new[] { "l-room-with-chimney", "minimal" })
        {
            foreach (var form in new[] { "application/json", "text/csv", "image/svg+xml", "application/pdf" })
            {
                Assert.Equal(await AskAsync(here, name, form), await AskAsync(there, name, form));
            }
        }
    }

    private static async Task<byte[]> AskAsync(RunningService service, string example, string form)
    {
        using var client = new HttpClient { BaseAddress = service.Address };
        client.DefaultRequestHeaders.Add("Accept", form);
        using var content = new StringContent(Repository.ExampleRequest(example), Encoding.UTF8, "application/json");
        using var response = await client.PostAsync("/v1/plans", content);
        Assert.Equal(200, (int)response.StatusCode);
        return await response.Content.ReadAsByteArrayAsync();
    }
}
