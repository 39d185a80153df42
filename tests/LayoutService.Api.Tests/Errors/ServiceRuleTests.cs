namespace LayoutService.Api.Tests.Errors;

/// <summary>Rules of the ducts, pipes and other services of a room.</summary>
public sealed class ServiceRuleTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("{\"kind\":\"duct\",\"bottom\":200}", "#/services/0 service_shape: A service has either a path with a width, or an outline.")]
    [InlineData("{\"kind\":\"duct\",\"path\":[[0,1000],[3000,1000]],\"bottom\":200}", "#/services/0/width required: A path needs a width.")]
    [InlineData("{\"kind\":\"duct\",\"outline\":[[0,0],[900,0],[900,300]],\"width\":300,\"bottom\":200}", "#/services/0/width service_shape: A width goes with a path; an outline has none.")]
    [InlineData("{\"kind\":\"duct\",\"path\":[[0,1000],[3000,1000]],\"width\":300}", "#/services/0/bottom required: This member is needed.")]
    [InlineData("{\"kind\":\"duct\",\"path\":[[0,1000],[3000,1000]],\"width\":300,\"top\":0,\"bottom\":-20}", "#/services/0/bottom service_upside_down: The bottom of a service does not lie above its top; both run down from the underside of the joists.")]
    [InlineData("{\"kind\":\"duct\",\"path\":[[90000,1000],[93000,1000]],\"width\":300,\"bottom\":200}", "#/services/0/path service_outside_room: This service does not run over the room.")]
    [InlineData("{\"kind\":\"pipe\",\"path\":[[0,1000],[0,1000]],\"width\":30,\"bottom\":20}", "#/services/0/path/1 path_corner_repeated: This corner is the same place as the one before it.")]
    [InlineData("{\"kind\":\"beam\",\"outline\":[[0,0],[900,900],[900,0],[0,900]],\"bottom\":200}", "#/services/0/outline/2 outline_crosses_itself: The edge from this corner meets the edge from corner 0; an outline does not cross or touch itself.")]
    public async Task A_service_that_cannot_be_is_refused(string json, string fault)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("services", $"[{json}]"));
        Assert.Equal(422, reply.Status);
        Assert.Equal([fault], reply.Faults);
    }

    [Fact]
    public async Task Ids_of_services_differ_also_from_those_that_are_made()
    {
        const string cable = "\"kind\":\"cable\",\"path\":[[0,1000],[3000,1000]],\"width\":12,\"bottom\":-50";
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("services", $"[{{{cable}}},{{\"id\":\"service-1\",{cable}}}]"));
        Assert.Equal(["#/services/1/id id_repeated: Another item of this list has the id \"service-1\" already."], reply.Faults);
    }
}
