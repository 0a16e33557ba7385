using Kitwright.Measure;

namespace Kitwright.Piecing;

/// <summary>How much wider than they need be the strips of a round are cut, by the names that quilt files use.</summary>
public static class GenerousRounds
{
    private const string Exact = "exact";
    private const string Trimmed = "trimmed";
    private const string Wide = "trimmed-wide";

    /// <summary>The least of the ways that leaves so much to trim; the widest where none does.</summary>
    public static string For(Length needed, Length seam, Length rulerStep) => needed <= Over(Trimmed, seam, rulerStep) ? Trimmed : Wide;

    /// <summary>Once or twice what a square that is trimmed is cut over, as <see cref="Seams.Generous"/> has it.</summary>
    public static Length Over(string technique, Length seam, Length rulerStep) =>
        technique switch
        {
            Exact => Length.Zero,
            Wide => new Seams(seam, rulerStep).Generous * 2,
            _ => new Seams(seam, rulerStep).Generous,
        };
}
