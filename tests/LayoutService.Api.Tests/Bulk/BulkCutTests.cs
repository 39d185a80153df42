using LayoutService.Api.Tests.Running;

namespace LayoutService.Api.Tests.Bulk;

[Collection(OwnProcess.Name)]
public sealed class BulkCutTests
{
    [Fact]
    public async Task A_stream_whose_service_is_killed_has_no_summary()
    {
        var service = await RunningService.StartAsync();
        using var call = await OpenCall.ToAsync(service.Address);
        await call.SendAsync(BulkLines.Rooms(3));
        var lines = new List<string> { await call.LineAsync() };
        await service.DisposeAsync();
        await Assert.ThrowsAnyAsync<Exception>(async () =>
        {
            while (true)
            {
                lines.Add(await call.LineAsync());
            }
        });
        Assert.All(lines, line => Assert.StartsWith("{\"kind\":\"plan\"", line));
    }
}
