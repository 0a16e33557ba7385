using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Words;

public sealed class CatalogTest
{
    private static string Say(string template, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Catalog
            .Of(
                [
                    new("it", template),
                    new("leaf", "{word}"),
                    new("list.two", "{first} and {second}"),
                    new("list.more", "{first} and {last}"),
                ]
            )
            .Say("it", slots);

    private static Message Leaf(string word) => Message.Of("leaf", ("word", word));

    [Theory]
    [InlineData(0, "no strips")]
    [InlineData(1, "1 strip")]
    [InlineData(2, "2 strips")]
    [InlineData(11, "11 strips")]
    [InlineData(1200, "1,200 strips")]
    public void Plurals_agree_with_the_number(int count, string expected)
    {
        Assert.Equal(expected, Say("{n, plural, =0 {no strips} one {1 strip} other {# strips}}", ("n", count)));
        Assert.Equal(expected, Say("{n, plural, =0 {no strips} one {1 strip} other {# strips}}", ("n", (long)count)));
    }

    [Fact]
    public void The_number_sign_belongs_to_the_nearest_plural() =>
        Assert.Equal(
            "2 of 3, 5#",
            Say("{a, plural, other {# of {b, plural, other {#}}, {k, select, other {5#}}}}", ("a", 2), ("b", 3), ("k", "x"))
        );

    [Theory]
    [InlineData("bias", "on the bias")]
    [InlineData("crosswise", "across")]
    public void Select_takes_its_branch_or_the_other(string grain, string expected) =>
        Assert.Equal(expected, Say("{grain, select, bias {on the bias} other {across}}", ("grain", grain)));

    [Fact]
    public void Lengths_are_mixed_fractions_in_inches_or_yards()
    {
        Assert.Equal("22 1/2 in", Say("{x} in", ("x", Length.Inches(22, 1, 2))));
        Assert.Equal("5/8 yd", Say("{x, yards} yd", ("x", Length.Inches(22, 1, 2))));
    }

    [Fact]
    public void Lists_are_joined_with_commas_and_and()
    {
        string[] expected = ["", "A", "A and B", "A, B and C", "A, B, C and D"];
        for (var count = 0; count < expected.Length; count++)
        {
            var list = "ABCD"[..count].Select(letter => Leaf($"{letter}")).ToImmutableArray();
            Assert.Equal(expected[count], Say("{list}", ("list", list)));
        }
    }

    [Fact]
    public void Sentences_follow_one_another() =>
        Assert.Equal("One. Two.", Say("{list, sentences}", ("list", ImmutableArray.Create(Leaf("One."), Leaf("Two.")))));

    [Fact]
    public void Messages_nest() =>
        Assert.Equal("sky (B)", Say("{use} ({letter})", ("use", Leaf("sky")), ("letter", "B")));

    [Fact]
    public void Braces_in_data_stay_as_they_are() => Assert.Equal("{n} # it's", Say("{text}", ("text", "{n} # it's")));

    [Fact]
    public void Missing_keys_and_slots_are_faults_of_ours()
    {
        Assert.Throws<KeyNotFoundException>(() => Catalog.English.Say("no.such.key"));
        Assert.Throws<KeyNotFoundException>(() => Say("{a}"));
        Assert.Throws<InvalidDataException>(() => Say("{a}", ("a", 1.5)));
        Assert.Throws<FormatException>(() => Say("{a"));
    }

    [Fact]
    public void Plain_text_is_said_as_it_is() =>
        Assert.Equal("Night & {Day}", Catalog.English.Say(Message.Plain("Night & {Day}")));
}
