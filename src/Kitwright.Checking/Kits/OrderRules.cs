using Kitwright.Kits;

namespace Kitwright.Checking.Kits;

/// <summary>What is ordered holds what is short, and what is left over is what it says.</summary>
internal static class OrderRules
{
    public static void Check(KitPlan plan, FindingList findings)
    {
        foreach (var order in plan.Order)
        {
            var place = $"order/{order.Fabric}";
            var gives = (order.PutUp - plan.Terms.LoadLoss) * order.Bolts;
            var fabric = plan.Fabrics.FirstOrDefault(f => f.Fabric == order.Fabric);
            if (fabric is null || order.Short != fabric.ShortLength)
            {
                findings.Add("check.kits.order-short", place, ("fabric", order.Name));
            }

            if (gives < order.Short || order.LeftOver != gives - order.Short || order.BoltsAtLeast > order.Bolts)
            {
                findings.Add("check.kits.order", place, Say.Inches(order.LeftOver), Say.Inches(gives - order.Short), ("fabric", order.Name));
            }
        }
    }
}
