using System.Numerics;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>The strips yield every piece as often as it is asked for; what they yield beyond that is surplus.</summary>
internal static class DeliveryRule
{
    public static void Check(ClothPlan cloth, FindingList findings)
    {
        var cut = Cut(cloth);
        BigInteger surplus = 0;
        foreach (var demand in cloth.Demand)
        {
            var count = cut.GetValueOrDefault(demand.Piece);
            surplus += count - demand.Count;
            if (demand.Count < 0 || count < demand.Count)
            {
                findings.Add(
                    "check.cloth.pieces-short",
                    demand.Piece.Value,
                    Say.Count(count),
                    Say.AtLeast(Say.Count(demand.Count)),
                    ("cloth", cloth.Id.Value)
                );
            }
        }

        if (surplus != cloth.Figures.Surplus)
        {
            findings.Add(
                "check.cloth.figure",
                cloth.Id.Value,
                Say.Count(cloth.Figures.Surplus),
                Say.Count(surplus),
                ("figure", "surplus")
            );
        }
    }

    private static Dictionary<PathId, BigInteger> Cut(ClothPlan cloth)
    {
        var cut = new Dictionary<PathId, BigInteger>();
        foreach (var strip in SectionRules.AllStrips(cloth))
        {
            foreach (var sub in strip.SubCuts)
            {
                foreach (var entry in sub.Stack)
                {
                    var times = (BigInteger)strip.Times * sub.Times * entry.Times;
                    cut[entry.Piece] = cut.GetValueOrDefault(entry.Piece) + times;
                }
            }
        }

        return cut;
    }
}
