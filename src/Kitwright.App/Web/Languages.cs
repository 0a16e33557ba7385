using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.App.Web;

/// <summary>In whose words and units something is said.</summary>
public static class Languages
{
    /// <summary>What is about the shop as a whole.</summary>
    public static Catalog Of(ShopTerms terms) =>
        Catalog.For(terms.Words, new(terms.SoldBy == LengthUnit.Meter ? LengthUnit.Centimeter : LengthUnit.Inch, terms.SoldBy));

    /// <summary>What is about a quilt: its sizes in its own units, its cloth in what the shop sells by.</summary>
    public static Catalog Of(Quilt quilt, ShopTerms terms) => Catalog.For(terms.Words, new(quilt.Units, terms.SoldBy));

    /// <summary>A quilt by itself, without a shop: cloth by the meter where it is planned in centimeters.</summary>
    public static Catalog Of(Quilt quilt, TradeWords words = TradeWords.American) =>
        Catalog.For(words, new(quilt.Units, quilt.Units == LengthUnit.Centimeter ? LengthUnit.Meter : LengthUnit.Yard));
}
