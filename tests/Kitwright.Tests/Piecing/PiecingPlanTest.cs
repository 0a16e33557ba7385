using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Piecing;

public sealed class PiecingPlanTest
{
    private static Pieced Plan(int blocks, ImmutableArray<string> roles, Length side, params ImmutableArray<Patch> patches)
    {
        var quilt = Sample.Quilt(blocks, roles);
        var letters = new Letters([.. quilt.Roles.Select(r => ImmutableArray.Create(r.Id))]);
        var pieced = PiecingPlan.Of(quilt, Sample.Row(blocks, side, patches), letters, ClothTerms.Usual);
        Assert.Empty(pieced.Findings);
        return pieced.Value!;
    }

    private static (Length, Length, int) Of(Pieced pieced, string label)
    {
        var piece = pieced.Pieces.Single(p => p.Label == label);
        return (piece.Width, piece.Height, piece.Count);
    }

    private static Length In(int whole, int numerator = 0, int denominator = 1) => Length.Inches(whole, numerator, denominator);

    /// <summary>Half-square triangles 3 in finished take squares of 3 7/8 in, one of each fabric for two units ([QMK], [NHQ]).</summary>
    [Fact]
    public void Half_square_units_are_cut_two_at_a_time()
    {
        var pieced = Plan(
            4,
            ["light", "dark"],
            In(3),
            Sample.Patch(1, "light", (0, 0), (3, 3), (0, 3)),
            Sample.Patch(2, "dark", (0, 0), (3, 0), (3, 3))
        );

        Assert.Equal((In(3, 7, 8), In(3, 7, 8), 2), Of(pieced, "A1"));
        Assert.Equal((In(3, 7, 8), In(3, 7, 8), 2), Of(pieced, "B1"));
        Assert.Equal("half-square-two", pieced.Sewing.Recipes[0].Kind);
    }

    /// <summary>An odd number of units leaves one over, and still cuts whole squares.</summary>
    [Fact]
    public void Five_units_take_three_squares()
    {
        var pieced = Plan(
            5,
            ["light", "dark"],
            In(3),
            Sample.Patch(1, "light", (0, 0), (3, 0), (0, 3)),
            Sample.Patch(2, "dark", (3, 0), (3, 3), (0, 3))
        );

        Assert.Equal(3, Of(pieced, "A1").Item3);
    }

    /// <summary>
    /// A goose 6 by 3 finished takes a rectangle 6 1/2 by 3 1/2 and two squares of 3 1/2: [APQ-FL], 100 geese take
    /// 100 rectangles and 200 squares.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Geese_are_stitched_and_flipped_whichever_way_they_fly(int turns)
    {
        ImmutableArray<Patch> upright =
        [
            Sample.Patch(1, "goose", (0, 0), (6, 0), (3, 3)),
            Sample.Patch(2, "sky", (0, 0), (3, 3), (0, 3)),
            Sample.Patch(3, "sky", (6, 0), (6, 3), (3, 3)),
            Sample.Rectangle(4, "plain", 0, 3, 6, 6),
        ];
        var turn = Kitwright.Geometry.Motion.QuarterTurns(turns);
        var shift = Kitwright.Geometry.Motion.Shift(turns is 1 or 2 ? 6 : 0, turns is 2 or 3 ? 6 : 0);
        var pieced = Plan(
            100,
            ["goose", "sky", "plain"],
            In(6),
            [.. upright.Select(p => p with { Shape = p.Shape.Moved(turn.Then(shift)) })]
        );

        Assert.Equal((In(6, 1, 2), In(3, 1, 2), 100), Of(pieced, "A1"));
        Assert.Equal((In(3, 1, 2), In(3, 1, 2), 200), Of(pieced, "B1"));
        Assert.Equal((In(6, 1, 2), In(3, 1, 2), 100), Of(pieced, "C1"));
    }

    /// <summary>
    /// The star block of [PWT1], [PWT2]: 12 blocks take 12 squares of 4 1/2, 48 rectangles 2 1/2 by 4 1/2 and 144
    /// squares of 2 1/2 of background, and 96 rectangles and 144 squares of the star's fabric. Its patches are worked
    /// out here from the counts: a square of 4 in, geese of 2 by 4 pointing both ways, 2 in squares at the corners.
    /// </summary>
    [Fact]
    public void A_star_of_geese_gives_the_published_counts()
    {
        var patches = StarOfGeese();

        var pieced = Plan(12, ["center", "background", "star"], In(12), patches);

        Assert.Equal((In(4, 1, 2), In(4, 1, 2), 12), Of(pieced, "A1"));
        var background = pieced.Pieces.Where(p => p.Role == "background").ToDictionary(p => (p.Width, p.Height), p => p.Count);
        Assert.Equal(48, background[(In(4, 1, 2), In(2, 1, 2))]);
        Assert.Equal(144, background[(In(2, 1, 2), In(2, 1, 2))]);
        var star = pieced.Pieces.Where(p => p.Role == "star").ToDictionary(p => (p.Width, p.Height), p => p.Count);
        Assert.Equal(96, star[(In(4, 1, 2), In(2, 1, 2))]);
        Assert.Equal(144, star[(In(2, 1, 2), In(2, 1, 2))]);
    }

    // Per block: background 4 goose bodies + 4 squares + 8 sky squares; star 4 bodies, 4 rectangles, 8 sky + 4 squares.
    private static ImmutableArray<Patch> StarOfGeese()
    {
        var patches = new List<Patch> { Sample.Rectangle(1, "center", 4, 4, 8, 8) };
        var id = 2;
        for (var side = 0; side < 4; side++)
        {
            var motion = Kitwright.Geometry.Motion.Shift(-6, -6)
                .Then(Kitwright.Geometry.Motion.QuarterTurns(side))
                .Then(Kitwright.Geometry.Motion.Shift(6, 6));
            Patch[] local =
            [
                .. Sample.Goose(id, "background", "star", 4, 8),
                .. Sample.Goose(id + 3, "star", "background", 4, 10),
                Sample.Rectangle(id + 6, "star", 0, 8, 2, 10),
                Sample.Rectangle(id + 7, "background", 0, 10, 2, 12),
                Sample.Rectangle(id + 8, "star", 2, 8, 4, 12),
            ];
            patches.AddRange(local.Select(p => p with { Shape = p.Shape.Moved(motion) }));
            id += 9;
        }

        return [.. patches];
    }

    /// <summary>Labels run in the order of use within each letter, and each role has its own.</summary>
    [Fact]
    public void Stacks_are_labelled_in_the_order_of_use()
    {
        var pieced = Plan(2, ["center", "background", "star"], In(12), StarOfGeese());
        var order = pieced.Sewing.Recipes.SelectMany(r => r.Verbs.OfType<Take>()).Select(t => t.Piece.Value).Distinct().ToArray();

        foreach (var letter in new[] { "B", "C" })
        {
            var labels = order.Where(o => o.StartsWith("piece/" + letter, StringComparison.Ordinal)).ToArray();
            Assert.Equal(Enumerable.Range(1, labels.Length).Select(n => $"piece/{letter}{n}"), labels);
        }
    }

    /// <summary>Two squares, each with rectangles whirling round it, one of which they share: one partial seam is not enough.</summary>
    [Fact]
    public void Two_pinwheels_that_share_an_arm_are_a_finding()
    {
        var quilt = Sample.Quilt(1, "a");
        var letters = new Letters([.. quilt.Roles.Select(r => ImmutableArray.Create(r.Id))]);
        var design = Sample.Row(
            1,
            In(5),
            Sample.Rectangle(1, "a", 0, 0, 2, 1),
            Sample.Rectangle(2, "a", 2, 0, 3, 2),
            Sample.Rectangle(3, "a", 3, 0, 5, 1),
            Sample.Rectangle(4, "a", 0, 1, 1, 3),
            Sample.Rectangle(5, "a", 1, 1, 2, 2),
            Sample.Rectangle(6, "a", 1, 2, 4, 3),
            Sample.Rectangle(7, "a", 3, 1, 4, 2),
            Sample.Rectangle(8, "a", 4, 1, 5, 3)
        );

        var pieced = PiecingPlan.Of(quilt, design, letters, ClothTerms.Usual);

        Assert.Null(pieced.Value);
        // A seam of 1 in on from the edge of an arm divides one patch, and a straight seam runs through (own arithmetic).
        var finding = Assert.Single(pieced.Findings);
        Assert.Equal("piecing.partial-seam", finding.Rule);
        Assert.Equal(1, finding.Remedy.Slots["divided"]);
    }

    /// <summary>A border on the bias would stretch: a finding, never a plan that cuts it another way.</summary>
    [Fact]
    public void A_bias_border_is_a_finding()
    {
        var quilt = Sample.Quilt(1, "a") with { Borders = [new(In(4), "a", BorderStyle.Butted, null, StripGrain.Bias)] };
        var letters = new Letters([.. quilt.Roles.Select(r => ImmutableArray.Create(r.Id))]);

        var pieced = PiecingPlan.Of(quilt, Sample.Row(1, In(3), Sample.Rectangle(1, "a", 0, 0, 3, 3)), letters, ClothTerms.Usual);

        Assert.Equal([("piecing.border-grain", "/borders/0/grain")], pieced.Findings.Select(f => (f.Rule, f.Place)));
    }
}
