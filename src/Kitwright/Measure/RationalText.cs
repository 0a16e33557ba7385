using System.Globalization;
using System.Numerics;

namespace Kitwright.Measure;

/// <summary>
/// Reads numbers as people write them: 3, 3.875, 31/8, 3 7/8, 3-7/8, 3⅞. Texts of more than 400 characters are refused.
/// Never throws.
/// </summary>
public static class RationalText
{
    private const int LongestText = 400;

    private static readonly Dictionary<char, Rational> Vulgar = new()
    {
        ['¼'] = new(1, 4),
        ['½'] = new(1, 2),
        ['¾'] = new(3, 4),
        ['⅓'] = new(1, 3),
        ['⅔'] = new(2, 3),
        ['⅛'] = new(1, 8),
        ['⅜'] = new(3, 8),
        ['⅝'] = new(5, 8),
        ['⅞'] = new(7, 8),
    };

    public static bool TryParse(string? text, out Rational value)
    {
        value = default;
        var rest = (text ?? "").Trim();
        if (rest.Length is 0 or > LongestText)
        {
            return false;
        }

        var negative = rest[0] is '-' or '−';
        if (negative || rest[0] == '+')
        {
            rest = rest[1..].TrimStart();
        }

        if (!TryUnsigned(rest, out var magnitude))
        {
            return false;
        }

        value = negative ? -magnitude : magnitude;
        return true;
    }

    private static bool TryUnsigned(string text, out Rational value)
    {
        value = default;
        if (text.Length == 0)
        {
            return false;
        }

        if (Vulgar.TryGetValue(text[^1], out var vulgar))
        {
            var whole = text[..^1].TrimEnd(' ', '-', '\u00A0', '\u2009');
            if (whole.Length == 0)
            {
                value = vulgar;
                return true;
            }

            if (!TryDigits(whole, out var count))
            {
                return false;
            }

            value = count + vulgar;
            return true;
        }

        var slash = text.IndexOfAny(['/', '⁄']);
        return slash < 0 ? TryDecimal(text, out value) : TryMixed(text, slash, out value);
    }

    private static bool TryMixed(string text, int slash, out Rational value)
    {
        value = default;
        var left = text[..slash].TrimEnd();
        if (!TryDigits(text[(slash + 1)..].Trim(), out var denominator) || denominator.IsZero)
        {
            return false;
        }

        var gap = left.LastIndexOfAny([' ', '-', '\u00A0', '\u2009']);
        BigInteger whole = 0;
        if (gap >= 0 && !TryDigits(left[..gap].Trim(' ', '-', '\u00A0', '\u2009'), out whole))
        {
            return false;
        }

        if (!TryDigits(left[(gap + 1)..], out var numerator))
        {
            return false;
        }

        value = whole + new Rational(numerator, denominator);
        return true;
    }

    private static bool TryDecimal(string text, out Rational value)
    {
        value = default;
        var point = text.IndexOf('.');
        if (point < 0)
        {
            var ok = TryDigits(text, out var integer);
            value = integer;
            return ok;
        }

        var fraction = text[(point + 1)..];
        if (!TryDigits(point == 0 ? "0" : text[..point], out var whole) || !TryDigits(fraction, out var digits))
        {
            return false;
        }

        value = whole + new Rational(digits, BigInteger.Pow(10, fraction.Length));
        return true;
    }

    private static bool TryDigits(string text, out BigInteger value)
    {
        value = default;
        return text.Length > 0
            && text.All(char.IsAsciiDigit)
            && BigInteger.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }
}
