namespace LayoutService.Api.Tests.Errors;

public class HeaderTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("image/svg+xml")]
    [InlineData("text/html")]
    public async Task What_a_browser_may_show_says_what_it_may_load(string form)
    {
        var reply = form == "text/html"
            ? await service.GetAsync("/problems/no-plan", form)
            : await service.SendAsync(HttpMethod.Post, "/v1/plans", form, SmallRoom.Text);
        Assert.Equal(200, reply.Status);
        Assert.Equal(form, reply.MediaType);
        Assert.StartsWith("default-src 'none'", reply.Headers["Content-Security-Policy"], StringComparison.Ordinal);
        Assert.Equal("nosniff", reply.Headers["X-Content-Type-Options"]);
    }
}
