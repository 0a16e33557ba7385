using CsCheck;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Words;

public sealed class TemplateTest
{
    [Theory]
    [InlineData("{")]
    [InlineData("}")]
    [InlineData("{}")]
    [InlineData("{name")]
    [InlineData("{name,}")]
    [InlineData("text} more")]
    [InlineData("{name, number}")]
    [InlineData("{a b}")]
    [InlineData("{count, plural}")]
    [InlineData("{count, plural, one {1}}")]
    [InlineData("{count, plural, one {1} other {2}")]
    [InlineData("{count, plural, one {1} one {2} other {3}}")]
    [InlineData("{count, plural, other 3}")]
    [InlineData("{kind, select, a {x}}")]
    [InlineData("{kind, select, other {x}}}")]
    public void Malformed_templates_are_refused(string text) => Assert.Throws<FormatException>(() => Template.Parse(text));

    [Fact]
    public void A_template_is_parsed_or_refused_but_never_breaks() =>
        Gen.String["{}#,= abplurselectother"].Sample(text =>
        {
            try
            {
                _ = Template.Parse(text).Slots();
            }
            catch (FormatException)
            {
                // The one way in which it may refuse.
            }
        });

    [Fact]
    public void Slots_are_collected_from_all_branches_with_their_kinds()
    {
        var slots = Template.Parse("{a} {n, plural, one {{b}} other {# {c, yards}}} {s, select, x {{a}} other {}} {a, sentences}").Slots();
        Assert.Equal(["a", "b", "c", "n", "s"], slots.Keys);
        Assert.Equal("sentences", slots["a"]);
        Assert.Equal("", slots["b"]);
        Assert.Equal("yards", slots["c"]);
        Assert.Equal("plural", slots["n"]);
        Assert.Equal("select", slots["s"]);
    }
}
