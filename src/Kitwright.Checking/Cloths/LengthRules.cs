using System.Numerics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>What the cutting takes, what the kit adds, and what the shop sells for it.</summary>
internal static class LengthRules
{
    public static void Check(ClothPlan cloth, FindingList findings)
    {
        var sections = cloth.Sections.Aggregate(Length.Zero, (sum, section) => sum + section.Length);
        var cut = cloth.Terms.Straightening + sections + SumOfHeights(cloth) + SquaringAgain(cloth);
        if (cloth.Cut != cut)
        {
            findings.Add("check.cloth.cut-length", cloth.Id.Value, Say.Inches(cloth.Cut), Say.Inches(cut));
        }

        var widest = SpareHeight(cloth);
        var spare = widest.Sign > 0 ? cloth.Margin / widest : Rational.Zero;
        if (cloth.Margin.Sign < 0 || !spare.IsInteger || (widest.Sign <= 0 && cloth.Margin.Sign > 0))
        {
            findings.Add("check.cloth.margin", cloth.Id.Value, Say.Inches(cloth.Margin), Say.Inches(widest));
        }

        // How many panels it takes is more than a sum of lengths: PanelRules counts them.
        var purchase = LeastSaleable(cloth.Cut + cloth.Margin, cloth.Terms);
        if (cloth.Panels is null ? cloth.Purchase != purchase : cloth.Purchase < purchase)
        {
            findings.Add("check.cloth.purchase", cloth.Id.Value, Say.Inches(cloth.Purchase), Say.Inches(purchase));
        }
    }

    /// <summary>The edge is squared again before each strip that follows a full count of them.</summary>
    private static Length SquaringAgain(ClothPlan cloth)
    {
        if (cloth.Terms.Table is not { SquareEvery: > 0 } table)
        {
            return Length.Zero;
        }

        BigInteger strips = 0;
        foreach (var strip in cloth.Strips)
        {
            strips += strip.Times;
        }

        // The first edge is the straightening's.
        var edges = BigInteger.Max(0, ((strips + table.SquareEvery - 1) / table.SquareEvery) - 1);
        return table.SquaringLoss * new Rational(edges, 1);
    }

    /// <summary>
    /// The least strip from which any one of the pieces can be cut again. A lengthwise piece has its own reserve in its
    /// length.
    /// </summary>
    public static Length SpareHeight(ClothPlan cloth)
    {
        var strip = cloth.Terms.UsableWidth - cloth.Terms.CrossTrim;
        var most = Length.Zero;
        foreach (var piece in cloth.Demand.Where(d => !d.HasOwnReserve))
        {
            Length? least = piece.Width <= strip ? piece.Height : null;
            if (piece.MayTurn && piece.Height <= strip && (least is null || piece.Width < least))
            {
                least = piece.Width;
            }

            most = least > most ? least.Value : most;
        }

        return most;
    }

    public static Length SumOfHeights(ClothPlan cloth) =>
        cloth.Strips.Aggregate(Length.Zero, (sum, strip) => sum + (strip.Height * strip.Times));

    /// <summary>The least multiple of an increment that holds the need, and no less than the shop sells.</summary>
    public static Length LeastSaleable(Length need, ClothTerms terms)
    {
        Length? least = null;
        foreach (var step in terms.Increments)
        {
            var times = Length.Max(need, Length.Zero) / step;
            var whole = step * (times.IsInteger ? times : times.Floor() + 1);
            least = least is { } l && l <= whole ? l : whole;
        }

        return Length.Max(least!.Value, terms.MinimumCut);
    }
}
