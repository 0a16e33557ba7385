using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>A habit of pressing, and how much it weighs against others where seams could go either way.</summary>
public enum PressingHabit
{
    /// <summary>A corner or a goose's sky that is flipped over its seam: pressed outward, with the flip.</summary>
    Flips,

    /// <summary>Blocks and rows of them: toward the sashing beside them ([ODD], [KSS]).</summary>
    Frames,

    /// <summary>The quilt toward its border.</summary>
    Borders,

    /// <summary>Rounds of plain strips: away from the center ([APQ-LC], [RRQ], [LBQ]).</summary>
    Logs,

    /// <summary>A pieced part toward the plain one beside it.</summary>
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
    /// <summary>Stands for steps that join a round, whatever their kind.</summary>
    internal const string Round = "round";

    private const int MostEnds = 3;

    public static PressingRules Usual { get; } =
        new(
            new Dictionary<PressingHabit, int>
            {
                [PressingHabit.Flips] = 300,
                [PressingHabit.Frames] = 400,
                [PressingHabit.Borders] = 400,
                [PressingHabit.Logs] = 200,
                [PressingHabit.PlainParts] = 200,
                [PressingHabit.Dark] = 100,
                [PressingHabit.Bulk] = 20,
            }.ToImmutableSortedDictionary(),
            8,
            ["joined-strip"],
            3
        );

    /// <summary>Whether the last seam of a four-patch is spun.</summary>
    public bool SpinsFourPatches { get; init; }

    /// <summary>How seams are pressed by which a part is set into an angle.</summary>
    public PressToward SetIn { get; init; } = PressToward.Top;

    /// <summary>Whether blocks may be turned, or pressed in two ways, so that fewer seams lie open.</summary>
    public bool BlocksMayDiffer { get; init; } = true;

    /// <summary>The rules under what a quilt chose; what it does not say is as usual.</summary>
    public static PressingRules Of(ImmutableSortedDictionary<string, string>? chosen)
    {
        var weights = Usual.Weights;
        Turn("logs", "center", PressingHabit.Logs, -1);
        Turn("geese", "goose", PressingHabit.Flips, -1);
        Turn("sashing", "blocks", PressingHabit.Frames, -1);
        Turn("border", "center", PressingHabit.Borders, -1);
        Turn("cloth", "either", PressingHabit.Dark, 0);
        return Usual with
        {
            Weights = weights,
            OpenKinds = Says("joins", "side") ? [] : Usual.OpenKinds,
            SpinsFourPatches = Says("four-patch", "spun"),
            SetIn = PressingBook.Of(chosen, "set-in") switch
            {
                "swirled" => PressToward.Swirled,
                "open" => PressToward.Open,
                _ => PressToward.Top,
            },
            BlocksMayDiffer = !Says("alike", "open"),
        };

        bool Says(string name, string way) => PressingBook.Of(chosen, name) == way;

        void Turn(string name, string way, PressingHabit habit, int factor) =>
            weights = Says(name, way) ? weights.SetItem(habit, weights[habit] * factor) : weights;
    }

    /// <summary>How much the first logs would rather be pressed away from the center between them.</summary>
    internal int Outward => 2 * Weight(PressingHabit.Logs);

    private int Weight(PressingHabit habit) => Weights.GetValueOrDefault(habit);

    /// <summary>How much a seam would rather be pressed toward its top layer.</summary>
    /// <param name="kind">Of the step, or <see cref="Round"/>.</param>
    public int TowardTop(string kind, SeamSides sides)
    {
        var (bottom, top) = (sides.Bottom, sides.Top);
        var sum = kind is "goose-flip" or "snowball" ? Weight(PressingHabit.Flips) : 0;
        sum += Weight(kind == "bordered" ? PressingHabit.Borders : PressingHabit.Frames) * Side(bottom.Blocks && !top.Blocks, top.Blocks && !bottom.Blocks);
        sum += Weight(kind == Round ? PressingHabit.Logs : PressingHabit.PlainParts) * Side(top.Patches == 1 && bottom.Patches > 1, bottom.Patches == 1 && top.Patches > 1);
        var lighter = bottom.Lightness - top.Lightness;
        sum += Weight(PressingHabit.Dark) * Side(lighter > DarkFrom, lighter < -DarkFrom);
        sum += Weight(PressingHabit.Bulk) * Math.Clamp(bottom.Ends - top.Ends, -MostEnds, MostEnds);
        return sum;

        static int Side(bool towardTop, bool towardBottom) => towardTop ? 1 : towardBottom ? -1 : 0;
    }
}
