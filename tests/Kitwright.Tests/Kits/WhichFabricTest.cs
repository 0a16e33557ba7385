using System.Collections.Immutable;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Kits;

public sealed class WhichFabricTest
{
    [Fact]
    public void Letters_that_size_does_not_tell_apart_are_named()
    {
        var needs = new Needs([Need("A", 90), Need("B", 18), Need("C", 24), Need("D", 21), Need("E", 36)], null);

        var which = WhichFabric.Of(needs);

        Assert.Equal(["A", "E", "C", "D", "B"], which.LargestFirst);
        Assert.Equal(["C", "D", "B"], Assert.Single(which.Alike));
    }

    [Fact]
    public void Lengths_an_eighth_of_a_yard_apart_are_told_apart() =>
        Assert.Empty(WhichFabric.Of(new Needs([Need("A", 18), new Need("B", NeedKind.Top, ["b"], null, Length.Inches(22, 1, 2))], null)).Alike);

    private static Need Need(string letter, int inches) => new(letter, NeedKind.Top, [letter], null, Length.Inches(inches));
}
