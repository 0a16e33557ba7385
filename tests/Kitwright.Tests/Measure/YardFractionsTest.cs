using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Measure;

public sealed class YardFractionsTest
{
    private static readonly System.Text.Json.JsonElement Case = Cases.Open("yard-fractions");

    // Eighths [QRES], thirds by arithmetic.
    [Fact]
    public void Fractions_of_a_yard_are_whole_and_half_inches()
    {
        foreach (var row in Case.GetProperty("lengths").EnumerateArray())
        {
            var yards = row.Number("yards");
            var length = Length.Yards(yards);
            Assert.Equal(row.Length("inches"), length);
            Assert.Equal(row.GetProperty("inches").GetString(), LengthText.Inches(length));
            Assert.Equal(row.GetProperty("yards").GetString(), LengthText.Yards(length));
        }
    }

    // [QRES] prints 1/8 yd as 4/5 in: a misprint that a reader of charts must not swallow.
    [Fact]
    public void An_eighth_of_a_yard_is_not_four_fifths_of_an_inch()
    {
        var row = Case.GetProperty("lengths").EnumerateArray().First();
        Assert.NotEqual(row.Length("wrong"), Length.Yards(row.Number("yards")));
    }

    // [WIKI-YD]
    [Fact]
    public void A_yard_in_millimeters() =>
        Assert.Equal(Case.GetProperty("yardInMillimeters").Number("published"), Length.Yard.InMillimeters);

    // [EB150] prints 4 in (7.6 cm).
    [Fact]
    public void Four_inches_are_not_seven_point_six_centimeters()
    {
        var row = Case.GetProperty("fourInchesInCentimeters");
        Assert.Equal(row.Number("exact") * 10, Length.Inches(4).InMillimeters);
        Assert.NotEqual(row.Number("wrong") * 10, Length.Inches(4).InMillimeters);
    }
}
