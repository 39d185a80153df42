using System.Globalization;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Measures;
using Xunit;

namespace LayoutService.Api.Tests.Plans;

/// <summary>A length in an answer, against the decimal arithmetic of the framework: divided, rounded to six places, zeros taken off.</summary>
public class FigureTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_length_is_written_as_decimal_division_gives_it(bool imperial)
    {
        long[] edges =
        [
            0, 1, 2, 63, 64, 126, 127, 128, 7_999, 8_000, 80_000, 12_700, 203_199, 203_200, 3_251_200, 999_999_999_999, 1_000_000_000_000,
            1_000_000_000_001, 7_777_777_777_777_777,
        ];
        var dice = new Random(11);
        var some = Enumerable.Range(0, 20_000).Select(i => dice.NextInt64(1L << (8 + (i % 44))));
        foreach (var units in edges.Concat(some).SelectMany(u => new[] { u, -u }))
        {
            var length = new Length(units);
            var wanted = decimal.Round(units / (imperial ? 203_200m : 8_000m), 6).ToString("0.######", CultureInfo.InvariantCulture);
            Assert.Equal(wanted == "-0" ? "0" : wanted, Figures.Text(length, imperial));
        }
    }
}
