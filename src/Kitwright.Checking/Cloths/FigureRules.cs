using System.Numerics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>Counts of cuts, counted again from the strips.</summary>
internal static class FigureRules
{
    public static void Check(ClothPlan cloth, FindingList findings)
    {
        BigInteger strips = 0,
            subCuts = 0,
            trims = 0;
        foreach (var strip in SectionRules.AllStrips(cloth))
        {
            strips += strip.Times;
            foreach (var sub in strip.SubCuts)
            {
                var times = (BigInteger)strip.Times * sub.Times;
                subCuts += times;
                trims += times * Trims(cloth, strip, sub);
            }
        }

        Compare("strip-widths", cloth.Figures.StripWidths, SectionRules.AllStrips(cloth).Select(s => s.Height).Distinct().Count());
        Compare("strips", cloth.Figures.Strips, strips);
        Compare("sub-cuts", cloth.Figures.SubCuts, subCuts);
        Compare("trims", cloth.Figures.Trims, trims);

        void Compare(string figure, int claimed, BigInteger counted)
        {
            if (claimed != counted)
            {
                findings.Add(
                    "check.cloth.figure",
                    cloth.Id.Value,
                    Say.Count(claimed),
                    Say.Count(counted),
                    ("figure", figure)
                );
            }
        }
    }

    /// <summary>One cut above each piece of the stack, but none above the last where it ends with the strip.</summary>
    private static BigInteger Trims(ClothPlan cloth, StripCut strip, SubCut sub)
    {
        var pieces = BigInteger.Zero;
        var height = Length.Zero;
        foreach (var entry in sub.Stack)
        {
            var piece = cloth.Demand.First(d => d.Piece == entry.Piece);
            pieces += entry.Times;
            height += (entry.Turned ? piece.Width : piece.Height) * entry.Times;
        }

        return height == strip.Height ? pieces - 1 : pieces;
    }
}
