using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Words;

public sealed class MessageTest
{
    private static Message Rich(object count) =>
        Message.Of(
            "a.key",
            ("count", count),
            ("width", Length.Inches(3, 7, 8)),
            ("use", Message.Of("use.sky")),
            ("list", ImmutableArray.Create(Message.Plain("A"), Message.Plain("B")))
        );

    [Fact]
    public void Equality_is_by_what_is_said()
    {
        Assert.Equal(Rich(2), Rich(2));
        Assert.Equal(Rich(2), Rich(2L));
        Assert.Equal(Rich(2).GetHashCode(), Rich(2L).GetHashCode());
        Assert.NotEqual(Rich(2), Rich(3));
        Assert.NotEqual(Rich(2), Rich("2"));
        Assert.NotEqual(Rich(2), Rich(2) with { Key = "b.key" });
        Assert.NotEqual(Message.Of("a.key", ("x", "1")), Message.Of("a.key", ("y", "1")));
        Assert.NotEqual(Message.Of("a.key"), Rich(2));
    }

    [Fact]
    public void The_order_of_slots_does_not_matter() =>
        Assert.Equal(Message.Of("k", ("a", 1), ("b", 2)), Message.Of("k", ("b", 2), ("a", 1)));

    [Fact]
    public void A_slot_given_twice_is_a_fault_of_ours() =>
        Assert.Throws<ArgumentException>(() => Message.Of("k", ("a", 1), ("a", 2)));
}
