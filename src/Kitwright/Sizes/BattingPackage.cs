using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Sizes;

/// <summary>Batting as it is sold in packages; where published tables differ, every reading, the smaller first.</summary>
public sealed record BattingPackage(string Id, ImmutableArray<SizeReading> Readings)
{
    /// <remarks>The smaller is first: a quilt must fit the package that the customer finds.</remarks>
    public static ImmutableArray<BattingPackage> All { get; } =
        [
            new("craft", [Of(34, 45, "[P12Q]")]),
            new("crib", [Of(45, 60, "[HBG]")]),
            new("twin", [Of(72, 90, "[HBG]"), Of(72, 96, "[PQP]")]),
            new("full", [Of(81, 96, "[HBG]"), Of(84, 96, "[P12Q]")]),
            new("queen", [Of(90, 108, "[HBG]"), Of(96, 108, "[PQP]")]),
            new("king", [Of(120, 120, "[HBG]"), Of(124, 120, "[P12Q]")]),
        ];

    /// <summary>The largest quilt that leaves the overhang on each side.</summary>
    public static (Length Width, Length Height) Quilt(SizeReading batting, Length overhang) =>
        (batting.Width - (overhang * 2), batting.Height - (overhang * 2));

    private static SizeReading Of(int width, int length, string source) => new(Length.Inches(width), Length.Inches(length), source);
}
