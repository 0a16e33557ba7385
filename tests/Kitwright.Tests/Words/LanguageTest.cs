using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Kitwright.Measure;
using Kitwright.Tests.House;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Words;

/// <summary>The same messages in other words and units.</summary>
public sealed class LanguageTest
{
    private static readonly Catalog Metric = Catalog.For(TradeWords.American, new(LengthUnit.Centimeter, LengthUnit.Meter));
    private static readonly Catalog British = Catalog.For(TradeWords.British, Units.OfTemplates);

    [Fact]
    public void The_unit_after_a_length_is_the_reader_s()
    {
        var size = Message.Of("web.size.cut", ("width", Length.Millimeters(255)), ("height", Length.Millimeters(55)));
        Assert.Equal("25.5 × 5.5 cm", Metric.Say(size));
        Assert.Equal("1.2 m", Metric.Say("web.yards", ("length", Length.Millimeters(1_200))));
        Assert.Equal("1/2 yd", Catalog.English.Say("web.yards", ("length", Length.Inches(18))));
    }

    // A quilt in centimeters in a shop that sells by the yard, and the other way about.
    [Fact]
    public void Sizes_and_cloth_have_each_their_own()
    {
        var mixed = Catalog.For(TradeWords.American, new(LengthUnit.Centimeter, LengthUnit.Yard));
        Assert.Equal("F is short of 1/2 yd (45.72 cm) in one length.", mixed.Say("kits.short", ("fabric", "F"), ("length", Length.Inches(18)), ("cuts", 1)));
        var other = Catalog.For(TradeWords.American, new(LengthUnit.Inch, LengthUnit.Meter));
        Assert.Equal("F is short of 0.46 m (18 in) in one length.", other.Say("kits.short", ("fabric", "F"), ("length", Length.Inches(18)), ("cuts", 1)));
    }

    // What was bought in yards is said to the centimeter, and a third of an inch to the tenth of a millimeter.
    [Fact]
    public void Measures_from_the_other_system_are_not_said_in_long_decimals()
    {
        Assert.Equal("9.14 m", Metric.Say("web.yards", ("length", Length.Yards(10))));
        Assert.Equal("1.22 m", Metric.Say("web.yards", ("length", Length.Yards(new Rational(4, 3)))));
        Assert.Equal("0.85 × 0.32 cm", Metric.Say("web.size.cut", ("width", Length.Inches(0, 1, 3)), ("height", Length.Inches(0, 1, 8))));
        Assert.Equal("7.25 × 10.56 cm", Metric.Say("web.size.cut", ("width", Length.Millimeters(new Rational(145, 2))), ("height", Length.Millimeters(new Rational(528, 5)))));
    }

    [Fact]
    public void What_stands_for_a_length_is_followed_by_the_unit_too() =>
        Assert.Equal("? × 2.54 cm", Metric.Say("web.size.cut", ("width", new LengthMark("?")), ("height", Length.Inch)));

    [Fact]
    public void A_word_that_is_no_unit_stays() =>
        Assert.Equal("Stars in Dusk", Metric.Say("web.picture", ("quilt", "Stars"), ("colorway", "Dusk")));

    [Theory]
    [InlineData("1/3", "1/3")]
    [InlineData("0.75 cm", "0.75")]
    [InlineData("0.12345 cm", "2469/20000")]
    public void Centimeters_are_decimals_where_they_end(string text, string expected)
    {
        Assert.True(LengthText.TryParse(text, out var length, LengthUnit.Centimeter));
        Assert.Equal(expected, LengthText.Centimeters(length));
    }

    // Both readings of each pair are in use by the trade on either side (from memory).
    [Theory]
    [InlineData("print.batting", "batting", "wadding")]
    [InlineData("stock.column.width", "selvage", "selvedge")]
    [InlineData("stock.column.color", "color", "colour")]
    public void British_readers_get_their_own_words(string key, string american, string british)
    {
        Assert.Contains(american, Catalog.English.Say(key), StringComparison.OrdinalIgnoreCase);
        Assert.Equal(
            Catalog.English.Say(key).Replace(american, british, StringComparison.OrdinalIgnoreCase).ToLowerInvariant(),
            British.Say(key).ToLowerInvariant()
        );
    }

    [Fact]
    public void Names_that_a_person_gave_are_not_reworded() =>
        Assert.Equal("Color Center in Gray colorway", British.Say("web.picture", ("quilt", "Color Center"), ("colorway", "Gray colorway")));

    /// <summary>House rule: no American word of the list is left in what British readers see.</summary>
    [Fact]
    public void No_template_keeps_an_American_word()
    {
        var words = Catalog.Words("en-gb");
        var american = new Regex(@"\b(" + string.Join('|', words.Keys) + @")\b", RegexOptions.IgnoreCase);
        Assert.DoesNotContain(words.Values, words.ContainsKey);
        Rule.Holds(
            from key in British.Keys
            from Match match in american.Matches(LiteralsOf(British[key]))
            select $"{key}: {match.Value}"
        );
    }

    /// <summary>House rule: spellings that differ between the two stand in the list.</summary>
    [Fact]
    public void No_template_has_an_American_spelling_that_the_list_lacks()
    {
        var spelling = new Regex(@"\b\w*(olor|enter(s|ed)?\b|ibber|abor|avor|eighbor|iter(s|ed)?\b|illimeter|entimeter|aterial_)\w*", RegexOptions.IgnoreCase);
        var alike = new[] { "enter", "enters", "material" };
        Rule.Holds(
            from key in British.Keys
            from Match match in spelling.Matches(LiteralsOf(British[key]))
            where !alike.Contains(match.Value.ToLowerInvariant())
            select $"{key}: {match.Value}"
        );
    }

    [Theory]
    [InlineData("en-metric")]
    [InlineData("en-meter")]
    public void Templates_for_other_units_take_the_place_of_ones_with_the_same_slots(string file) =>
        Rule.Holds(
            from pair in Catalog.Words(file)
            where !Catalog.English.Has(pair.Key) || !Template.Parse(pair.Value).Slots().Keys.All(Catalog.English[pair.Key].Slots().ContainsKey)
            select pair.Key
        );

    private static string LiteralsOf(Template template) => string.Join(' ', Literals(template.Parts));

    private static IEnumerable<string> Literals(ImmutableArray<Template.Part> parts) =>
        parts.SelectMany(part => part is Template.Slot slot ? slot.Branches.Values.SelectMany(Literals) : [((Template.Literal)part).Text]);
}
