using System.Collections.Immutable;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Cloth printed in panels; expected counts are own arithmetic.</summary>
public sealed class PanelPlansTest
{
    [Theory]
    [InlineData(18)]
    [InlineData(24)]
    [InlineData(44)]
    public void No_strip_goes_over_a_printed_line(int panel)
    {
        foreach (var quilt in DemoQuilts.All())
        {
            var planned = Planned(quilt, [.. quilt.Roles.Select(r => r.Id)], Length.Inches(panel));
            Assert.True(planned.Value is not null, $"{quilt.Name}: {string.Join("; ", planned.Findings.Select(f => $"{f.Rule} {f.Place}"))}");
            Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
            Assert.All(
                planned.Value!.Cloths.Where(c => !c.Roles.Contains(quilt.Binding.Role)),
                cloth =>
                {
                    Assert.True((cloth.Purchase / Length.Inches(panel)).IsInteger);
                    Assert.True(cloth.Purchase >= cloth.Proof.Bound + cloth.Margin);
                }
            );
        }
    }

    /// <summary>The middle of a medallion: one panel, cut whole.</summary>
    [Fact]
    public void A_whole_panel_is_one_piece()
    {
        var quilt = Medallion(Length.Inches(39, 1, 2), Length.Inches(43, 1, 2));
        var plan = Planned(quilt, ["center"], Length.Inches(44), spare: 0).Value!;
        Assert.Empty(PlanChecker.Check(plan).Findings);
        var cloth = plan.Cloths.Single(c => c.Roles.Contains("center"));
        Assert.Equal(Length.Inches(44), cloth.Purchase);
        Assert.True(cloth.PurchaseIsLeast);
        Assert.Equal((Length.Inches(40), Length.Inches(44)), (cloth.Demand[0].Width, cloth.Demand[0].Height));
    }

    [Fact]
    public void A_piece_higher_than_a_panel_is_named()
    {
        var planned = Planned(Medallion(Length.Inches(30), Length.Inches(36)), ["center"], Length.Inches(30));
        Assert.Null(planned.Value);
        Assert.Contains(planned.Findings, f => f is { Rule: "cutting.over-panel", Weight: Weight.Fault } or { Rule: "piecing.too-wide" });
    }

    [Fact]
    public void A_strip_over_a_printed_line_is_refused()
    {
        var plan = Planned(Stars(), ["background"], Length.Inches(24)).Value!;
        var at = plan.Cloths.ToList().FindIndex(c => c.Panels is not null);
        var cloth = plan.Cloths[at];
        var panels = cloth.Panels!.Value;
        Assert.DoesNotContain(Rules(cloth), rule => rule.StartsWith("check.panel", StringComparison.Ordinal));

        // All from one panel; one strip too few, one too many; a panel more, one less; a spare less; another panel than the fabric has.
        Assert.Contains("check.panel.full", Rules(cloth with { Panels = [new(1, [.. cloth.Strips.Select(s => new PanelStrip(s.Id, s.Times))], 1)] }));
        Assert.Contains("check.panel.strips", Rules(With(0, panels[0] with { Strips = panels[0].Strips.SetItem(0, panels[0].Strips[0] with { Times = panels[0].Strips[0].Times + 1 }) })));
        Assert.Contains("check.panel.strips", Rules(With(0, panels[0] with { Strips = panels[0].Strips.RemoveAt(0) })));
        Assert.Contains("check.cloth.purchase", Rules(cloth with { Purchase = cloth.Purchase + Length.Inches(24) }));
        Assert.NotEmpty(Rules(cloth with { Purchase = cloth.Purchase - Length.Inches(24) }));
        var spare = panels.ToList().FindIndex(p => p.Spares > 0);
        Assert.Contains("check.panel.spares", Rules(With(spare, panels[spare] with { Spares = 0 })));
        Assert.Contains("check.panel.terms", Rules(cloth with { Panels = null }));
        Assert.Contains("check.panel.terms", Rules(cloth with { Terms = cloth.Terms with { Panel = Length.Inches(48) } }));
        Assert.Contains("check.panel.terms", Rules(With(0, panels[0] with { Times = 0 })));

        ClothPlan With(int index, PanelCut mutant) => cloth with { Panels = panels.SetItem(index, mutant) };

        string[] Rules(ClothPlan mutant) => [.. PlanChecker.Check(plan with { Cloths = plan.Cloths.SetItem(at, mutant) }).Findings.Select(f => f.Rule)];
    }

    private static Checked<QuiltPlan> Planned(Quilt quilt, ImmutableArray<string> roles, Length panel, int spare = 1)
    {
        var colorway = new Colorway("One", quilt.Roles.ToImmutableSortedDictionary(r => r.Id, r => "F-" + r.Id, StringComparer.Ordinal));
        ImmutableArray<Fabric> shelf =
        [
            .. quilt.Roles.Select(r => new Fabric("F-" + r.Id, r.Name, Length.Inches(44), 1000, "#445566", new(PrintKind.LargeFloral, "#ffffff", 1))
            {
                PanelLength = roles.Contains(r.Id) ? panel : null,
            }),
        ];
        return QuiltPlanner.Plan(quilt, colorway, shelf, PlanOptions.Usual with { SpareStrips = spare }, FirstFit.Plan);
    }

    private static Quilt Medallion(Length width, Length height)
    {
        var quilt = Stars();
        Surd w = width,
            h = height;
        return quilt with
        {
            Roles = [new("center", "center", null), .. quilt.Roles],
            Blocks = [new("middle", "Middle", width, height, new(1, 1), [new("p1", "center", [new(0, 0), new(w, 0), new(w, h), new(0, h)], [])])],
            Setting = new(SettingKind.Straight, 1, 1, [[new("middle", 0, false)]], null),
        };
    }

    private static Quilt Stars() => DemoQuilts.Named("ostrel-bay-stars");
}
