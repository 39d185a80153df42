using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Tests.Butts;

/// <summary>What the butts of two courses weigh beside each other: looking at near ones only gives what looking at every pair gives.</summary>
public sealed class ButtPenaltyTests
{
    [Theory]
    [InlineData(null, 1)]
    [InlineData(null, 2)]
    [InlineData(null, 3)]
    [InlineData(900L, 2)]
    public void Two_courses_weigh_what_their_pairs_weigh(long? least, int rows)
    {
        var random = new Random(11);
        var weighed = 0;
        for (var i = 0; i < 3000; i++)
        {
            var (before, here) = (Course(random), Course(random));
            var pairs = before.Sum(a => here.Sum(b => Butt.Penalty(a, b, least, rows)));
            Assert.Equal(pairs, Butt.Penalty(before.AsSpan(), here.AsSpan(), least, rows));
            weighed += pairs > 0 ? 1 : 0;
        }

        Assert.InRange(weighed, 300, 2999);
    }

    // rows every 400, and straps of their own between them
    private static Butt[] Course(Random random) =>
        [.. Enumerable.Range(0, random.Next(0, 5)).Select(_ => random.Next(2) == 0 ? 400L * random.Next(1, 16) : random.Next(40, 640) * 10L)
            .Distinct().Order().Select(at => new Butt(at, (int)(at / 400), at % 400 == 0))];
}
