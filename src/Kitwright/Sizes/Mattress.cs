using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Sizes;

/// <summary>A mattress by its trade name; where published tables differ, every reading with where it stands.</summary>
/// <param name="Id">Lower case letters and hyphens.</param>
public sealed record Mattress(string Id, ImmutableArray<SizeReading> Readings)
{
    /// <remarks>
    /// Sleep-industry lists round twin and full to 38 and 53 in, bedding and quilting lists to 39 and 54. The larger is
    /// first: a quilt rather covers too much than too little.
    /// </remarks>
    public static ImmutableArray<Mattress> All { get; } =
        [
            // [HBG] nominal; [PQP] 27 × 52.
            new("crib", [Of(28, 52, "[HBG]"), Of(27, 52, "[PQP]")]),
            new("twin", [Of(39, 75, "[HBG]"), Of(38, 75, "[USM]")]),
            new("twin-xl", [Of(39, 80, "[HBG]"), Of(38, 80, "[USM]")]),
            new("full", [Of(54, 75, "[HBG]"), Of(53, 75, "[USM]")]),
            new("full-xl", [Of(54, 80, "[USM]")]),
            new("queen", [Of(60, 80, "[USM]")]),
            new("king", [Of(78, 80, "[BMB]"), Of(76, 80, "[USM]")]),
            new("california-king", [Of(72, 84, "[USM]"), Of(72, 80, "[BMB]")]),
        ];

    /// <summary>What covers a mattress: a drop at both sides and the foot, and at the head what is tucked under pillows.</summary>
    /// <remarks>A blanket drop of 12 in on 39 by 75 gives 63 by 87 ([CIA]); a tuck of 14 in is usual ([QRES]).</remarks>
    public static (Length Width, Length Height) Quilt(SizeReading mattress, Length drop, Length tuck) =>
        (mattress.Width + (drop * 2), mattress.Height + drop + tuck);

    private static SizeReading Of(int width, int length, string source) => new(Length.Inches(width), Length.Inches(length), source);
}

/// <summary>One published size.</summary>
public sealed record SizeReading(Length Width, Length Height, string Source);
