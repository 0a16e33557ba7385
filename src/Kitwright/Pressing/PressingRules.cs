using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>A habit of pressing, and how much it weighs against others where seams could go either way.</summary>
public enum PressingHabit
{
    /// <summary>A corner or a goose's sky that is flipped over its seam: pressed outward, with the flip.</summary>
    Flips,

    /// <summary>Blocks and rows of them: toward the sashing beside them ([ODD], [KSS]), the quilt toward its border.</summary>
    Frames,

    /// <summary>A pieced part toward the plain one beside it: logs away from the center ([APQ-LC], [RRQ], [LBQ]).</summary>
    PlainParts,

    /// <summary>Toward the darker cloth ([JAN], [AJP], [SIB]).</summary>
    Dark,

    /// <summary>Toward the side on which fewer seams lie folded under (common practice, no source).</summary>
    Bulk,
}

/// <summary>What seams would rather, as numbers: the habits of the trade, each of which can be changed.</summary>
/// <param name="Weights">
/// What a habit weighs; a negative weight turns it round, as for one quilter's log cabins, pressed toward the center
/// ([SUNS]); 0 switches it off.
/// </param>
/// <param name="DarkFrom">Lightness by which two fabrics must differ for the darker to count.</param>
/// <param name="OpenKinds">Kinds of steps whose seams are always pressed open: joins of strips end to end.</param>
/// <param name="MostStackedBlocks">
/// How many kinds of block are worth two stacks each: with more, a few open seams are less trouble (our own judgment).
/// </param>
public sealed record PressingRules(
    ImmutableSortedDictionary<PressingHabit, int> Weights,
    double DarkFrom,
    ImmutableSortedSet<string> OpenKinds,
    int MostStackedBlocks
)
{
    private const int MostEnds = 3;

    public static PressingRules Usual { get; } =
        new(
            new Dictionary<PressingHabit, int>
            {
                [PressingHabit.Flips] = 300,
                [PressingHabit.Frames] = 400,
                [PressingHabit.PlainParts] = 200,
                [PressingHabit.Dark] = 100,
                [PressingHabit.Bulk] = 20,
            }.ToImmutableSortedDictionary(),
            8,
            ["joined-strip"],
            3
        );

    /// <summary>How much the first logs would rather be pressed away from the center between them.</summary>
    internal int Outward => 2 * Weight(PressingHabit.PlainParts);

    private int Weight(PressingHabit habit) => Weights.GetValueOrDefault(habit);

    /// <summary>How much a seam would rather be pressed toward its top layer.</summary>
    public int TowardTop(string kind, SeamSides sides)
    {
        var (bottom, top) = (sides.Bottom, sides.Top);
        var sum = kind is "goose-flip" or "snowball" ? Weight(PressingHabit.Flips) : 0;
        sum += Weight(PressingHabit.Frames) * Side(bottom.Blocks && !top.Blocks, top.Blocks && !bottom.Blocks);
        sum += Weight(PressingHabit.PlainParts) * Side(top.Patches == 1 && bottom.Patches > 1, bottom.Patches == 1 && top.Patches > 1);
        var lighter = bottom.Lightness - top.Lightness;
        sum += Weight(PressingHabit.Dark) * Side(lighter > DarkFrom, lighter < -DarkFrom);
        sum += Weight(PressingHabit.Bulk) * Math.Clamp(bottom.Ends - top.Ends, -MostEnds, MostEnds);
        return sum;

        static int Side(bool towardTop, bool towardBottom) => towardTop ? 1 : towardBottom ? -1 : 0;
    }
}
