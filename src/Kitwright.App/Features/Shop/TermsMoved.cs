using System.Collections.Immutable;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Features.Shop;

/// <summary>What other terms would move: the cloth of each quilt, in its first colorway.</summary>
public static class TermsMoved
{
    public static ImmutableArray<Message> Between(IWorkbench workbench, ShopTerms tried)
    {
        var options = Standing.OptionsUnder(tried);
        var moved = ImmutableArray.CreateBuilder<Message>();
        foreach (var (_, quilt) in workbench.Quilts)
        {
            var colorway = quilt.Colorways.FirstOrDefault()?.Name;
            var (before, after) = (workbench.Plan(quilt, colorway).Plan, workbench.Plan(quilt, colorway, options).Plan);
            if (after is null)
            {
                moved.Add(Message.Of("terms.moved.none", ("quilt", quilt.Name)));
            }
            else if (before is not null)
            {
                var by = Total(after) - Total(before);
                moved.Add(
                    Message.Of(
                        "terms.moved",
                        ("quilt", quilt.Name),
                        ("after", Total(after)),
                        ("way", by.Sign switch { > 0 => "more", < 0 => "less", _ => "same" }),
                        ("by", by.Sign < 0 ? -by : by)
                    )
                );
            }
        }

        return moved.ToImmutable();
    }

    private static Length Total(QuiltPlan plan) => plan.Needs.Lengths.Aggregate(Length.Zero, (sum, need) => sum + need.Length);
}
