using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>Leftovers of a plan as stock: which pieces of cloth go on the shelf once it has been cut.</summary>
public static class Shelving
{
    /// <summary>The path that leftovers of a plan are booked under, so that they are found again by it.</summary>
    /// <param name="quilt">The quilt's name in addresses.</param>
    public static string PathOf(string quilt, string mark) => $"quilts/{quilt}/plan/{mark}";

    /// <summary>
    /// Of one length, cut <paramref name="times"/> times. Sides that no stored length states exactly are taken shorter, by
    /// less than 1/64 in. None where it is not known of which fabric they would be.
    /// </summary>
    /// <param name="least">Both sides are at least so long.</param>
    public static ImmutableArray<Offcut> Of(ClothPlan cloth, Length least, int times) =>
        cloth.Fabric is null ? [] : Together(Leftovers.Of(cloth, least).Select(left => Piece(cloth.Fabric, left, times)), least);

    /// <summary>Of pieces of cloth that were on the shelf, cut as a plan says.</summary>
    /// <param name="fabric">The fabric of a sheet.</param>
    public static ImmutableArray<Offcut> Of(SheetPlan plan, Func<PathId, string> fabric, Length least) =>
        Together(plan.Cuts.SelectMany(cut => Leftovers.Of(plan, cut, least).Select(left => Piece(fabric(cut.Sheet), left, 1))), least);

    private static Offcut Piece(string fabric, Leftover left, int times) => new(fabric, Stored(left.Width), Stored(left.Height), left.Count * times);

    private static ImmutableArray<Offcut> Together(IEnumerable<Offcut> pieces, Length least) =>
        [
            .. pieces
                .Where(piece => piece.Width >= least && piece.Height >= least)
                .GroupBy(piece => (piece.Fabric, piece.Width, piece.Height))
                .Select(same => same.First() with { Count = same.Sum(piece => piece.Count) }),
        ];

    private static Length Stored(Length length) => length.TryTicks(out _) ? length : Length.Inches(new Rational((length.InInches * 64).Floor(), 64));
}
