namespace LayoutService.Api.Tests.Errors;

/// <summary>Rules of the batts.</summary>
public sealed class InsulationRuleTests(Service service) : IClassFixture<Service>
{
    private const string Batt = "\"thickness\":89,\"width\":381,\"length\":1220";

    [Theory]
    [InlineData("{\"batts\":[{\"id\":\"b\"}]}",
        "#/insulation/batts/0/thickness required: This member is needed.",
        "#/insulation/batts/0/width required: This member is needed.",
        "#/insulation/batts/0/length required: This member is needed.")]
    [InlineData("{\"batts\":[{\"thickness\":5,\"width\":381,\"length\":1220}]}", "#/insulation/batts/0/thickness out_of_range: This must be from 12 to 600 mm; it is 5 mm.")]
    [InlineData("{\"batts\":[{" + Batt + ",\"r\":0}]}", "#/insulation/batts/0/r out_of_range: This must be from 0.1 to 100; it is 0.")]
    [InlineData("{\"batts\":[{" + Batt + "},{\"id\":\"batt-1\"," + Batt + "}]}", "#/insulation/batts/1/id id_repeated: Another item of this list has the id \"batt-1\" already.")]
    [InlineData("{\"batts\":[{" + Batt + ",\"packPrice\":30}]}", "#/prices/currency currency_missing: A price is given, but no currency.")]
    [InlineData("{\"bays\":\"region\"}", "#/insulation/region required: Bays of a region need the region.")]
    [InlineData("{\"region\":[[0,0],[900,0],[900,900]]}", "#/insulation/region region_without_bays: A region goes with bays: region.")]
    [InlineData("{\"bays\":\"region\",\"region\":[[9000,0],[9900,0],[9900,900]]}", "#/insulation/region region_outside_room: This region does not lie over the room.")]
    [InlineData("{\"bays\":\"region\",\"region\":[[0,0],[900,900],[900,0],[0,900]]}", "#/insulation/region/2 outline_crosses_itself: The edge from this corner meets the edge from corner 0; an outline does not cross or touch itself.")]
    public async Task Batts_that_cannot_be_are_refused(string json, params string[] faults)
    {
        var reply = await service.PostAsync("/v1/insulation", SmallRoom.With("insulation", json));
        Assert.Equal(422, reply.Status);
        Assert.Equal(faults, reply.Faults);
    }
}
