using Kitwright.Measure;

namespace Kitwright.Geometry;

/// <summary>
/// Coordinates as text, in files: "3 7/8", "6√2", "1/2 + 3/4√2 - √3". The round trip is exact for texts of up to 1600
/// characters; longer ones are refused as input. A hyphen subtracts here: "3-7/8" is 2 1/8.
/// </summary>
public static class SurdText
{
    private const int LongestText = 1600;

    public static string Format(Surd value)
    {
        var parts = new List<string>(4);
        Add(parts, value.One, "");
        Add(parts, value.Root2, "√2");
        Add(parts, value.Root3, "√3");
        Add(parts, value.Root6, "√6");
        return parts.Count == 0 ? "0" : string.Join(' ', parts);
    }

    private static void Add(List<string> parts, Rational factor, string root)
    {
        if (factor.IsZero)
        {
            return;
        }

        var magnitude = Rational.Abs(factor);
        var text =
            root.Length > 0 && magnitude == Rational.One ? root : LengthText.Mixed(magnitude) + root;
        var sign = factor.Sign < 0 ? "-" : "+";
        parts.Add(parts.Count > 0 ? $"{sign} {text}" : (factor.Sign < 0 ? "-" : "") + text);
    }

    /// <summary>Reads a sum of at most eight terms; "sqrt2" may stand for "√2". Never throws.</summary>
    public static bool TryParse(string? text, out Surd value)
    {
        value = default;
        var rest = (text ?? "").Replace("sqrt", "√", StringComparison.Ordinal).Replace('−', '-').Trim();
        if (rest.Length is 0 or > LongestText)
        {
            return false;
        }

        var terms = 0;
        while (rest.Length > 0)
        {
            var negative = rest[0] == '-';
            if (rest[0] is '-' or '+')
            {
                rest = rest[1..].TrimStart();
            }
            else if (terms > 0)
            {
                return false;
            }

            var end = rest.IndexOfAny(['+', '-']);
            var term = (end < 0 ? rest : rest[..end]).Trim();
            rest = end < 0 ? "" : rest[end..];
            if (++terms > 8 || !TryTerm(term, out var part))
            {
                return false;
            }

            value = negative ? value - part : value + part;
        }

        return true;
    }

    private static bool TryTerm(string term, out Surd value)
    {
        value = default;
        var root = term.IndexOf('√', StringComparison.Ordinal);
        var factorText = (root < 0 ? term : term[..root]).TrimEnd(' ', '*', '·');
        Rational factor = Rational.One;
        if ((root != 0 || factorText.Length > 0) && !RationalText.TryParse(factorText, out factor))
        {
            return false;
        }

        if (root < 0)
        {
            value = factor;
            return true;
        }

        Surd? part = term[(root + 1)..].Trim() switch
        {
            "2" => new(default, factor, default, default),
            "3" => new(default, default, factor, default),
            "6" => new(default, default, default, factor),
            _ => null,
        };
        value = part ?? default;
        return part is not null;
    }
}
