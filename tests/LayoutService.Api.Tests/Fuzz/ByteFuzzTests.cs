using System.Globalization;
using System.Text;

namespace LayoutService.Api.Tests.Fuzz;

/// <summary>
/// Bodies whose bytes are changed, dropped, doubled and spliced at random: read or refused, never a fault of the service. Set
/// LAYOUT_BYTE_FUZZ for more and LAYOUT_BYTE_SEED for others.
/// </summary>
public class ByteFuzzTests(Service service) : IClassFixture<Service>
{
    private static readonly byte[][] Splices = [.. new[] { "\"", "\\", "\\u", "\\ud800", "{", "}", "[", "]", ",", ":", "null", "1e9", "-", ".", "\0", "\u00FF", "//", "/*", "\uFEFF", "e", "E+", "0x" }.Select(Encoding.UTF8.GetBytes)];

    [Fact]
    public async Task Bytes_changed_at_random_are_read_or_refused_and_never_fail()
    {
        var count = Setting("LAYOUT_BYTE_FUZZ", 1000);
        var dice = new Random(Setting("LAYOUT_BYTE_SEED", 20250602));
        byte[][] starts = [Encoding.UTF8.GetBytes(SmallRoom.Text), .. Repository.Examples.Select(name => Encoding.UTF8.GetBytes(Repository.ExampleRequest(name)))];
        var statuses = new HashSet<int>();
        for (var round = 0; round < count; round++)
        {
            var body = Bent([.. starts[dice.Next(2) == 0 ? 0 : dice.Next(starts.Length)]], dice);
            var reply = await service.PostAsync("/v1/plans/check", body);
            Assert.True(reply.Status is 200 or 400 or 422, $"round {round}: {reply.Status} for {Convert.ToBase64String(body)}");
            statuses.Add(reply.Status);
        }

        Assert.Equal([200, 400, 422], statuses.Order());
    }

    private static byte[] Bent(List<byte> body, Random dice)
    {
        for (var times = dice.Next(1, 5); times > 0 && body.Count > 0; times--)
        {
            ByteBender.Bend(body, dice.Next(body.Count), dice, Splices);
        }

        return [.. body];
    }

    private static int Setting(string name, int usual) =>
        Environment.GetEnvironmentVariable(name) is { } text ? int.Parse(text, CultureInfo.InvariantCulture) : usual;
}
