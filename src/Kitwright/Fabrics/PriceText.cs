using System.Globalization;

namespace Kitwright.Fabrics;

/// <summary>Prices as they are written beside a currency's code: whole minor units, two places.</summary>
public static class PriceText
{
    public static string Of(long minor) => (minor / 100m).ToString("0.00", CultureInfo.InvariantCulture);
}
