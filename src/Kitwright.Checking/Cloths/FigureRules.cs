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

        if (cloth.Terms.Table is { Layers: > 1 } table ? cloth.Figures.Passes != Passes(cloth, table.Layers) : cloth.Figures.Passes is not null)
        {
            findings.Add("check.cloth.passes", cloth.Id.Value, Say.Count(cloth.Figures.Passes ?? 0), Say.Count(Passes(cloth, cloth.Terms.Table?.Layers ?? 1)));
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

    /// <summary>
    /// A pass for each strip. Then strip by strip what is laid under the blade: two halves of a folded strip, of two equal
    /// strips where there are four layers; what is left of an odd number is a pass of its own.
    /// </summary>
    private static BigInteger Passes(ClothPlan cloth, int layers)
    {
        BigInteger passes = 0;
        var folded = cloth.Strips.Select(strip => strip.Id).ToHashSet();
        foreach (var strip in SectionRules.AllStrips(cloth))
        {
            var fold = folded.Contains(strip.Id) ? Math.Min(layers, 2) : 1;
            var inStack = folded.Contains(strip.Id) && layers == 4 ? 2 : 1;
            BigInteger across = 0;
            foreach (var sub in strip.SubCuts)
            {
                across += ((sub.Times / fold) + (sub.Times % fold)) * (1 + Trims(cloth, strip, sub));
            }

            passes += strip.Times + (((strip.Times / inStack) + (strip.Times % inStack)) * across);
        }

        return passes;
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
