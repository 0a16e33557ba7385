using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>How often the blade goes through cloth, the conventions are those of <see cref="ClothFigures.Passes"/>.</summary>
internal static class BladePasses
{
    /// <summary>Null where strips are cut in one layer.</summary>
    /// <param name="inLayers">Strips that are cut folded.</param>
    /// <param name="flat">Strips and lengths that are not.</param>
    /// <param name="heightOf">Of a piece as it lies.</param>
    public static long? Of(ClothTerms terms, IEnumerable<StripCut> inLayers, IEnumerable<StripCut> flat, Func<StackedPiece, Length> heightOf) =>
        terms.Table is { Layers: > 1 } table
            ? flat.Sum(strip => strip.Times * (1 + Across(strip, 1, heightOf)))
                + inLayers.Sum(strip => strip.Times + (Stacks(strip.Times, table.Layers / 2) * Across(strip, 2, heightOf)))
            : null;

    private static long Stacks(int strips, int high) => (strips + high - 1) / high;

    private static long Across(StripCut strip, int fold, Func<StackedPiece, Length> heightOf) =>
        strip.SubCuts.Sum(cut => (long)((cut.Times + fold - 1) / fold) * (1 + Trims(strip, cut, heightOf)));

    private static int Trims(StripCut strip, SubCut cut, Func<StackedPiece, Length> heightOf)
    {
        var height = cut.Stack.Aggregate(Length.Zero, (sum, piece) => sum + (heightOf(piece) * piece.Times));
        return cut.Stack.Sum(piece => piece.Times) - (height == strip.Height ? 1 : 0);
    }
}
