using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>Cut sizes by technique against published charts.</summary>
public sealed class TechniqueSizesTest
{
    private static Length In(int whole, int numerator = 0, int denominator = 1) => Length.Inches(whole, numerator, denominator);

    private static Length Parse(string text) => LengthText.TryParse(text, out var length) ? length : throw new FormatException(text);

    /// <summary>
    /// Two at a time f + 7/8 ([QMK], [NHQ]: 3 from 3 7/8), generous f + 1 ([LHQ1], [MQF2]: 2 from 3, trimmed to 2 1/2);
    /// eight at a time 2 (f + 7/8) ([APQ19], [CRAFT], [EWE]: 1 1/2 from 4 3/4, 3 from 7 3/4), generous 2 (f + 1)
    /// ([PAM]: 3 from 8). One at a time is a stitched corner as large as its square, f + 1/2 ([APQ-FG], [PWT1]).
    /// </summary>
    [Theory]
    [InlineData("two", "3", "3 7/8", 2)]
    [InlineData("two-trimmed", "2", "3", 2)]
    [InlineData("one", "3", "3 1/2", 1)]
    [InlineData("one-trimmed", "3", "3 5/8", 1)]
    [InlineData("eight", "1 1/2", "4 3/4", 8)]
    [InlineData("eight", "3", "7 3/4", 8)]
    [InlineData("eight-trimmed", "3", "8", 8)]
    public void Half_square_triangles(string technique, string finished, string square, int units)
    {
        var f = Parse(finished).InInches;
        var pieced = Pieced("half-square", technique, 16, f, Sample.Patch(1, "light", (0, 0), (f, f), (0, f)), Sample.Patch(2, "dark", (0, 0), (f, 0), (f, f)));

        Assert.All(pieced.Pieces.Where(p => p.Role is "light" or "dark"), p => Assert.Equal((Parse(square), Parse(square), 16 / units), (p.Width, p.Height, p.Count)));
        Assert.Equal(technique.EndsWith("trimmed", StringComparison.Ordinal) ? 16 : 0, Trims(pieced));
    }

    /// <summary>
    /// [BEV] and, in quarters, [ALQ]: four geese from one square of width + 1 1/4 and four of height + 7/8. All eleven
    /// rows.
    /// </summary>
    [Theory]
    [InlineData("2", "3 1/4", "1 7/8")]
    [InlineData("2 1/2", "3 3/4", "2 1/8")]
    [InlineData("3", "4 1/4", "2 3/8")]
    [InlineData("3 1/2", "4 3/4", "2 5/8")]
    [InlineData("4", "5 1/4", "2 7/8")]
    [InlineData("4 1/2", "5 3/4", "3 1/8")]
    [InlineData("5", "6 1/4", "3 3/8")]
    [InlineData("5 1/2", "6 3/4", "3 5/8")]
    [InlineData("6", "7 1/4", "3 7/8")]
    [InlineData("7", "8 1/4", "4 3/8")]
    [InlineData("8", "9 1/4", "4 7/8")]
    public void Geese_four_at_a_time(string width, string large, string small)
    {
        var pieced = Geese("four", Parse(width).InInches);

        Assert.Equal((Parse(large), 4), Of(pieced, "light"));
        Assert.Equal((Parse(small), 16), Of(pieced, "dark"));
    }

    /// <summary>
    /// Generous geese, common practice, no source: pieces 1/4 in larger each way, or in fours the large square 1/4 and
    /// the small ones 1/8 in more, and every goose is trimmed.
    /// </summary>
    [Theory]
    [InlineData("flip-trimmed", "4 3/4", "2 3/4", 16, 32)]
    [InlineData("four-trimmed", "5 1/2", "3", 4, 16)]
    public void Geese_to_be_trimmed(string technique, string body, string sky, int bodies, int skies)
    {
        var pieced = Geese(technique, 4);
        var piece = Assert.Single(pieced.Pieces, p => p.Role == "light");

        Assert.Equal((Parse(body), bodies), (Length.Max(piece.Width, piece.Height), piece.Count));
        Assert.Equal((Parse(sky), skies), Of(pieced, "dark"));
        Assert.Equal(16, Trims(pieced));
    }

    /// <summary>[TSP]: as triangles, a goose of a square of W + 1 1/4 cut twice (four), skies of H + 7/8 cut once (two).</summary>
    [Fact]
    public void Geese_as_triangles()
    {
        var pieced = Geese("triangles", 4);

        Assert.Equal((In(5, 1, 4), 4), Of(pieced, "light"));
        Assert.Equal((In(2, 7, 8), 16), Of(pieced, "dark"));
    }

    /// <summary>
    /// Hourglass units two at a time, exact f + 1 1/4 ([APQ-OS], [APQ-HG]: 3 1/2 from 4 3/4, 6 from 7 1/4); generous
    /// f + 1 1/2 and trimmed ([F406], [NHQ], [SUZN]: 3 from 4 1/2, 3 1/2 from 5). [LOM] adds 1 3/4 to the same units.
    /// </summary>
    [Theory]
    [InlineData("two", "3 1/2", "4 3/4")]
    [InlineData("two", "6", "7 1/4")]
    [InlineData("two-trimmed", "3", "4 1/2")]
    [InlineData("two-trimmed", "3 1/2", "5")]
    public void Hourglass_units(string technique, string finished, string square)
    {
        Rational f = Parse(finished).InInches,
            h = f / 2;
        var pieced = Pieced(
            "hourglass",
            technique,
            8,
            f,
            Sample.Patch(1, "light", (0, 0), (f, 0), (h, h)),
            Sample.Patch(2, "dark", (f, 0), (f, f), (h, h)),
            Sample.Patch(3, "light", (f, f), (0, f), (h, h)),
            Sample.Patch(4, "dark", (0, f), (0, 0), (h, h))
        );

        Assert.Equal((Parse(square), 4), Of(pieced, "light"));
        Assert.Equal((Parse(square), 4), Of(pieced, "dark"));
        Assert.Equal(technique == "two-trimmed" ? 8 : 0, Trims(pieced));
    }

    /// <summary>
    /// [GQP9]: strips of a 4 1/2 in nine-patch are 2 in wide, and a set is as long as its segments and 1 in: two
    /// segments of 2 in are 5 in, as printed; its 2 1/2 in for the last allows 1/2 in only.
    /// </summary>
    [Fact]
    public void A_nine_patch_from_strip_sets()
    {
        var pieced = Pieced("row", "strip-set", 3, new(9, 2), [.. NinePatch(new(3, 2))]);

        var light = pieced.Pieces.Where(p => p.Role == "light").ToArray();
        Assert.All(light, p => Assert.Equal((In(2), CutGrain.Crosswise), (p.Height, p.Grain)));
        // Three blocks: six outer rows and three inner ones.
        Assert.Equal([In(7), In(13)], pieced.Pieces.Where(p => p.Role is "light" or "dark").Select(p => p.Width).Distinct().Order());
    }

    /// <summary>More rows than one width of cloth holds are shared out over sets of equal length.</summary>
    [Fact]
    public void Strip_sets_are_no_longer_than_they_need_be()
    {
        var pieced = Pieced("row", "strip-set", 40, new(9, 2), [.. NinePatch(new(3, 2))]);

        var outer = pieced.Sewing.Recipes.Where(r => r.Kind == "strip-set").MaxBy(r => r.Copies)!;
        // 80 rows of 2 in, 19 to a strip of 40 in less 1 in: five sets of 16.
        Assert.Equal((5, 16), (outer.Runs, outer.Makes.Length));
        Assert.Contains(pieced.Pieces, p => p.Width == In(33));
    }

    /// <summary>The table weighs each way by planning it, and one of each kind is the plan's.</summary>
    [Fact]
    public void Each_kind_of_unit_is_weighed()
    {
        var quilt = QuiltFile.Read(Repository.Read("examples", "quilts", "ostrel-bay-stars.json")).Value!;
        var units = TechniqueComparison.Of(quilt, null, [], PlanOptions.Usual, FirstFit.Plan);
        var goose = Assert.Single(units, u => u.Kind == TechniqueBook.Goose);
        var plan = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;

        Assert.Equal(["flip", "flip-trimmed", "four", "four-trimmed", "triangles"], goose.Ways.Select(w => w.Technique.Name));
        Assert.Equal("flip", goose.Chosen);
        Assert.Equal(plan.Cloths.Aggregate(Length.Zero, (sum, c) => sum + c.Cut), goose.Ways[0].Cloth);
        Assert.Equal(plan.Sewing.Recipes.Where(r => r.Kind == "goose-flip").Sum(r => r.Copies), goose.Units);
        // No cloth is thrown away under the skies of four at a time.
        Assert.True(goose.Ways[2].Cloth < goose.Ways[0].Cloth);
    }

    private static Pieced Geese(string technique, Rational width)
    {
        var half = width / 2;
        return Pieced(
            "goose",
            technique,
            8,
            width,
            Sample.Patch(1, "light", (0, 0), (width, 0), (half, half)),
            Sample.Patch(2, "dark", (width, 0), (width, half), (half, half)),
            Sample.Patch(3, "dark", (0, 0), (half, half), (0, half)),
            Sample.Patch(4, "light", (0, half), (width, half), (half, width)),
            Sample.Patch(5, "dark", (width, half), (width, width), (half, width)),
            Sample.Patch(6, "dark", (0, half), (half, width), (0, width))
        );
    }

    private static IEnumerable<Patch> NinePatch(Rational side) =>
        Enumerable
            .Range(0, 9)
            .Select(i => Sample.Rectangle(i + 1, i % 2 == 0 ? "light" : "dark", side * (i % 3), side * (i / 3), side * ((i % 3) + 1), side * ((i / 3) + 1)));

    private static Pieced Pieced(string kind, string technique, int blocks, Rational side, params ImmutableArray<Patch> patches)
    {
        var quilt = Sample.Quilt(blocks, "light", "dark") with
        {
            Techniques = ImmutableSortedDictionary<string, string>.Empty.Add(kind, technique),
        };
        var letters = new Letters([.. quilt.Roles.Select(r => ImmutableArray.Create(r.Id))]);
        var pieced = PiecingPlan.Of(quilt, Sample.Row(blocks, Length.Inches(side), patches), letters, ClothTerms.Usual);
        Assert.Empty(pieced.Findings);
        return pieced.Value!;
    }

    private static (Length Side, int Count) Of(Pieced pieced, string role)
    {
        var piece = Assert.Single(pieced.Pieces, p => p.Role == role);
        Assert.Equal(piece.Width, piece.Height);
        return (piece.Width, piece.Count);
    }

    private static int Trims(Pieced pieced) => pieced.Sewing.Recipes.Sum(r => r.Runs * r.Verbs.Count(v => v is Trim { Counted: true }));
}
