using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Measures;

public class TradeNotationTests
{
    /// <summary>Texts and what each comes to, in 64ths of an inch.</summary>
    [Theory]
    [InlineData("12' 6 1/2\"", 9632)]
    [InlineData("12ft 6-1/2in", 9632)]
    [InlineData("12'-6 1/2\"", 9632)]
    [InlineData("12' 6-1/2\"", 9632)]
    [InlineData("12'6.5\"", 9632)]
    [InlineData("150 1/2 in", 9632)]
    [InlineData("150-1/2\"", 9632)]
    [InlineData("150.5in", 9632)]
    [InlineData("12 feet 6 1/2 inches", 9632)]
    [InlineData("12 FT. 6 1/2 IN.", 9632)]
    [InlineData("12′ 6 1/2″", 9632)]
    [InlineData("12’ 6 1/2”", 9632)]
    [InlineData("12‘ 6½“", 9632)]
    [InlineData("12' 6 1⁄2''", 9632)]
    [InlineData("12'\u00A06\u202F1/2\"", 9632)]
    [InlineData("12' 6–1/2\"", 9632)]
    [InlineData("12' 6 1/2", 9632)]
    [InlineData("  12'  6  1/2  \"  ", 9632)]
    [InlineData("12'", 9216)]
    [InlineData("12' 0\"", 9216)]
    [InlineData("12.5 ft", 9600)]
    [InlineData("12 1/2'", 9600)]
    [InlineData("1/64\"", 1)]
    [InlineData("63/64 in", 63)]
    [InlineData("6 3/32 in", 390)]
    [InlineData("5/8\"", 40)]
    [InlineData("⅝\"", 40)]
    [InlineData("3⅞in", 248)]
    [InlineData(".5 in", 32)]
    [InlineData("0 in", 0)]
    [InlineData("-3 1/2\"", -224)]
    [InlineData("−2' 6\"", -1920)]
    [InlineData("- 6 in", -384)]
    public void An_imperial_text_is_exactly_its_sixty_fourths(string text, long sixtyFourths)
    {
        Assert.True(TradeNotation.TryRead(text, out var length, out var fault), fault?.Detail);
        Assert.Equal(sixtyFourths * Length.PerInch / 64, length.Units);
    }

    [Theory]
    [InlineData("3810 mm", 3810)]
    [InlineData("3810mm", 3810)]
    [InlineData("3.81 m", 3810)]
    [InlineData("381 cm", 3810)]
    [InlineData("0.5mm", 0.5)]
    [InlineData("3 metres", 3000)]
    [InlineData("3 Meters", 3000)]
    [InlineData("-12.7 mm", -12.7)]
    [InlineData("12 millimeters", 12)]
    public void A_metric_text_is_exactly_its_millimetres(string text, double millimetres)
    {
        Assert.True(TradeNotation.TryRead(text, out var length, out var fault), fault?.Detail);
        Assert.Equal((decimal)millimetres, length.Millimetres);
    }

    [Theory]
    [InlineData("", "length_text_empty", "The text is empty; a length is a number and a unit, for example 3810 mm or 12' 6 1/2\".")]
    [InlineData("   ", "length_text_empty", "The text is empty; a length is a number and a unit, for example 3810 mm or 12' 6 1/2\".")]
    [InlineData("12", "length_without_unit", "\"12\" has no unit; add ft, in, mm, cm or m, or send a JSON number.")]
    [InlineData("12 1/2", "length_without_unit", "\"12 1/2\" has no unit; add ft, in, mm, cm or m, or send a JSON number.")]
    [InlineData("-12", "length_without_unit", "\"- 12\" has no unit; add ft, in, mm, cm or m, or send a JSON number.")]
    [InlineData("12 yd", "length_unit_unknown", "\"yd\" is no unit of length; use ft, in, mm, cm or m.")]
    [InlineData("twelve", "length_unit_unknown", "\"twelve\" is no unit of length; use ft, in, mm, cm or m.")]
    [InlineData("1e3 mm", "length_unit_unknown", "\"e\" is no unit of length; use ft, in, mm, cm or m.")]
    [InlineData("mm", "length_number_missing", "A number is missing before \"mm\".")]
    [InlineData("'", "length_number_missing", "A number is missing before \"'\".")]
    [InlineData("-", "length_number_missing", "A number is missing at the end.")]
    [InlineData("--3 in", "length_number_missing", "A number is missing before \"-\".")]
    [InlineData("12' -", "length_number_missing", "A number is missing at the end.")]
    [InlineData("3 4 in", "length_unit_missing", "A unit is missing before \"4\".")]
    [InlineData("3 - 4 in", "length_unit_missing", "A unit is missing before \"-\".")]
    [InlineData("3,81 m", "length_comma", "A length has no comma; write a decimal point, and no mark between thousands.")]
    [InlineData("1,200 mm", "length_comma", "A length has no comma; write a decimal point, and no mark between thousands.")]
    [InlineData("3 & 4 in", "length_character", "A length does not hold the character \"&\".")]
    [InlineData("3\tin", "length_character", "A length does not hold the character U+0009.")]
    [InlineData("三 m", "length_character", "A length does not hold the character U+4E09.")]
    [InlineData("😀", "length_character", "A length does not hold the character U+1F600.")]
    [InlineData("1.2.3 m", "length_number_malformed", "\"1.2.3\" is no number.")]
    [InlineData("12. in", "length_number_malformed", "\"12.\" is no number.")]
    [InlineData(". in", "length_number_malformed", "\".\" is no number.")]
    [InlineData("1234567890 mm", "length_number_too_long", "\"1234567890\" has more than 9 digits on one side of the point.")]
    [InlineData("0.1234567890 m", "length_number_too_long", "\"0.1234567890\" has more than 9 digits on one side of the point.")]
    [InlineData("1/3 in", "length_fraction_denominator", "\"1/3\": a fraction is in halves, quarters, 8ths, 16ths, 32nds or 64ths.")]
    [InlineData("1/0 in", "length_fraction_denominator", "\"1/0\": a fraction is in halves, quarters, 8ths, 16ths, 32nds or 64ths.")]
    [InlineData("3/2 in", "length_fraction_improper", "\"3/2\" is not less than one; write the whole number before the fraction.")]
    [InlineData("1/ in", "length_fraction_malformed", "\"1/\" is no fraction of an inch.")]
    [InlineData("1.5/2 in", "length_fraction_malformed", "\"1.5/2\" is no fraction of an inch.")]
    [InlineData("/2 in", "length_character", "A length does not hold the character \"/\".")]
    [InlineData("1.5 1/2 in", "length_fraction_after_decimal", "\"1.5\" has decimals already; a fraction cannot follow it.")]
    [InlineData("12' 13\"", "length_inches_over_twelve", "Beside feet, inches are below 12; this has 13.")]
    [InlineData("12.5' 3\"", "length_feet_not_whole", "Feet with a fraction of a foot are not followed by inches.")]
    [InlineData("3 m 81 cm", "length_parts", "Only feet may be followed by a second part, in inches.")]
    [InlineData("12 ft 30 mm", "length_parts", "After feet come inches, not \"mm\".")]
    [InlineData("12' 6\" 3", "length_trailing", "\"3\" stands after the end of the length.")]
    [InlineData("6\" 12'", "length_parts", "Only feet may be followed by a second part, in inches.")]
    public void A_text_that_is_no_length_is_told_what_is_wrong_with_it(string text, string code, string detail)
    {
        Assert.False(TradeNotation.TryRead(text, out _, out var fault));
        Assert.Equal(code, fault.Code);
        Assert.Equal(detail, fault.Detail);
    }

    [Fact]
    public void The_longest_text_is_read_and_one_character_more_is_not()
    {
        Assert.True(TradeNotation.TryRead("3 in".PadLeft(TradeNotation.MaxTextLength), out _, out _));
        Assert.False(TradeNotation.TryRead("3 in".PadLeft(TradeNotation.MaxTextLength + 1), out _, out var fault));
        Assert.Equal("A length is at most 40 characters; this text has 41.", fault.Detail);
    }

    [Fact]
    public void Half_a_surrogate_pair_is_no_character_of_a_length()
    {
        Assert.False(TradeNotation.TryRead("3\uD83D", out _, out var fault));
        Assert.Equal("A length does not hold the character U+D83D.", fault.Detail);
    }

    [Fact]
    public void Any_text_at_all_is_a_length_or_has_a_fault()
    {
        const string alphabet = "0123456789./-'\" ftinmc½″,x\u2044\uD800";
        var random = new Random(20250331);
        var read = 0;
        for (var round = 0; round < 200_000; round++)
        {
            var text = string.Create(random.Next(12), random, (span, dice) =>
            {
                foreach (ref var c in span)
                {
                    c = alphabet[dice.Next(alphabet.Length)];
                }
            });
            if (TradeNotation.TryRead(text, out _, out var fault))
            {
                read++;
            }
            else
            {
                Assert.False(string.IsNullOrEmpty(fault.Code), text);
                Assert.EndsWith(".", fault.Detail);
            }
        }

        Assert.True(read > 1000, $"only {read} texts were lengths");
    }
}
