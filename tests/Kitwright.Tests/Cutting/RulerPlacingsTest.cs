using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Cutting;

public sealed class RulerPlacingsTest
{
    private static readonly PathId Border = new("piece/A1"),
        Square = new("piece/A2");

    /// <summary>Counted by hand: 40 in reach over two rulers of 24 in and over four of 12, folded over one and two.</summary>
    [Theory]
    [InlineData(1, 24, 14)]
    [InlineData(2, 24, 7)]
    [InlineData(4, 24, 7)]
    [InlineData(1, 40, 7)]
    [InlineData(1, 39, 14)]
    [InlineData(1, 12, 28)]
    [InlineData(2, 12, 14)]
    public void A_cut_across_counts_as_many_times_as_the_ruler_goes_into_it(int layers, int ruler, long placings) =>
        Assert.Equal(placings, RulerPlacings.Of(Plan(layers, ruler, Strips(4), Strips(3))));

    /// <summary>
    /// By hand, at 24 in, folded: one cut across of 20 in; two along of 86 1/2 in, four rulers each; 27 in beside them, two
    /// rulers for each of three strips; two strips from the rest.
    /// </summary>
    [Fact]
    public void Lengths_count_along_the_selvage_and_what_lies_beside_them_counts_its_own_width()
    {
        var section = new LengthwiseSection(
            new("cloth/A/section/1"),
            Length.Inches(86, 1, 2),
            [new(new("cloth/A/section/1/cut/1"), Length.Inches(6, 1, 2), 2, [new(Border, 1, Turned: false)])],
            [Strips(3)]
        );
        var plan = Plan(2, 24, Strips(2)) with { Sections = [section] };
        Assert.Equal(1 + (2 * 4) + (3 * 2) + 2, RulerPlacings.Of(plan));
    }

    [Fact]
    public void Nothing_is_counted_where_nothing_is_said_of_the_table()
    {
        var plan = Plan(1, 24, Strips(4));
        Assert.Equal(0, RulerPlacings.Of(plan with { Terms = plan.Terms with { Table = null } }));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(101)]
    public void No_plan_is_made_for_a_ruler_that_cannot_be(int ruler)
    {
        var terms = Cloth.Terms("40") with { Table = TableTerms.Usual with { RulerLength = Length.Inches(ruler) } };
        var planned = FirstFit.Plan(Cloth.Of(terms, ("5 x 5", 3)));
        Assert.Equal("cutting.ruler", Assert.Single(planned.Findings).Rule);
    }

    private static StripCut Strips(int times) =>
        new(new("cloth/A/strip/1"), Length.Inches(5), times, [new(new("cloth/A/strip/1/cut/1"), Length.Inches(5), 5, [new(Square, 1, Turned: false)])]);

    private static ClothPlan Plan(int layers, int ruler, params ImmutableArray<StripCut> strips)
    {
        var terms = Cloth.Terms("40") with { Table = TableTerms.Usual with { Layers = layers, RulerLength = Length.Inches(ruler) } };
        return FirstFit.Plan(Cloth.Of(terms, ("5 x 5", 3))).Value! with { Strips = strips };
    }
}
