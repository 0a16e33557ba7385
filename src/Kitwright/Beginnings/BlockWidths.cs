using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Measure;

namespace Kitwright.Beginnings;

/// <summary>Finished widths in which a block's grid comes out on the ruler.</summary>
public static class BlockWidths
{
    private static readonly ImmutableArray<Rational> Inches = [new(1, 2), new(3, 4), 1, new(5, 4), new(3, 2), 2, new(5, 2), 3, 4, 5, 6];
    private static readonly ImmutableArray<Rational> Centimeters = [1, 2, 3, 4, 5, 6, 8, 10, 15];

    /// <summary>From small to large, those that make a block worth sewing: 3 to 24 in, 8 to 60 cm.</summary>
    public static ImmutableArray<Length> Of(BookBlock block, LengthUnit units)
    {
        ImmutableArray<Length> all =
        [
            .. (units == LengthUnit.Centimeter ? Centimeters : Inches)
                .Select(unit => In(units, unit, unit) * block.Grid.Columns)
                .Where(width => width >= In(units, 3, 8) && width <= In(units, 24, 60)),
        ];
        // A grid too fine for any of these is still drawn in a foot.
        return all.IsEmpty ? [In(units, 12, 30)] : all;
    }

    /// <summary>The one nearest to 12 in or 30 cm; the smaller of two that are as near.</summary>
    public static Length Usual(BookBlock block, LengthUnit units) =>
        Of(block, units).MinBy(width => Length.Max(width, In(units, 12, 30)) - Length.Min(width, In(units, 12, 30)));

    /// <summary>A length as each system has it.</summary>
    internal static Length In(LengthUnit units, Rational inches, Rational centimeters) =>
        units == LengthUnit.Centimeter ? Length.Millimeters(centimeters * 10) : Length.Inch * inches;
}
