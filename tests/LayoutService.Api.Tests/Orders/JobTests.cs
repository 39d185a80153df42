using System.Text.Json;

namespace LayoutService.Api.Tests.Orders;

/// <summary>Many rooms as one order.</summary>
public class JobTests(Service service) : IClassFixture<Service>
{
    private static readonly (int, int)[][] Jobs =
    [
        [(3600, 3000), (2500, 2100), (4100, 3300)],
        [(3000, 3000), (3000, 3000), (3000, 3000), (3000, 3000)],
        [(2450, 5200), (1900, 1700)],
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Jobs.Length)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task Lines_shares_and_taxes_add_up_to_the_minor_unit(int number)
    {
        var answer = await OrderAsync(SmallJob.Of(Jobs[number]));
        var takeoff = answer.GetProperty("takeoff");
        var totals = takeoff.GetProperty("totals");
        var rooms = answer.GetProperty("rooms").EnumerateArray().Select(r => r.GetProperty("share")).ToList();
        var lines = takeoff.GetProperty("lines").EnumerateArray().Where(l => l.TryGetProperty("amount", out _)).ToList();
        Assert.Equal(totals.Amount(), lines.Sum(l => l.Amount()));
        Assert.Equal(totals.Amount(), rooms.Sum(r => r.Amount()));
        Assert.Equal(totals.GetProperty("withTax").GetDecimal(), rooms.Sum(r => r.GetProperty("withTax").GetDecimal()));
        Assert.Equal(decimal.Round(totals.Amount() * 0.13m, 2, MidpointRounding.AwayFromZero), totals.GetProperty("taxes")[0].Amount());
        Assert.All(rooms, r => Assert.Equal(decimal.Round(r.Amount(), 2), r.Amount()));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task An_order_never_costs_more_than_its_rooms_bought_one_by_one(int number)
    {
        var answer = await OrderAsync(SmallJob.Of(Jobs[number]));
        var apart = 0m;
        foreach (var (width, depth) in Jobs[number])
        {
            apart += (await service.PostAsync("/v1/plans", SmallJob.Alone(SmallJob.Room(width, depth)))).Json.GetProperty("takeoff").GetProperty("totals").Amount();
        }

        var saving = answer.GetProperty("saving");
        Assert.Equal(apart, saving.GetProperty("amountApart").GetDecimal());
        Assert.Equal(answer.GetProperty("takeoff").GetProperty("totals").Amount(), saving.GetProperty("amountTogether").GetDecimal());
        Assert.InRange(saving.Amount(), 0.01m, apart);
    }

    [Fact]
    public async Task Every_piece_of_every_room_is_cut_once_and_fits_its_stock()
    {
        var answer = await OrderAsync(SmallJob.Of(Jobs[0]), "?include=strapping,sheets");
        var plan = answer.GetProperty("cutPlan");
        var cut = plan.GetProperty("stock").EnumerateArray().Concat(plan.GetProperty("sheetStock").EnumerateArray())
            .SelectMany(s => s.GetProperty("cuts").EnumerateArray()).Select(c => c.GetProperty("pieceId").GetString()!).ToList();
        var pieces = answer.GetProperty("rooms").EnumerateArray().SelectMany(room => room.GetProperty("plan").GetProperty("strapping").GetProperty("rows").EnumerateArray()
            .SelectMany(row => row.GetProperty("pieces").EnumerateArray())
            .Concat(room.GetProperty("plan").GetProperty("sheets").GetProperty("pieces").EnumerateArray())
            .Select(piece => $"{room.GetProperty("name").GetString()}/{piece.GetProperty("id").GetString()}")).ToList();
        Assert.Equal(cut.Distinct().Count(), cut.Count);
        Assert.Empty(pieces.Except(cut));
        var (kerf, trim) = (plan.GetProperty("kerf").GetDecimal(), plan.GetProperty("endTrim").GetDecimal());
        Assert.All(plan.GetProperty("stock").EnumerateArray(), stick =>
        {
            var lengths = stick.GetProperty("cuts").EnumerateArray().Select(c => c.GetProperty("length").GetDecimal()).ToList();
            Assert.True(lengths.Sum() + (kerf * (lengths.Count - 1)) <= stick.GetProperty("length").GetDecimal() - trim);
        });
    }

    [Fact]
    public async Task Each_room_has_its_steps_with_the_lengths_of_the_job()
    {
        var answer = await OrderAsync(SmallJob.Of(Jobs[0]));
        var stock = answer.GetProperty("cutPlan").GetProperty("stock").EnumerateArray().ToDictionary(s => s.GetProperty("id").GetString()!);
        foreach (var room in answer.GetProperty("rooms").EnumerateArray())
        {
            var cutting = room.GetProperty("steps").EnumerateArray().Single(s => s.GetProperty("code").GetString() == "cut-lumber-of-job");
            var own = room.GetProperty("name").GetString() + "/";
            Assert.All(cutting.GetProperty("touches").EnumerateArray(), touch => Assert.Contains(
                stock[touch.GetProperty("id").GetString()!].GetProperty("cuts").EnumerateArray(), c => c.GetProperty("pieceId").GetString()!.StartsWith(own, StringComparison.Ordinal)));
        }
    }

    [Fact]
    public async Task Faults_of_all_rooms_are_told_at_once_and_those_of_the_common_part_once()
    {
        var good = SmallJob.Room(3000, 3000);
        var bad = """{"room":{"outline":[[0,0],[3000,0]]},"joistFields":[{"run":"y","spacing":400,"first":200}]}""";
        var reply = await service.PostAsync("/v1/jobs", SmallJob.Of(good, bad, """{"room":{"outline":[[0,0],[3000,0],[3000,3000]]}}""").Replace("\"rate\":0.13", "\"rate\":7", StringComparison.Ordinal));
        Assert.Equal(422, reply.Status);
        var pointers = reply.Json.GetProperty("errors").EnumerateArray().Select(e => e.GetProperty("pointer").GetString()!).ToList();
        Assert.Contains("#/rooms/1/room/outline", pointers);
        Assert.Contains("#/rooms/2/joistFields", pointers);
        Assert.Single(pointers, "#/common/prices/tax/0/rate");
    }

    [Fact]
    public async Task What_cannot_be_read_in_a_room_is_a_400_at_its_place()
    {
        var reply = await service.PostAsync("/v1/jobs", SmallJob.Of(SmallJob.Room(3000, 3000), """{"colour":"red","room":{"outline":"wide"}}"""));
        Assert.Equal(400, reply.Status);
        Assert.Equal(["#/rooms/1/colour unknown_member: There is no member \"colour\" here.", "#/rooms/1/room/outline wrong_type: This must be an array, not a string."], reply.Faults.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_room_without_a_plan_is_told_with_its_place()
    {
        var none = SmallJob.Room(3000, 3000)[..^1] + ""","crew":{"massLimit":1}}""";
        var reply = await service.PostAsync("/v1/jobs", SmallJob.Of(SmallJob.Room(3000, 3000), none, none));
        Assert.Equal(422, reply.Status);
        Assert.EndsWith("/problems/no-plan", reply.Json.GetProperty("type").GetString(), StringComparison.Ordinal);
        Assert.Equal(["#/rooms/1", "#/rooms/2"], reply.Json.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("pointer").GetString()!).Distinct());
    }

    [Fact]
    public async Task Rooms_in_two_currencies_are_no_order()
    {
        var dollars = SmallJob.Room(3000, 3000)[..^1] + ""","prices":{"currency":"USD"}}""";
        var reply = await service.PostAsync("/v1/jobs", SmallJob.Of(SmallJob.Room(3000, 3000), dollars));
        Assert.Equal(["#/rooms/1/prices/currency currency_differs: Amounts in USD and CAD cannot be added or compared; use one currency."], reply.Faults);
    }

    [Fact]
    public async Task A_room_may_be_in_other_units_and_ruleset()
    {
        var feet = """{"units":"imperial","ruleset":"us-irc-2021","room":{"outline":[["0 in","0 in"],["10'","0 in"],["10'","9'"],["0 in","9'"]]},"joistFields":[{"run":"y","spacing":16,"first":8}],"strapping":{"stock":null},"sheets":{"stock":null}}""";
        var answer = await OrderAsync(SmallJob.Of(SmallJob.Room(3000, 3000), feet));
        Assert.Equal(["metric", "imperial"], answer.GetProperty("rooms").EnumerateArray().Select(r => r.GetProperty("units").GetString()!));
        Assert.Equal("metric", answer.GetProperty("units").GetString());
    }

    [Fact]
    public async Task One_room_past_the_limit_is_refused()
    {
        var most = (await service.GetAsync("/v1/limits")).Json.GetProperty("rooms").GetInt32();
        var rooms = string.Join(',', Enumerable.Repeat("{}", most + 1));
        var reply = await service.PostAsync("/v1/jobs", $$"""{"rooms":[{{rooms}}]}""");
        Assert.Equal([$"#/rooms count_out_of_range: This list must hold from 1 to {most} items; it holds {most + 1}."], reply.Faults);
    }

    private async Task<JsonElement> OrderAsync(string job, string query = "")
    {
        var reply = await service.PostAsync("/v1/jobs" + query, job);
        Assert.True(reply.Status == 200, reply.Text);
        return reply.Json;
    }
}
