using Kitwright.Checking.Tests.Samples;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>
/// The checker knows verbs, not ways of sewing: what it has never heard of is right where the cloth comes out right.
/// </summary>
public sealed class OtherSewingTest
{
    [Fact]
    public void Strips_sewn_and_cut_across_make_a_four_patch() => Assert.Equal([], Found(OtherSewing.StripSet()));

    [Fact]
    public void A_strip_too_short_for_its_second_cut_is_refused() =>
        Assert.Contains("check.sewing.unit-size", Rules(OtherSewing.StripSet().Resize("A1", -Edits.Step, Length.Zero)));

    [Fact]
    public void Triangles_round_a_square_on_its_points_come_out_exactly() => Assert.Equal([], Found(OtherSewing.SquareOnPoint()));

    [Fact]
    public void A_center_rounded_down_leaves_too_little_allowance() =>
        Assert.Contains(
            "check.sewing.allowance",
            Rules(OtherSewing.SquareOnPoint().Resize("B1", -Edits.Step, -Edits.Step).EditVerb<Take>("block/point", 1, t => t with { Motion = Centered(new(71, 8)) }))
        );

    /// <summary>A published answer adds 1/2 where 7/8 is needed ([QB-SQ]): its triangles are too small.</summary>
    [Fact]
    public void Outer_squares_with_half_an_inch_only_are_refused() =>
        Assert.NotEmpty(Rules(OtherSewing.SquareOnPoint().Resize("A1", Length.Inches(new Rational(-3, 8)), Length.Inches(new Rational(-3, 8)))));

    [Fact]
    public void An_allowance_may_be_wider_than_the_seam() =>
        Assert.DoesNotContain(
            Rules(OtherSewing.WideAndNarrow().Resize("B1", Length.Inches(1), Length.Zero)),
            r => r.StartsWith("check.sewing", StringComparison.Ordinal)
        );

    [Fact]
    public void Waste_that_would_show_beyond_a_narrow_piece_is_refused() =>
        Assert.Contains("check.sewing.sticks-out", Rules(OtherSewing.WideAndNarrow().Resize("B1", Length.Inches(2), Length.Zero)));

    [Fact]
    public void A_unit_may_be_a_triangle() => Assert.Equal([], Found(OtherSewing.CornersAsUnits()));

    [Fact]
    public void An_outline_that_cloth_does_not_fill_is_refused() =>
        Assert.Contains("check.sewing.outline-open", Rules(Outlined((0, 0), (6, 0), (6, 6))));

    [Fact]
    public void An_outline_of_another_size_is_refused() =>
        Assert.Contains("check.sewing.outline", Rules(Outlined((0, 0), (5, 0), (0, 6))));

    [Fact]
    public void A_size_that_is_not_its_outline_and_two_seams_is_refused() =>
        Assert.Contains(
            "check.sewing.outline",
            Rules(OtherSewing.CornersAsUnits().EditRecipe("unit/corner", r => r with { Width = r.Width + Length.Inches(0, 1, 64) }))
        );

    [Fact]
    public void An_outline_away_from_the_origin_is_refused() =>
        Assert.Contains("check.sewing.outline", Rules(Outlined((1, 0), (7, 0), (1, 6))));

    [Fact]
    public void An_outline_that_is_not_convex_is_refused() =>
        Assert.Contains("check.sewing.outline", Rules(Outlined((0, 0), (6, 0), (1, 1), (0, 6))));

    /// <summary>Nothing is joined to the top that would show whether its edges have their allowance.</summary>
    [Fact]
    public void A_top_with_an_outline_instead_of_its_raw_edges_is_refused() =>
        Assert.Contains(
            "check.sewing.outline",
            Rules(OtherSewing.SquareOnPoint().EditRecipe("frame/top", r => r with { Outline = Polygon.Rectangle(0, 0, 12, 12) }))
        );

    [Fact]
    public void A_triangle_with_too_little_allowance_is_refused_where_it_is_joined() =>
        Assert.Contains(
            "check.sewing.allowance",
            Rules(
                OtherSewing
                    .CornersAsUnits()
                    .EditVerb<CutAlong>("unit/corner", 2, c => c with { Line = c.Line.Shifted(-(Surd)Edits.Step, 0) })
            )
        );

    private static QuiltPlan Outlined(params (int X, int Y)[] corners) =>
        OtherSewing.CornersAsUnits().EditRecipe("unit/corner", r => r with { Outline = PlanDraft.Outline(corners) });

    private static Motion Centered(Rational size) =>
        Motion.Shift(-(Surd)(size / 2), -(Surd)(size / 2)).Then(Motion.EighthTurns(1)).Then(Motion.Shift(6, 6));

    private static IEnumerable<string> Rules(QuiltPlan plan) => PlanChecker.Check(plan).Findings.Select(f => f.Rule);

    private static IEnumerable<string> Found(QuiltPlan plan) => PlanChecker.Check(plan).Findings.Select(f => $"{f.Rule} {f.Place}");
}
