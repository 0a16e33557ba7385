using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>
/// Batting as it is packaged: the sizes that most lists agree on ([HBG], [PQP], [EMB]), the smallest from [P12Q]. A
/// list may say 84 for 81 or 124 for 120; the smaller figure is the safe one.
/// </summary>
public static class PackagedBattings
{
    public static ImmutableArray<PackagedBatting> All { get; } =
        [
            Of("craft", 34, 45),
            Of("crib", 45, 60),
            Of("twin", 72, 90),
            Of("full", 81, 96),
            Of("queen", 90, 108),
            Of("king", 120, 120),
        ];

    /// <summary>The need with the smallest package that holds it, either way round.</summary>
    public static BattingNeed Need(Length width, Length height) =>
        new(width, height)
        {
            Package = All.FirstOrDefault(p => (p.Width >= width && p.Height >= height) || (p.Height >= width && p.Width >= height)),
        };

    private static PackagedBatting Of(string name, int width, int height) => new(name, Length.Inches(width), Length.Inches(height));
}
