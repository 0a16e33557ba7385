using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Features.CutStop;

/// <summary>What is proved about a length of cloth, in plain words and no more than is proved.</summary>
public static class ProofWords
{
    public static Message Of(ClothPlan cloth)
    {
        var sections = cloth.Sections.Aggregate(Length.Zero, (sum, section) => sum + section.Length);
        var strips = cloth.Cut - cloth.Terms.Straightening - cloth.SquaringAgain - sections;
        var least = cloth.Proof.Bound;
        if (!sections.IsZero)
        {
            return Message.Of(
                LeastPurchase(cloth) ? "web.proof.sections-least" : "web.proof.sections",
                ("sections", sections),
                ("length", strips),
                ("least", least),
                ("purchase", cloth.Purchase)
            );
        }

        return cloth.Proof.Status switch
        {
            ProofStatus.Proved => Message.Of("web.proof.proved", ("length", strips)),
            ProofStatus.ProvedBySearch => Message.Of("web.proof.searched", ("length", strips)),
            _ when LeastPurchase(cloth) => Message.Of(
                "web.proof.purchase",
                ("length", strips),
                ("least", least),
                ("purchase", cloth.Purchase)
            ),
            _ => Message.Of("web.proof.within", ("length", strips), ("least", least), ("gap", strips - least)),
        };
    }

    /// <summary>
    /// Whether nothing less can be bought. The purchase is rounded up to what a shop sells, so it may be proved least
    /// where the strips are not. Longer strips, but fewer, might save squaring the edge again.
    /// </summary>
    public static bool LeastPurchase(ClothPlan cloth) =>
        cloth.PurchaseIsLeast || (cloth.Sections.IsEmpty && cloth.Proof.Status != ProofStatus.Within && cloth.SquaringAgain.IsZero);
}
