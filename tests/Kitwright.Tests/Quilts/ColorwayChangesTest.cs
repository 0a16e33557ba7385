using System.Collections.Immutable;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class ColorwayChangesTest
{
    private static readonly Quilt Bare = NewQuilt.With(BlockBook.Find("ohio-star")!, LengthUnit.Inch).Make().Value!;

    private static Quilt With(params string[] names) => names.Aggregate(Bare, (quilt, name) => ColorwayChanges.Added(quilt, Of(name)).Value!);

    private static Colorway Of(string name) => new(name, Bare.Roles.ToDictionary(r => r.Id, _ => "F").ToImmutableSortedDictionary());

    [Fact]
    public void One_is_added_at_the_end_renamed_in_its_place_and_left_out()
    {
        var three = With("Dawn", " Noon ", "Dusk");

        Assert.Equal(["Dawn", "Noon", "Dusk"], three.Colorways.Select(c => c.Name));
        Assert.Equal(["Dawn", "High noon", "Dusk"], ColorwayChanges.Renamed(three, "noon", "High noon").Value!.Colorways.Select(c => c.Name));
        Assert.Equal(["Dawn", "Dusk"], ColorwayChanges.Without(three, "NOON").Colorways.Select(c => c.Name));
    }

    [Theory]
    [InlineData("", "colorways.unnamed")]
    [InlineData("   ", "colorways.unnamed")]
    [InlineData("dawn", "colorways.taken")]
    public void A_name_that_is_empty_or_taken_is_refused(string name, string rule)
    {
        var two = With("Dawn", "Dusk");

        Assert.Equal([rule], ColorwayChanges.Added(two, Of(name)).Findings.Select(f => f.Rule));
        Assert.Equal([rule], ColorwayChanges.Renamed(two, "Dusk", name).Findings.Select(f => f.Rule));
    }

    [Fact]
    public void A_name_may_change_its_capitals() =>
        Assert.Equal("DAWN", ColorwayChanges.Renamed(With("Dawn"), "Dawn", "DAWN").Value!.Colorways[0].Name);

    [Fact]
    public void No_more_than_a_file_holds_are_added()
    {
        var full = With([.. Enumerable.Range(0, QuiltLimits.Colorways).Select(i => $"{i}")]);

        Assert.Equal(["colorways.full"], ColorwayChanges.Added(full, Of("one more")).Findings.Select(f => f.Rule));
    }
}
