using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Kits;

/// <summary>What one shop assumes wherever it plans: the table, the steps in which it sells, and the kit room.</summary>
/// <param name="Cloth">Usable width, straightening, increments and the least cut.</param>
/// <param name="SpareStrips">Kit margin: strips of the widest height that each kit holds beyond its plan.</param>
/// <param name="OneLengthPerFabric">Whether roles of one fabric share one length in the bag.</param>
/// <param name="Kits">Load loss, useful remnant and usual put-up.</param>
/// <param name="Currency">ISO 4217 code of all prices; they are whole minor units.</param>
public sealed record ShopTerms(
    ClothTerms Cloth,
    int SpareStrips,
    bool OneLengthPerFabric,
    KitTerms Kits,
    string Currency
)
{
    /// <summary>What cloth is sold by: the yard or the meter.</summary>
    public LengthUnit SoldBy { get; init; } = LengthUnit.Yard;

    public TradeWords Words { get; init; } = TradeWords.American;

    /// <summary>Technique by kind of unit, where a quilt has no choice of its own; see <see cref="TechniqueBook"/>.</summary>
    public ImmutableSortedDictionary<string, string> Techniques { get; init; } = ImmutableSortedDictionary<string, string>.Empty;
    /// <summary>Whether every inch counts, or what is bought.</summary>
    public CutGoal Goal { get; init; } = CutGoal.ByTheStep;

    /// <summary>What counts first in cutting, and what then.</summary>
    public ImmutableArray<CutAim> Order { get; init; } = CutOrder.Usual;

    /// <summary>A leftover is kept where both its sides are at least so long.</summary>
    public Length LeastLeftover { get; init; } = Leftovers.UsualLeast;

    public static ShopTerms Usual { get; } = new(ClothTerms.Usual, 1, false, KitTerms.Usual, "USD");

    /// <summary>
    /// A shop that sells by the meter: a meter of usable width, cuts in steps of 10 cm (common practice, no source),
    /// everything else near the usual in whole centimeters.
    /// </summary>
    public static ShopTerms UsualMetric { get; } =
        new(
            new(Length.Millimeters(1_000), Length.Zero, Length.Millimeters(10), 2, [Length.Millimeters(100)], Length.Millimeters(100)),
            1,
            false,
            new(Length.Millimeters(25), Length.Millimeters(250), Length.Millimeters(15_000)),
            "EUR"
        )
        {
            SoldBy = LengthUnit.Meter,
            LeastLeftover = Length.Millimeters(60),
        };
}
