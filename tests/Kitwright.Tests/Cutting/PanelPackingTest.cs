using System.Collections.Immutable;
using CsCheck;
using Kitwright.Cutting;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Cutting;

public sealed class PanelPackingTest
{
    /// <summary>Against every way of putting up to seven strips into panels.</summary>
    [Fact]
    public void No_fewer_panels_hold_the_strips() =>
        Gen.Int[1, 20].Array[0, 7].Sample(
            heights =>
            {
                var packed = PanelPacking.Of([.. heights.Select(h => Length.Inches(h))], Length.Inches(20));
                Assert.Equal(Enumerable.Range(0, heights.Length), packed.SelectMany(bin => bin).Order());
                Assert.All(packed, bin => Assert.True(bin.Sum(i => heights[i]) <= 20));
                Assert.Equal(Fewest(heights, 0, []), packed.Length);
            },
            iter: 300
        );

    /// <summary>Best fit decreasing takes three panels of 12 in for these; two hold them (5 + 4 + 3, 5 + 3 + 3 + 1).</summary>
    [Fact]
    public void What_best_fit_misses_is_searched()
    {
        int[] heights = [5, 5, 4, 3, 3, 3, 1];
        Assert.Equal(2, PanelPacking.Of([.. heights.Select(h => Length.Inches(h))], Length.Inches(12)).Length);
    }

    [Fact]
    public void A_thousand_strips_are_packed()
    {
        ImmutableArray<Length> heights = [.. Enumerable.Range(0, 1000).Select(i => Length.Inches((i % 9) + 1, 1, 8))];
        var packed = PanelPacking.Of(heights, Length.Inches(24));
        Assert.Equal(1000, packed.Sum(bin => bin.Length));
        Assert.All(packed, bin => Assert.True(bin.Aggregate(Length.Zero, (sum, i) => sum + heights[i]) <= Length.Inches(24)));
    }

    private static int Fewest(int[] heights, int at, ImmutableList<int> used) =>
        at == heights.Length
            ? used.Count
            : Enumerable
                .Range(0, used.Count)
                .Where(bin => used[bin] + heights[at] <= 20)
                .Select(bin => Fewest(heights, at + 1, used.SetItem(bin, used[bin] + heights[at])))
                .Append(Fewest(heights, at + 1, used.Add(heights[at])))
                .Min();
}
