using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;

namespace Kitwright.Sizes;

/// <summary>A target as people name it: a bed, a package of batting, or two numbers.</summary>
public static class TargetNames
{
    /// <summary>Sizes that the named bed gives, one for each published reading.</summary>
    /// <returns>A finding where no bed has the name.</returns>
    public static Checked<NamedTargets> Bed(string name, Length drop, Length tuck) =>
        Mattress.All.FirstOrDefault(m => m.Id == name) is { } mattress
            ? Of(mattress.Readings.Select(reading => (reading, Mattress.Quilt(reading, drop, tuck))))
            : Unknown("bed", name, Mattress.All.Select(m => m.Id));

    /// <summary>The largest quilts that the named package takes, one for each published reading.</summary>
    public static Checked<NamedTargets> Batting(string name, Length overhang) =>
        BattingPackage.All.FirstOrDefault(b => b.Id == name) is { } batting
            ? Of(batting.Readings.Select(reading => (reading, BattingPackage.Quilt(reading, overhang))))
            : Unknown("batting", name, BattingPackage.All.Select(b => b.Id));

    /// <summary>Two lengths with an x between them: "60x80", "152 x 203 cm".</summary>
    /// <param name="bareUnit">Of numbers without a unit.</param>
    public static Checked<NamedTargets> Numbers(string text, LengthUnit bareUnit = LengthUnit.Inch)
    {
        var parts = text.ToLowerInvariant().Replace('×', 'x').Split('x');
        // The unit of the second number holds for the first too, unless that has its own.
        var unit = parts.Length == 2 && parts[1].TrimEnd().EndsWith("cm", StringComparison.Ordinal) ? LengthUnit.Centimeter : bareUnit;
        return
            parts.Length == 2
            && LengthText.TryParse(parts[0], out var width, unit)
            && LengthText.TryParse(parts[1], out var height, unit)
            && IsSize(width)
            && IsSize(height)
            ? Checked<NamedTargets>.Of(new([new(width, height, null)]))
            : Checked<NamedTargets>.Failed(Finding.Of("sizes.target", "target", ("text", text.Length > 40 ? text[..40] + "…" : text)));
    }

    private static bool IsSize(Length length) => length >= Length.Inch && length <= Quilts.QuiltLimits.Side;

    private static Checked<NamedTargets> Of(IEnumerable<(SizeReading Reading, (Length Width, Length Height) Size)> sizes) =>
        Checked<NamedTargets>.Of(new([.. sizes.Select(s => new NamedTarget(s.Size.Width, s.Size.Height, s.Reading))]));

    private static Checked<NamedTargets> Unknown(string kind, string name, IEnumerable<string> names) =>
        Checked<NamedTargets>.Failed(Finding.Of("sizes.name", kind, ("name", name), ("names", string.Join(", ", names))));
}

/// <summary>One size for each published reading, the usual first.</summary>
public sealed record NamedTargets(ImmutableArray<NamedTarget> Sizes);

/// <param name="Reading">The mattress or package it follows from; null for plain numbers.</param>
public sealed record NamedTarget(Length Width, Length Height, SizeReading? Reading);
