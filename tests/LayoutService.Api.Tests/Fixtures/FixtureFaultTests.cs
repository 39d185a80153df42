namespace LayoutService.Api.Tests.Fixtures;

public sealed class FixtureFaultTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("fixtures", "[{\"kind\":\"alarm\",\"at\":[9000,100],\"cutout\":{\"diameter\":100}}]", "#/fixtures/0/at fixture_outside_room: This fixture does not lie inside the room.")]
    [InlineData("fixtures", "[{\"kind\":\"alarm\",\"at\":[900,900],\"cutout\":{\"diameter\":100,\"width\":50}}]", "#/fixtures/0/cutout cutout_shape: A hole has either a diameter, or a width and a height.")]
    [InlineData("fixtures", "[{\"kind\":\"alarm\",\"at\":[900,900],\"cutout\":{\"width\":50}}]", "#/fixtures/0/cutout cutout_shape: A hole has either a diameter, or a width and a height.")]
    [InlineData("fixtures", "[{\"kind\":\"access-door\",\"at\":[1500,1500],\"cutout\":{\"width\":1200,\"height\":1300}}]", "#/fixtures/0/cutout cutout_larger_than_sheet: This hole is larger than any sheet in stock; make it an opening of the room.")]
    [InlineData("fixtures", "[{\"kind\":\"alarm\",\"cutout\":{\"diameter\":100}}]", "#/fixtures/0/at required: This member is needed.")]
    [InlineData("fixtures", "[{\"kind\":\"alarm\",\"at\":[900,900]}]", "#/fixtures/0/cutout required: This member is needed.")]
    [InlineData("fixtures", "[{\"kind\":\"alarm\",\"at\":[900,900],\"cutout\":{\"diameter\":100},\"remoteBox\":{\"width\":40,\"length\":100}}]", "#/fixtures/0/remoteBox/height required: This member is needed.")]
    [InlineData("fixtures", "[{\"id\":\"a\",\"kind\":\"alarm\",\"at\":[900,900],\"cutout\":{\"diameter\":100}},{\"id\":\"a\",\"kind\":\"alarm\",\"at\":[1900,900],\"cutout\":{\"diameter\":100}}]", "#/fixtures/1/id id_repeated: Another item of this list has the id \"a\" already.")]
    [InlineData("fixtures", "[{\"kind\":\"alarm\",\"at\":[900,900],\"cutout\":{\"diameter\":100}},{\"kind\":\"alarm\",\"at\":[960,900],\"cutout\":{\"diameter\":100}}]", "#/fixtures/1/at fixtures_overlap: The hole of this fixture overlaps that of the fixture at #/fixtures/0.")]
    [InlineData("mounts", "[{\"at\":[-5,100],\"mass\":12}]", "#/mounts/0/at mount_outside_room: This mount does not lie inside the room.")]
    [InlineData("mounts", "[{\"at\":[500,100]}]", "#/mounts/0/mass required: This member is needed.")]
    [InlineData("lightGrid", "{\"count\":4}", "#/lightGrid/fixture required: This member is needed.")]
    [InlineData("lightGrid", "{\"count\":4,\"lux\":100,\"lumens\":800,\"fixture\":{\"kind\":\"slim-light\",\"cutout\":{\"diameter\":100}}}", "#/lightGrid grid_how_many: A grid is asked for in one way: by count, by rows and columns, or by lux.")]
    [InlineData("lightGrid", "{\"rows\":4,\"fixture\":{\"kind\":\"slim-light\",\"cutout\":{\"diameter\":100}}}", "#/lightGrid/columns required: Rows and columns go together.")]
    [InlineData("lightGrid", "{\"lux\":100,\"fixture\":{\"kind\":\"slim-light\",\"cutout\":{\"diameter\":100}}}", "#/lightGrid/lumens required: The light wanted needs the lumens of one fixture.")]
    [InlineData("lightGrid", "{\"count\":4,\"fixture\":{\"kind\":\"slim-light\",\"at\":[9,9],\"cutout\":{\"diameter\":100}}}", "#/lightGrid/fixture/at grid_fixture_placed: The grid finds the places; leave this out.")]
    [InlineData("lightGrid", "{\"lux\":5000,\"lumens\":100,\"fixture\":{\"kind\":\"slim-light\",\"cutout\":{\"diameter\":100}}}", "#/lightGrid/lux grid_too_many: This asks for 1125 lights; at most 200 are laid out.")]
    public async Task What_cannot_be_is_told_with_its_place_and_reason(string path, string json, string fault)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(path, json));
        Assert.Equal(422, reply.Status);
        Assert.Equal([fault], reply.Faults);
    }

    [Fact]
    public async Task A_light_in_a_post_is_told()
    {
        var room = SmallRoom.With("room.openings", "[{\"id\":\"post\",\"kind\":\"post\",\"outline\":[[1000,1000],[1100,1000],[1100,1100],[1000,1100]]}]");
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(room, "fixtures", "[{\"kind\":\"slim-light\",\"at\":[1050,1050],\"cutout\":{\"diameter\":80}}]"));
        Assert.Equal(["#/fixtures/0/at fixture_in_opening: This fixture lies inside the opening at #/room/openings/0."], reply.Faults);
    }
}
