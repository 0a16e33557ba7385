using System.Collections.Immutable;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Borders and bindings in every style and grain: what is planned comes out when the checker cuts and sews it.</summary>
public sealed class BorderPlansTest
{
    public static TheoryData<string, BorderStyle, StripGrain, StripGrain, bool> Ways()
    {
        var ways = new TheoryData<string, BorderStyle, StripGrain, StripGrain, bool>();
        foreach (var name in new[] { "lantern-steps", "ostrel-bay-stars", "tidemark-nine-patch" })
        {
            foreach (var style in Enum.GetValues<BorderStyle>())
            {
                foreach (var grain in new[] { StripGrain.Crosswise, StripGrain.Lengthwise })
                {
                    foreach (var binding in Enum.GetValues<StripGrain>())
                    {
                        ways.Add(name, style, grain, binding, binding == StripGrain.Lengthwise);
                    }
                }
            }
        }

        return ways;
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_style_and_grain_comes_out(string name, BorderStyle style, StripGrain grain, StripGrain binding, bool twice)
    {
        var plan = Plan(name, style, grain, binding, twice ? 2 : 1);

        Assert.Empty(PlanChecker.Check(plan).Findings);
        Assert.Equal(grain == StripGrain.Lengthwise, plan.Pieces.Any(p => p.Grain == CutGrain.Lengthwise && p.Role != "binding"));
    }

    /// <summary>Binding of the borders' own fabric is cut beside them where both run along the selvage ([FE]).</summary>
    [Fact]
    public void The_width_beside_lengthwise_borders_is_used()
    {
        var quilt = Quilt("lantern-steps", BorderStyle.Butted, StripGrain.Lengthwise, StripGrain.Crosswise, 1);
        var roles = quilt.Roles.Where(r => r.Id != "backing").Select(r => KeyValuePair.Create(r.Id, "N-1"));
        var colorway = new Colorway("one", ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, roles).Add("backing", "N-2"));
        quilt = quilt with { Colorways = [colorway] };
        var options = PlanOptions.Usual with { OneLengthPerFabric = true };
        var plan = QuiltPlanner.Plan(quilt, colorway, [], options, FirstFit.Plan).Value!;

        Assert.Empty(PlanChecker.Check(plan).Findings);
        var cloth = Assert.Single(plan.Cloths);
        Assert.NotEmpty(cloth.Sections.SelectMany(s => s.Beside));
        Assert.Contains(cloth.Strips, s => s.Height > Length.Zero);
    }

    /// <summary>A plan that lays a lengthwise border across the width, or fills a section too full, is refused.</summary>
    [Theory]
    [InlineData("check.cloth.section-full")]
    [InlineData("check.cloth.section-length")]
    [InlineData("check.cloth.lengthwise")]
    [InlineData("check.cloth.section-cut")]
    public void A_section_that_cannot_be_cut_so_is_refused(string rule)
    {
        var plan = Plan("lantern-steps", BorderStyle.Mitered, StripGrain.Lengthwise, StripGrain.Crosswise, 1);
        var at = plan.Cloths.ToList().FindIndex(c => !c.Sections.IsEmpty);
        var cloth = plan.Cloths[at];
        var section = cloth.Sections[0];
        var strip = new StripCut(section.Id.Child("strip", 9), section.Length, 1, section.Cuts);
        cloth = rule switch
        {
            "check.cloth.section-full" => cloth with { Sections = [section with { Beside = [strip, strip] }, .. cloth.Sections.Skip(1)] },
            "check.cloth.section-length" => cloth with { Sections = [section with { Length = section.Length + Length.Inch }, .. cloth.Sections.Skip(1)] },
            "check.cloth.lengthwise" => cloth with { Strips = cloth.Strips.Add(strip) },
            _ => cloth with { Sections = [section with { Cuts = [section.Cuts[0] with { Width = Length.Inch }] }, .. cloth.Sections.Skip(1)] },
        };

        var findings = PlanChecker.Check(plan with { Cloths = plan.Cloths.SetItem(at, cloth) }).Findings;

        Assert.Contains(findings, f => f.Rule == rule);
    }

    /// <summary>Set-in seams that stop short, run off or leave no allowance are refused.</summary>
    [Theory]
    [InlineData("check.sewing.press-no-seam")]
    [InlineData("check.sewing.line")]
    [InlineData("check.sewing.allowance")]
    public void A_miter_that_is_sewn_wrong_is_refused(string rule)
    {
        var plan = Plan("lantern-steps", BorderStyle.Mitered, StripGrain.Crosswise, StripGrain.Crosswise, 1);
        var at = plan.Sewing.Recipes.Length - 1;
        var verbs = plan.Sewing.Recipes[at].Verbs;
        var last = verbs.ToList().FindLastIndex(v => v is SewIn);
        var sew = (SewIn)verbs[last];
        verbs = rule switch
        {
            // The middle seam is given a little too long at its far end, so that the corner no longer meets.
            "check.sewing.press-no-seam" => verbs.SetItem(last, sew with { Lines = [sew.Lines[1] with { To = sew.Lines[1].To + (sew.Lines[1].Step * 9) }] }),
            "check.sewing.line" => verbs.SetItem(last, sew with { Lines = [sew.Lines[0], sew.Lines[2]] }),
            // Trimmed on the seam itself.
            _ => verbs.SetItem(last - 1, ((CutAlong)verbs[last - 1]) with { Line = sew.Lines[2] }),
        };

        var recipes = plan.Sewing.Recipes.SetItem(at, plan.Sewing.Recipes[at] with { Verbs = verbs });
        var findings = PlanChecker.Check(plan with { Sewing = new(recipes) }).Findings;

        Assert.Contains(findings, f => f.Rule == rule);
    }

    private static QuiltPlan Plan(string name, BorderStyle style, StripGrain grain, StripGrain binding, int borders)
    {
        var planned = QuiltPlanner.Plan(Quilt(name, style, grain, binding, borders), null, [], PlanOptions.Usual, FirstFit.Plan);
        Assert.Empty(planned.Findings);
        return planned.Value!;
    }

    private static Quilt Quilt(string name, BorderStyle style, StripGrain grain, StripGrain binding, int borders)
    {
        var quilt = DemoQuilts.Named(name);
        var border = quilt.Borders[0] with { Style = style, Grain = grain, Corner = style == BorderStyle.CornerSquares ? quilt.Roles[0].Id : null };
        return quilt with { Borders = [.. Enumerable.Repeat(border, borders)], Binding = quilt.Binding with { Grain = binding } };
    }
}
