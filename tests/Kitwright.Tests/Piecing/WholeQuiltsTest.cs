using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>
/// Published quilts through the whole line, from the file's records to yards. Where a figure differs the reason stands
/// in the list of sources.
/// </summary>
public sealed class WholeQuiltsTest
{
    private static readonly PlanOptions Published = PlanOptions.Usual with
    {
        SpareStrips = 0,
        Terms = ClothTerms.Usual with { UsableWidth = In(42), Straightening = Length.Zero, Increments = [Length.Yards(new(1, 8)), Length.Yards(new(1, 3))] },
    };

    private static Length In(int whole, int numerator = 0, int denominator = 1) => Length.Inches(whole, numerator, denominator);

    /// <summary>
    /// [APQ-CC] W1: 35 blocks of 10 in, 5 by 7, sashed 1 in all round with posts, a 6 in border cut along the selvage.
    /// 82 sashes 1 1/2 × 10 1/2, 48 posts, border strips 6 1/2 × 78 1/2 and × 68 1/2 from 2 1/3 yd, backing 77 × 99 from
    /// two panels, 5 1/2 yd. (The published edge is unfinished, 68 1/2 × 90 1/2; the margins here are set to it.)
    /// </summary>
    [Fact]
    public void A_sashed_log_cabin_with_lengthwise_borders()
    {
        var quilt = Quilt(5, 7, In(10), sash: In(1)) with
        {
            Borders = [new(In(6), "border", BorderStyle.Butted, null, StripGrain.Lengthwise)],
            Backing = new("backing", In(4, 1, 2), In(0, 1, 2), PanelSeams.Down),
        };

        var plan = Plan(quilt);

        Assert.Equal((In(68), In(90)), (plan.Design.Width, plan.Design.Height));
        Assert.Equal(82, Count(plan, "sash", In(10, 1, 2), In(1, 1, 2)));
        Assert.Equal(48, Count(plan, "post", In(1, 1, 2), In(1, 1, 2)));
        var strips = plan.Sewing.Recipes.Where(r => r.Kind == "lengthwise-strip").Select(r => (Length.Max(r.Width, r.Height), Length.Min(r.Width, r.Height), r.Copies));
        Assert.Equal([(In(68, 1, 2), In(6, 1, 2), 2), (In(78, 1, 2), In(6, 1, 2), 2)], strips.Order());
        Assert.Equal("2 1/3", Yards(plan, "border"));
        Assert.Equal((2, In(99)), (plan.Backing.Panels, plan.Backing.PanelLength));
        Assert.Equal("5 1/2", LengthText.Yards(plan.Backing.Purchase));
    }

    /// <summary>
    /// [KSS] W3: 80 blocks of 6 in, 8 by 10, sashed 2 in all round with posts: 66 × 82, 178 sashes and 99 posts from 40 in
    /// cloth, 75 and 17 1/2 in, backing 2 × 90 = 180 in = 5 yd. Posts are sold as 1/2 yd; 2 1/4 yd of sashing has a strip
    /// or two to spare.
    /// </summary>
    [Fact]
    public void Sashed_nine_patches()
    {
        var quilt = Quilt(8, 10, In(6), sash: In(2));
        var plan = Plan(quilt, Published with { Terms = Published.Terms with { UsableWidth = In(40) } });

        Assert.Equal((In(66), In(82)), (plan.Design.Width, plan.Design.Height));
        Assert.Equal(178, Count(plan, "sash", In(6, 1, 2), In(2, 1, 2)));
        Assert.Equal(99, Count(plan, "post", In(2, 1, 2), In(2, 1, 2)));
        Assert.Equal("1/2", Yards(plan, "post"));
        Assert.True(Cloth(plan, "sash").Cut <= In(75));
        Assert.Equal((2, In(90)), (plan.Backing.Panels, plan.Backing.PanelLength));
        Assert.Equal("5", LengthText.Yards(plan.Backing.Purchase));
    }

    /// <summary>
    /// [APQ-FL] W5: 100 geese of 6 × 3 by stitch-and-flip and 100 plain rectangles: 200 rectangles 3 1/2 × 6 1/2, 200
    /// squares 3 1/2, 60 in square, batting 69.
    /// </summary>
    [Fact]
    public void A_throw_of_flying_geese()
    {
        var block = new Block(
            "b",
            "Goose",
            In(6),
            In(6),
            new(2, 2),
            [Patch("1", "a", (0, 0), (6, 0), (3, 3)), Patch("2", "sash", (6, 0), (6, 3), (3, 3)), Patch("3", "sash", (0, 0), (3, 3), (0, 3)), Patch("4", "a", (0, 3), (6, 3), (6, 6), (0, 6))]
        );
        var quilt = Quilt(10, 10, In(6), null) with { Blocks = [block], Backing = new("backing", In(4, 1, 2), In(0, 1, 2), null) };

        var plan = Plan(quilt);

        Assert.Equal(200, Count(plan, "a", In(6, 1, 2), In(3, 1, 2)));
        Assert.Equal(200, Count(plan, "sash", In(3, 1, 2), In(3, 1, 2)));
        Assert.Equal((In(60), In(69)), (plan.Design.Width, plan.Needs.Batting!.Width));
        Assert.Equal("3 7/8", LengthText.Yards(plan.Backing.Purchase));
    }

    /// <summary>
    /// [FSF] W15: a setting square of 18 3/4 and a corner square of 9 5/8 are the formula on the cut size, 12 3/8; on the
    /// finished 11 7/8 it gives 18 1/8 and 9 3/8, the least that will do.
    /// </summary>
    [Fact]
    public void Setting_triangles_are_worked_out_from_the_finished_block()
    {
        var seams = new Seams(In(0, 1, 4), In(0, 1, 8));
        Surd finished = In(11, 7, 8),
            cut = In(12, 3, 8);

        Assert.Equal((In(18, 1, 8), In(9, 3, 8)), (seams.QuarterSquare(Surd.OfRoot2(1) * finished), seams.HalfSquare(finished / Surd.OfRoot2(1))));
        Assert.Equal((In(18, 3, 4), In(9, 5, 8)), (seams.QuarterSquare(Surd.OfRoot2(1) * cut), seams.HalfSquare(cut / Surd.OfRoot2(1))));
    }

    /// <summary>
    /// [FRET] W16: 25 nine-patches and 24 snowballs, 7 by 7, squares of 2 1/4: 225 + 96, and 24 of 5 3/4. [FREE9P] W17:
    /// 10 and 10, 4 by 5, squares of 3: 90 + 40, and 10 of 8; binding 2 (38 + 45 1/2) + 10 = 177.
    /// </summary>
    [Theory]
    [InlineData(7, 7, "1 3/4", 225, 96, 24)]
    [InlineData(4, 5, "2 1/2", 90, 40, 10)]
    public void Nine_patch_and_snowball(int columns, int rows, string square, int nines, int corners, int bodies)
    {
        Assert.True(LengthText.TryParse(square, out var s));
        var r = s.InInches;
        var nine = new Block("b", "Nine", s * 3, s * 3, new(3, 3), [.. Enumerable.Range(0, 9).Select(i => Square($"{i}", "a", r * (i % 3), r * (i / 3), r))]);
        Rational f = r * 3;
        var snow = new Block(
            "s",
            "Snow",
            s * 3,
            s * 3,
            new(3, 3),
            [
                Patch("0", "sash", (r, 0), (f - r, 0), (f, r), (f, f - r), (f - r, f), (r, f), (0, f - r), (0, r)),
                Patch("1", "post", (0, 0), (r, 0), (0, r)),
                Patch("2", "post", (f, 0), (f, r), (f - r, 0)),
                Patch("3", "post", (f, f), (f - r, f), (f, f - r)),
                Patch("4", "post", (0, f), (0, f - r), (r, f)),
            ]
        );
        var quilt = Quilt(columns, rows, s * 3, null) with
        {
            Blocks = [nine, snow],
            Setting = new(SettingKind.Straight, columns, rows, [[new("b", 0, false), new("s", 0, false)], [new("s", 0, false), new("b", 0, false)]], null),
        };

        var plan = Plan(quilt);

        Assert.Equal(nines, Count(plan, "a", s + In(0, 1, 2), s + In(0, 1, 2)));
        Assert.Equal(corners, Count(plan, "post", s + In(0, 1, 2), s + In(0, 1, 2)));
        Assert.Equal(bodies, Count(plan, "sash", (s * 3) + In(0, 1, 2), (s * 3) + In(0, 1, 2)));
        Assert.Equal(In(177), ((In(38) + In(45, 1, 2)) * 2) + In(10));
    }

    /// <summary>[PORT] W19: 49 blocks of 14 in, 7 by 7, are 98 square; trimmed to 102 with batting 120, 3 yd of 108 in cloth back it.</summary>
    [Fact]
    public void A_wide_backing_needs_no_seam()
    {
        var quilt = Quilt(7, 7, In(14), null);
        var plan = Plan(quilt);
        var wide = BackingPanels.Of(quilt.Backing with { Overhang = In(5) }, In(98), In(98), Published.Terms with { UsableWidth = In(108) });

        Assert.Equal((In(98), In(98)), (plan.Design.Width, plan.Design.Height));
        Assert.Equal("king", plan.Needs.Batting!.Package!.Name);
        Assert.Equal((1, "3"), (wide.Panels, LengthText.Yards(wide.Purchase)));
    }

    private static Quilt Quilt(int columns, int rows, Length block, Length? sash) =>
        Sample.Quilt(1, "a", "sash", "post", "border") with
        {
            Blocks = [new("b", "Block", block, block, new(1, 1), [Square("1", "a", 0, 0, block.InInches)])],
            Setting = new(
                SettingKind.Straight,
                columns,
                rows,
                [[new("b", 0, false)]],
                sash is { } width ? new(width, "sash", "post", Outer: true) : null
            ),
        };

    private static BlockPatch Square(string id, string role, Rational x, Rational y, Rational side) =>
        Patch(id, role, (x, y), (x + side, y), (x + side, y + side), (x, y + side));

    private static BlockPatch Patch(string id, string role, params (Rational X, Rational Y)[] corners) =>
        new(id, role, [.. corners.Select(c => new Point(c.X, c.Y))], []);

    private static QuiltPlan Plan(Quilt quilt, PlanOptions? options = null)
    {
        var planned = QuiltPlanner.Plan(quilt, null, [], options ?? Published, FirstFit.Plan);
        Assert.Empty(planned.Findings);
        return planned.Value!;
    }

    private static int Count(QuiltPlan plan, string role, Length width, Length height) =>
        plan.Pieces.Where(p => p.Role == role && p.Width == width && p.Height == height).Sum(p => p.Count);

    private static ClothPlan Cloth(QuiltPlan plan, string role) => plan.Cloths.Single(c => c.Roles.Contains(role));

    private static string Yards(QuiltPlan plan, string role) => LengthText.Yards(Cloth(plan, role).Purchase);
}
