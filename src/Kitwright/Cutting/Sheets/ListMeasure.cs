using Kitwright.Measure;

namespace Kitwright.Cutting.Sheets;

/// <summary>How a list writes its measures.</summary>
/// <param name="Unit">
/// Null: inches as fractions or decimals, with or without a unit. Otherwise every measure is a whole number of this
/// length.
/// </param>
public sealed record ListMeasure(Length? Unit)
{
    public static ListMeasure Inches { get; } = new((Length?)null);

    /// <summary>False where the text is no measure of the list's kind. Never throws.</summary>
    public bool TryRead(string text, out Length length)
    {
        if (Unit is not { } unit)
        {
            return LengthText.TryParse(text, out length);
        }

        length = default;
        if (!RationalText.TryParse(text, out var number) || !number.IsInteger)
        {
            return false;
        }

        length = unit * number;
        return true;
    }

    /// <summary>Whether a measure states a metric unit; a bare number and inches, feet and yards do not.</summary>
    public static bool IsMetric(string text)
    {
        var letters = text.Trim().TrimEnd('.');
        letters = letters[(letters.LastIndexOfAny([.. "0123456789¼½¾⅓⅔⅛⅜⅝⅞"]) + 1)..].Trim().ToLowerInvariant();
        return letters is "mm" or "cm" or "m" || letters.StartsWith("met", StringComparison.Ordinal);
    }
}
