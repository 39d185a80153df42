using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Errors;

/// <summary>The same refusals in every environment, and never a word about the inside of the service.</summary>
public abstract partial class HostileBodyTests(Service service)
{
    public static TheoryData<string> Bodies => [.. HostileBodies.Names];

    [Fact]
    public void There_are_at_least_thirty_five() => Assert.True(HostileBodies.Names.Count() >= 35);

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_hostile_body_is_refused_with_its_place_and_code(string name)
    {
        var (body, status, code) = HostileBodies.Of(name);
        var reply = await service.PostAsync("/v1/plans", body);
        Assert.Equal(status, reply.Status);
        Assert.Equal("application/problem+json", reply.MediaType);
        Assert.Contains(code, reply.Codes);
        Assert.All(reply.Json.GetProperty("errors").EnumerateArray(), e => Assert.StartsWith("#", e.GetProperty("pointer").GetString()));
        Assert.DoesNotMatch(InsideWords(), reply.Text);
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task The_check_call_gives_exactly_the_errors_of_the_real_call(string name)
    {
        var body = HostileBodies.Of(name).Body;
        var real = await service.PostAsync("/v1/plans", body);
        var check = await service.PostAsync("/v1/plans/check", body);
        Assert.Equal(real.Status, check.Status);
        Assert.Equal(real.Json.GetProperty("errors").GetRawText(), check.Json.GetProperty("errors").GetRawText());
    }

    [GeneratedRegex(@"System\.[A-Z]|Microsoft\.|LayoutService\.|   at |\.cs\b|/src/|Exception|BytePositionInLine|LineNumber: ")]
    private static partial Regex InsideWords();
}

public sealed class HostileBodyInProductionTests(HostileBodyInProductionTests.Running service)
    : HostileBodyTests(service), IClassFixture<HostileBodyInProductionTests.Running>
{
    public sealed class Running : Service
    {
        protected override string RunsIn => "Production";
    }
}

public sealed class HostileBodyInDevelopmentTests(DevelopmentService service) : HostileBodyTests(service), IClassFixture<DevelopmentService>;
