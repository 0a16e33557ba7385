using CsCheck;
using Kitwright.Cutting;
using Kitwright.Cutting.Instructions;
using Kitwright.Kits.Forms;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Kits;

/// <summary>A kit in its three forms, whatever the quilt: no page promises more than the bag holds.</summary>
public sealed class KitFormsTest
{
    private static readonly string[] Quilts = ["ostrel-bay-stars", "lantern-steps", "tidemark-nine-patch"];

    private static readonly Gen<QuiltPlan> Plans = Gen.Select(
        Gen.Int[0, Quilts.Length - 1],
        Gen.Int[1, 24],
        Gen.Enum<BorderStyle>(),
        Gen.Bool,
        Gen.Int[0, 2],
        Gen.Bool
    ).Select((name, quarters, style, along, spare, strips) =>
    {
        var quilt = QuiltFile.Read(Repository.Read("examples", "quilts", Quilts[name] + ".json")).Value!;
        var border = quilt.Borders[0] with
        {
            Width = Length.Inches(0, 1, 4) * quarters,
            Style = style,
            Corner = style == BorderStyle.CornerSquares ? quilt.Roles[0].Id : null,
            Grain = along ? StripGrain.Lengthwise : StripGrain.Crosswise,
        };
        quilt = quilt with { Borders = quilt.Borders.SetItem(0, border), Techniques = quilt.Techniques.SetItem("row", strips ? "strip-set" : "pieces") };
        return QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual with { SpareStrips = spare }, FirstFit.Plan).Value!;
    });

    [Fact]
    public void Printed_yardage_is_never_more_than_the_bag_holds() =>
        Plans.Sample(
            plan =>
            {
                foreach (var fabric in KitBag.Of(plan, KitForm.Yardage).Fabrics)
                {
                    var cloth = plan.Cloths.Single(c => c.Letter == fabric.Letter);
                    var printed = plan.Needs.Lengths.Single(n => n.Letter == fabric.Letter && n.Kind != NeedKind.Backing).Length;
                    Assert.True(printed <= fabric.OffTheBolt);
                    // The bag holds what the customer's own lines use, and the margin on top.
                    Assert.True(CutInstructions.Lines(cloth)[^1].Used + fabric.Margin <= fabric.OffTheBolt);
                }
            },
            iter: 24
        );

    [Fact]
    public void The_more_the_shop_cuts_the_less_it_takes_off_the_bolt() =>
        Plans.Sample(
            plan =>
            {
                var forms = Enum.GetValues<KitForm>().Select(form => KitBag.Of(plan, form).Fabrics).ToArray();
                for (var i = 0; i < plan.Cloths.Length; i++)
                {
                    Assert.True(forms[0][i].OffTheBolt >= forms[1][i].OffTheBolt && forms[1][i].OffTheBolt >= forms[2][i].OffTheBolt);
                    Assert.Equal(plan.Cloths[i].Cut, forms[2][i].OffTheBolt);
                    Assert.Empty(forms[2][i].CustomerCuts);
                }
            },
            iter: 24
        );

    /// <summary>Strips in the bag and sub-cuts at the table come to the same pieces as the whole plan.</summary>
    [Fact]
    public void Strips_and_sub_cuts_are_all_of_the_plan()
    {
        var plan = Piecing.DemoPlanTest.Plan(null);
        foreach (var fabric in KitBag.Of(plan, KitForm.StripCut).Fabrics)
        {
            var cloth = plan.Cloths.Single(c => c.Letter == fabric.Letter);
            Assert.Equal(cloth.Strips.Length, fabric.CustomerCuts.Length);
            Assert.Equal(cloth.Figures.Strips, fabric.ShopCuts.Where(m => m.Key == "chart.strips-only").Sum(m => (int)m.Slots["count"]));
        }
    }
}
